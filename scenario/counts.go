package scenario

import "fmt"

// most is how many of a thing a scenario may have.
type most struct {
	things string
	number int
	why    string
}

// More than these nobody plans; each further one costs time and memory, sites by their square.
var (
	mostSites     = most{"sites", 100, "an expedition calls at a dozen"}
	mostItems     = most{"holes and tasks at a site", 50, "records have up to a dozen"}
	mostLayers    = most{"layers at a site", 100, "a survey distinguishes fewer"}
	mostStages    = most{"stages of a hole", 20, "there are four tools"}
	mostWaypoints = most{"waypoints to a site", 50, "a passage has a few"}
	mostStops     = most{"temperatures or penetrometer runs in a hole", 100, "each costs an hour"}
	mostLimits    = most{"limits of sea", 100, "there are six classes of work"}
	mostRules     = most{"rules of order", 1000, "a dozen sites have 66 pairs"}
	mostQuantiles = most{"quantiles of a spread", 100, "a hundred are every per cent"}
	mostStrings   = most{"tool strings", 50, "a ship carries a few"}
)

// few keeps the first of a list that is too long, with a fault; of what is in it nothing more is said.
func few[T any](c *reader, path string, list []T, m most) []T {
	if len(list) <= m.number {
		return list
	}
	c.fault(path, fmt.Sprintf("%d %s", len(list), m.things), fmt.Sprintf("at most %d; %s", m.number, m.why))
	c.said = append(c.said, path)
	return list[:m.number]
}
