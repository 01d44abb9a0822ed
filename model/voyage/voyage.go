// Package voyage is a plan compiled for sailing it thousands of times: quantities as tables,
// limits as wave heights, names as hashed keys. A Voyage never changes once it is compiled.
package voyage

import (
	"errors"
	"fmt"
	"time"

	"coredays/model/activity"
	"coredays/model/chance"
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/places"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/spread"
	"coredays/model/unit"
)

// Quantity is the index of a drawn quantity of a voyage. The first are those of rig.Rate.
type Quantity int

// NoQuantity marks what was not stated.
const NoQuantity Quantity = -1

// Voyage is a compiled plan.
type Voyage struct {
	Plan       *plan.Plan
	Quantities []spread.Drawn
	Purposes   []chance.Key // of each quantity
	Above      []chance.Key // of its levels above the run; quantities that vary together have them in common
	InPort     Quantity
	Sites      []Site
	Legs       [][]Leg   // from place to place; see Voyage.Leg
	Deadline   float64   // s after sailing
	SeaFrom    time.Time // when the sea of a replication begins, not after sailing; the zero time for at sailing
	Forecast   sea.Forecast
	Courses    []sea.Course // how seas go on in time; the first is that of climates
	ClearFloor float64      // significant wave height at which the bit leaves the hole, m
	Recover    float64      // significant wave height at which pipe is recovered, m
	Items      int          // of all sites
	OnBoard    OnBoard
}

// Site is a compiled site.
type Site struct {
	*plan.Site
	Key     chance.Key
	Floor   float64 // depth of the sea floor, m
	Section float64 // how deep the section goes that is wanted, m below sea floor
	Layers  []Layer
	Items   []Item
	Soft    float64 // sediment above the first hard rock by the survey, m; none is met where it is infinite
	Alone   bool    // no tool but piston corers is used here
	Waves   *sea.Table
	Closes  []Closing
	Known   *places.Year // what closes the site by the tables of known places; nil where they are not to
	Course  int          // index into Voyage.Courses
	Most    Limits
}

// Closing is something that closes a site for a while.
type Closing struct {
	Every Quantity // mean time between closings
	Lasts Quantity
}

// Limits is the significant wave height above which each class of work stops, m.
type Limits [activity.Limits]float64

// Layer is a compiled layer.
type Layer struct {
	Bottom   float64 // m below sea floor
	Stated   bool    // its drilling rate is taken as it is
	Strength Quantity
	Rate     Quantity
	Ahead    Quantity
	Sticking Quantity
	Wear     Quantity
	Recovery [coring.Tools]Quantity
}

// Item is a compiled hole or task.
type Item struct {
	*plan.Item
	Number int // among all items of the voyage
	Key    chance.Key
	Takes  []Quantity // of each step of a task
}

// Leg is a compiled passage.
type Leg struct {
	Key      chance.Key
	Distance float64 // m
	Waves    *sea.Table
	Call     Quantity // time of a call on the way; NoQuantity without one
}

// Compile works out a plan. It fails where the plan's sea cannot be made or a figure of the ship is missing.
func Compile(p *plan.Plan) (*Voyage, error) { return compile(p, newShared(&p.Ship)) }

// compile takes what is worked out of the ship already, and adds to it.
func compile(p *plan.Plan, known *shared) (*Voyage, error) {
	if err := stated(p); err != nil {
		return nil, err
	}
	c := compiler{shared: known, v: &Voyage{Plan: p, Deadline: float64(p.SeaDays), ClearFloor: float64(p.Ship.Storm.ClearSeaFloor), Recover: float64(p.Ship.Storm.RecoverPipe)}}
	for r, q := range p.Ship.Rates {
		c.add(q, "rate", rig.Rate(r).Of().Key)
	}
	c.v.OnBoard = onBoard(&p.Ship)
	c.v.InPort = c.add(p.InPort, "in port")
	c.v.Courses = []sea.Course{sea.ByProcess(sea.NewProcess(sea.LongMemory, sea.ShortMemory, SeaStep))}
	c.v.Forecast = sea.Forecast{
		Horizon: unit.Duration(p.Ship.Rates[rig.ForecastHorizon].Median()),
		Skill:   p.Ship.Rates[rig.ForecastSkill].Median(),
	}
	for i := range p.Sites {
		if err := c.site(&p.Sites[i]); err != nil {
			return nil, err
		}
	}
	return c.v, c.legs()
}

