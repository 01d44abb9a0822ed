package voyage

import (
	"coredays/model/geo"
	"coredays/model/places"
	"coredays/model/plan"
	"coredays/model/unit"
)

const (
	sounding = 10 * unit.NauticalMile  // distance between looks at the track: a third of a cell of the relief
	offPort  = 100 * unit.NauticalMile // ports up a river lie that far inland: land there is no news, judgement
	offSite  = 30 * unit.NauticalMile  // a cell: that a site lies at a coast is given of the site
)

// Crossing is a passage whose great circle crosses land, as far as cells of half a degree tell: one counts as land
// where its mean height is above the sea.
type Crossing struct {
	From, To string
	Near     geo.Position
	Length   unit.Length // of the track in cells of land
	Path     string      // in the scenario, of where the passage leads
}

// OverLand lists the passages of a plan that cross land, first with the alternates, then those that
// there are only without them.
func OverLand(p *plan.Plan) (all []Crossing) {
	known := map[string]bool{}
	add := func(from, to plan.Port, via []geo.Position, path string) {
		c, crosses := crossing(p, from, to, via)
		c.Path = path
		if leg := from.Name + " to " + to.Name; crosses && !known[leg] {
			known[leg] = true
			all = append(all, c)
		}
	}
	for _, alternates := range []bool{true, false} {
		from := p.From
		for _, s := range p.Order {
			site := &p.Sites[s]
			if site.Alternate && !alternates {
				continue
			}
			to := plan.Port{Name: site.Name, Position: site.Position}
			add(from, to, site.Way(), p.SitePath(s)+".position")
			from = to
		}
		add(from, p.To, p.To.Via, "ports.to.position")
	}
	return all
}

// crossing looks along one passage.
func crossing(p *plan.Plan, from, to plan.Port, via []geo.Position) (c Crossing, found bool) {
	c = Crossing{From: from.Name, To: to.Name}
	points := append(append([]geo.Position{from.Position}, via...), to.Position)
	track := geo.Track(points, sounding)
	for i, place := range track {
		near := func(p geo.Position, within unit.Length) bool { return geo.Distance(place, p) < within }
		if !places.ReliefAt(place).MostlyLand() || near(p.From.Position, offPort) || near(p.To.Position, offPort) || near(from.Position, offSite) || near(to.Position, offSite) {
			continue
		}
		if !found {
			c.Near, found = place, true
		}
		if i > 0 {
			c.Length += geo.Distance(track[i-1], place)
		}
	}
	return c, found
}
