package entry

import "fmt"

// most is how many of a thing a scenario may have.
type most struct {
	things string
	number int
	why    string
}

// More than these nobody plans; each further one costs time and memory, sites by their square.
var (
	MostSites     = most{"sites", 100, "an expedition calls at a dozen"}
	MostItems     = most{"holes and tasks at a site", 50, "records have up to a dozen"}
	MostLayers    = most{"layers at a site", 100, "a survey distinguishes fewer"}
	MostStages    = most{"stages of a hole", 20, "there are four tools"}
	MostWaypoints = most{"waypoints to a site", 50, "a passage has a few"}
	MostStops     = most{"temperatures or penetrometer runs in a hole", 100, "each costs an hour"}
	MostClosings  = most{"things that close a site", 20, "a season has a few"}
	MostLimits    = most{"limits of sea", 100, "there are six classes of work"}
	MostRules     = most{"rules of order", 1000, "a dozen sites have 66 pairs"}
	mostQuantiles = most{"quantiles of a spread", 100, "a hundred are every per cent"}
	MostStrings   = most{"tool strings", 50, "a ship carries a few"}
)

// Few keeps the first of a list that is too long, with a fault; of what is in it nothing more is said.
func Few[T any](c *Reader, path string, list []T, m most) []T {
	if len(list) <= m.number {
		return list
	}
	c.Fault(path, fmt.Sprintf("%d %s", len(list), m.things), fmt.Sprintf("at most %d; %s", m.number, m.why))
	c.Said = append(c.Said, path)
	return list[:m.number]
}
