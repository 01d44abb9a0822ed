package scenario

import (
	"fmt"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// headland is a way over land that costs little to go round: check alone gives it, judgement.
const headland = 120 * unit.NauticalMile

// routes warns of passages that cross land, with the alternates and without.
func (c *clerk) routes(p *plan.Plan) {
	for _, leg := range voyage.OverLand(p) {
		if leg.Length < headland {
			continue
		}
		c.Warn("the great circle from %s to %s crosses land near %s; give waypoints with via", leg.From, leg.To, near(leg.Near))
	}
}

// near is a place to a tenth of a degree.
func near(p geo.Position) string {
	north, east := "N", "E"
	if p.Latitude < 0 {
		north, p.Latitude = "S", -p.Latitude
	}
	if p.Longitude < 0 {
		east, p.Longitude = "W", -p.Longitude
	}
	return fmt.Sprintf("%.1f%s %.1f%s", p.Latitude, north, p.Longitude, east)
}
