package voyage

import (
	"errors"

	"coredays/model/chance"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/sea"
	"coredays/model/unit"
)

// Place is where the ship is: a port or a site.
type Place int

// The ports. Sites follow from FirstSite on.
const (
	FromPort Place = iota
	ToPort
	FirstSite
)

// SitePlace is the place of a site by its index.
func SitePlace(site int) Place { return FirstSite + Place(site) }

// Leg is the passage from one place to another.
func (v *Voyage) Leg(from, to Place) *Leg { return &v.Legs[from][to] }

// Name is the name of a place.
func (v *Voyage) Name(p Place) string {
	switch p {
	case FromPort:
		return v.Plan.From.Name
	case ToPort:
		return v.Plan.To.Name
	default:
		return v.Plan.Sites[p-FirstSite].Name
	}
}

// legs compiles the passages between all places.
func (c *compiler) legs() error {
	p := c.v.Plan
	places := int(FirstSite) + len(p.Sites)
	c.v.Legs = make([][]Leg, places)
	for from := range places {
		c.v.Legs[from] = make([]Leg, places)
		for to := range places {
			if from == to || Place(to) == FromPort {
				continue
			}
			leg, err := c.leg(Place(from), Place(to))
			if err != nil {
				return err
			}
			c.v.Legs[from][to] = leg
		}
	}
	return nil
}

// leg compiles one passage: along great circles through the waypoints of where it leads, in the
// mean climate of the way.
func (c *compiler) leg(from, to Place) (Leg, error) {
	points := []geo.Position{position(c.v.Plan, from)}
	leg := Leg{Key: chance.KeyOf("leg", c.v.Name(from), c.v.Name(to)), Call: NoQuantity}
	switch {
	case to >= FirstSite:
		points = append(points, c.v.Plan.Sites[to-FirstSite].Way()...)
		leg.Call = c.calls[to-FirstSite]
	case to == ToPort && from >= FirstSite:
		points = append(points, c.v.Plan.To.Via...)
	}
	points = append(points, position(c.v.Plan, to))
	for i := 1; i < len(points); i++ {
		leg.Distance += float64(geo.Distance(points[i-1], points[i]))
	}
	climate, err := c.along(geo.Track(points, sampled), from, to)
	if err != nil {
		return leg, err
	}
	leg.Waves, err = sea.NewTable(climate)
	return leg, err
}

// sampled is the distance between the points at which a passage meets the climate, about half a
// cell of the built-in one.
const sampled = 150 * unit.NauticalMile

// along is the mean climate of the points that have one, else that of the site at an end, else that of
// the first site: out of an Arctic port and back to it is a way without a climate that no ship sails.
func (c *compiler) along(track []geo.Position, from, to Place) (sea.Climate, error) {
	var sum sea.Climate
	var n float64
	for _, point := range track {
		climate, err := sea.BuiltIn(point.Latitude, point.Longitude)
		if err != nil {
			continue
		}
		n++
		for m := range sum.Mean {
			sum.Mean[m] += climate.Mean[m]
			sum.Variation[m] += climate.Variation[m]
		}
	}
	if n == 0 {
		for _, site := range []Place{to, from, FirstSite} {
			if n := int(site - FirstSite); n >= 0 && n < len(c.v.Plan.Sites) {
				return c.v.Plan.Sites[n].Climate, nil
			}
		}
		return sum, errors.New("no wave climate is known anywhere on the way from " + c.v.Name(from) + " to " + c.v.Name(to))
	}
	for m := range sum.Mean {
		sum.Mean[m] /= unit.Length(n)
		sum.Variation[m] /= n
	}
	return sum, nil
}

func position(p *plan.Plan, place Place) geo.Position {
	switch place {
	case FromPort:
		return p.From.Position
	case ToPort:
		return p.To.Position
	default:
		return p.Sites[place-FirstSite].Position
	}
}
