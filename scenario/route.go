package scenario

import (
	"fmt"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/sea"
	"coredays/model/unit"
)

const (
	sounding = 50 * unit.NauticalMile  // distance between looks at the track
	offPort  = 300 * unit.NauticalMile // within a cell of the climate from a port land is no news
	land     = 0.2                     // share of water below which a cell is taken as land, judgement
)

// routes warns of passages that cross land, with the alternates and without.
func (c *clerk) routes(p *plan.Plan) {
	warned := map[string]bool{}
	for _, alternates := range []bool{true, false} {
		from := p.From
		for _, s := range p.Order {
			site := &p.Sites[s]
			if site.Alternate && !alternates {
				continue
			}
			to := plan.Port{Name: site.Name, Position: site.Position}
			c.passage(p, from, to, site.Via, warned)
			from = to
		}
		c.passage(p, from, p.To, nil, warned)
	}
}

// passage warns of one passage where it crosses land.
func (c *clerk) passage(p *plan.Plan, from, to plan.Port, via []geo.Position, warned map[string]bool) {
	points := append(append([]geo.Position{from.Position}, via...), to.Position)
	for _, place := range geo.Track(points, sounding) {
		share, known := sea.WaterShare(place.Latitude, place.Longitude)
		if !known || share >= land || geo.Distance(place, p.From.Position) < offPort || geo.Distance(place, p.To.Position) < offPort {
			continue
		}
		leg := from.Name + " to " + to.Name
		if !warned[leg] {
			c.warn("the great circle from %s crosses land near %s; give waypoints with via", leg, near(place))
		}
		warned[leg] = true
		return
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