// stated reports whether the quantities are there that every voyage draws. Were a rate left out, those
// after it would have the index of their neighbours.
func stated(p *plan.Plan) error {
	for r, q := range p.Ship.Rates {
		if !q.Given() {
			return fmt.Errorf("the ship has no %s", rig.Rate(r).Of().Key)
		}
	}
	if !p.InPort.Given() {
		return errors.New("the days in port before sailing are not stated")
	}
	return nil
}

// SeaStep is the time for which the sea is taken as steady. Steps of three hours miss short spells and
// make storms last 18 % too long against Rice's formula; an hour, 6 %.
const SeaStep = unit.Hour

type compiler struct {
	*shared
	v       *Voyage
	calls   []Quantity            // before each site
	courses map[*sea.Likeness]int // indices into Voyage.Courses
}

// add compiles a quantity with the names of its purpose.
func (c *compiler) add(q spread.Quantity, purpose ...string) Quantity {
	if !q.Given() {
		return NoQuantity
	}
	c.v.Quantities = append(c.v.Quantities, c.compiled(q))
	c.v.Purposes = append(c.v.Purposes, chance.KeyOf(purpose...))
	c.v.Above = append(c.v.Above, chance.KeyOf(purpose...))
	return Quantity(len(c.v.Quantities) - 1)
}

// site compiles a site with its layers and items.
func (c *compiler) site(s *plan.Site) error {
	waves, course, err := c.waves(s)
	if err != nil {
		return fmt.Errorf("site %s: %w", s.Name, err)
	}
	most, err := c.limits(s.WaterDepth, periodFactor(s))
	if err != nil {
		return err
	}
	site := Site{Site: s, Key: chance.KeyOf("site", s.Name), Floor: float64(s.WaterDepth), Waves: waves, Course: course, Most: most}
	for k, u := range s.Closings() {
		purpose := []string{s.Name}
		if k > 0 {
			purpose = append(purpose, fmt.Sprint(k))
		}
		site.Closes = append(site.Closes, Closing{c.add(u.Every, append([]string{"site closed every"}, purpose...)...), c.add(u.Lasts, append([]string{"site closed for"}, purpose...)...)})
	}
	c.calls = append(c.calls, c.add(s.Call.Takes, "call before", s.Name))
	if s.Places == plan.PlacesMet {
		site.Known = places.YearAt(s.Position)
	}
	met := map[string]int{}
	for _, l := range s.Layers {
		name := l.Lithology.Name
		number := fmt.Sprint(met[name]) // the second layer of a lithology at a site is not the first
		met[name]++
		layer := Layer{
			Bottom:   float64(l.Bottom),
			Stated:   l.Stated,
			Strength: c.add(l.Lithology.Strength, "strength", name, number),
			Rate:     c.add(l.Lithology.Rate, "drilling rate", name, number),
			Ahead:    c.add(l.Lithology.Ahead, "drilling ahead", name, number),
			Sticking: c.add(l.Lithology.Sticking, "sticking", name, number),
			Wear:     c.add(l.Lithology.Wear, "bit wear", name, number),
		}
		for t, r := range l.Lithology.Recovery {
			layer.Recovery[t] = c.add(r, "recovery", name, number, coring.Tool(t).String())
			if r.Given() { // a crew that recovers well does so in all layers: only the cores differ
				c.v.Above[layer.Recovery[t]] = chance.KeyOf("recovery", coring.Tool(t).String())
			}
		}
		site.Layers = append(site.Layers, layer)
	}
	for i := range s.Items {
		site.Items = append(site.Items, c.item(s, &s.Items[i]))
	}
	site.Soft = ground.SoftAbove(s.Layers)
	site.Section, site.Alone = float64(s.SectionTo()), s.PistonAlone()
	c.v.Sites = append(c.v.Sites, site)
	return nil
}

// item compiles an item of a site.
func (c *compiler) item(s *plan.Site, i *plan.Item) Item {
	item := Item{Item: i, Number: c.v.Items, Key: chance.KeyOf("item", s.Name, i.Name)}
	c.v.Items++
	if i.Task != nil {
		purpose := []string{"task", s.Name, i.Name}
		if i.Task.Kind != "" {
			purpose = []string{"task of a kind", i.Task.Kind}
		}
		for k, step := range i.Task.Steps {
			if k > 0 {
				purpose = append(purpose[:len(purpose):len(purpose)], fmt.Sprint("step ", k))
			}
			item.Takes = append(item.Takes, c.add(step.Takes, purpose...))
		}
	}
	return item
}
