package check

import (
	"slices"

	"coredays/model/drillstring"
	"coredays/model/plan"
	"coredays/model/sea/heave"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// Plan looks at a compiled plan. The estimate gives times and dates; without one, days are not
// looked at, and the sea is that of the whole expedition.
func Plan(v *voyage.Voyage, estimated voyage.QuickEstimate) []Finding {
	i := &inspector{v: v, plan: v.Plan, estimated: estimated}
	i.readyString()
	i.expedition()
	for n := range v.Sites {
		i.place = i.plan.SitePath(n)
		i.site(&v.Sites[n], n)
	}
	i.place = ""
	i.strings()
	slices.SortStableFunc(i.found, func(a, b Finding) int { return int(b.Verdict) - int(a.Verdict) })
	return i.found
}

// inspector goes through a plan and notes what it finds.
type inspector struct {
	v         *voyage.Voyage
	plan      *plan.Plan
	estimated voyage.QuickEstimate
	board     drillstring.Board
	reach     drillstring.Reach
	response  *heave.Response // nil where the hull says no heave
	lost      float64         // strings expected to be lost in all holes
	place     string          // in the scenario of the site or hole that is looked at; empty for the expedition
	found     []Finding
}

// note keeps a finding, with where in the scenario it stands: what it names, or the hole or site around it.
func (i *inspector) note(f Finding) {
	if f.Path == "" {
		f.Path = i.place
	} else if i.place != "" {
		f.Path = i.place + "." + f.Path
	}
	f.Where = i.plan.Stated(f.Path)
	i.found = append(i.found, f)
}

// expedition looks at what concerns all sites.
func (i *inspector) expedition() {
	i.days()
	i.endurance()
	i.inPort()
	i.routes()
	i.apart()
	i.spares()
	i.torques()
	i.learned()
}

// site looks at one site and at each of its holes.
func (i *inspector) site(s *voyage.Site, n int) {
	i.water(s)
	i.places(s, n)
	i.approval(s)
	i.station(s)
	i.hazards(s, n)
	i.hookLoad(s)
	i.compensator(s)
	i.sea(s, n)
	i.closings(s)
	i.window(s, n)
	i.cap(s, n)
	for k := range s.Items {
		i.place = i.plan.ItemPath(n, k)
		if item := &s.Items[k]; item.Hole != nil {
			i.hole(s, item)
		}
	}
}

// hole looks at one hole.
func (i *inspector) hole(s *voyage.Site, item *voyage.Item) {
	i.target(s, item)
	i.tools(s, item)
	i.pistons(s, item)
	i.idle(s, item)
	i.tooSlow(s, item)
	i.bitWeight(s, item)
	i.spud(s, item)
	i.casing(s, item)
	i.bitLife(s, item)
	i.sticking(s, item)
	i.logging(s, item)
	i.sources(s, item)
}

// klbf is the rig's unit of force.
const klbf = 1000 * unit.PoundForce
