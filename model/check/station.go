package check

import (
	"fmt"

	"coredays/model/unit"
	"coredays/model/voyage"
)

// circle is how far the ship may move off the hole, as shares of the water depth.
type circle struct {
	well   float64 // where the work goes on
	most   float64 // where it stops at the latest
	source string
}

// shallowWater is a depth that is called shallow where the alarms were set to 3 and 5 % (ODP Leg 176
// Prelim. Report, positioning).
const shallowWater = 731 // m

// stationCircle is that of a depth of water. In shallow water a share is few metres, and more of it has
// to be put up with.
func stationCircle(depth unit.Length) circle {
	if depth <= shallowWater {
		return circle{0.05, 0.08, "outer alarm at 5 % in 731 m of water (ODP Leg 176 Prelim. Report, positioning), at most 8 % where it is shallow (IODP Sci. Prosp. 344, risks)"}
	}
	return circle{0.03, 0.05, "outer alarm at 3 % in deep water (ODP Leg 176 Prelim. Report, positioning), at most 5 % (Hansford and Lubinski 1969, OTC 1076)"}
}

// station holds the circle against how well the ship keeps her position.
func (i *inspector) station(s *voyage.Site) {
	keeps, c, depth := i.plan.Ship.PositionKeeping, stationCircle(s.WaterDepth), float64(s.WaterDepth)
	share := c.well
	if keeps.Value > c.most*depth {
		share = c.most
	}
	i.note(Finding{Site: s.Name, What: fmt.Sprintf("station circle of %.0f %% of the water depth is kept", 100*share),
		Verdict: remembered(between(keeps.Value, c.well*depth, c.most*depth), keeps.Source),
		Value:   keeps.Value, Limit: share * depth, Unit: "m", Source: c.source + "; she keeps her position: " + keeps.Source})
}
