package scenario

import (
	"fmt"
	"slices"

	"coredays/model/plan"
	"coredays/model/spread"
	"coredays/model/unit"
)

// items reads what is to be done at a site.
func (r siteReader) items() []plan.Item {
	if len(r.file.Holes) == 0 {
		r.fault(r.at("holes"), "", "at least one hole or task")
	}
	for i, f := range r.file.Holes {
		path := at(r.at("holes"), i)
		item := r.item(path, f)
		same := func(other plan.Item) bool { return other.Name == item.Name && item.Name != "" }
		if slices.ContainsFunc(r.site.Items, same) {
			r.fault(path, item.Name, "a name that nothing else at this site has")
		}
		r.site.Items = append(r.site.Items, item)
	}
	return r.site.Items
}

func (r siteReader) item(path string, f itemFile) plan.Item {
	item := plan.Item{Rank: 1}
	if f.Rank.given {
		item.Rank = int(r.number(join(path, "rank"), f.Rank, countMeasure))
	}
	if f.When != nil {
		item.When = r.condition(join(path, "when"), *f.When)
	}
	if f.Task.given {
		item.Name = r.name(join(path, "task"), f.Task)
		item.Task = r.task(path, f)
		return item
	}
	item.Name = r.name(join(path, "name"), f.Name)
	item.Hole = r.hole(path, f)
	return item
}

// task reads work that is no hole.
func (r siteReader) task(path string, f itemFile) *plan.Task {
	r.strangers(path, f.holeKeys(), "nothing here: this belongs to a hole, and this is a task")
	return &plan.Task{
		Takes:         r.quantity(join(path, "takes"), f.Takes, taskMeasure, spread.Quantity{}),
		SeaLimit:      unit.Length(r.maybe(join(path, "sea_limit"), f.SeaLimit, heightMeasure)),
		Interruptible: r.yes(join(path, "interruptible"), f.Interruptible, true),
	}
}

// use is a key of an item and whether it is there.
type use struct {
	key   string
	given bool
}

// holeKeys tells which keys of a hole are there.
func (f itemFile) holeKeys() []use {
	return []use{{"name", f.Name.given}, {"start_offset", f.StartOffset.given}, {"drill_ahead_to", f.DrillAheadTo.given}, {"core", f.Core != nil},
		{"oriented", f.Oriented.given}, {"temperature", f.Temperature != nil}, {"penetrometer", f.Penetrometer != nil}, {"logging", f.Logging != nil},
		{"reentry", f.Reentry.given}, {"abandon", f.Abandon.given}, {"if_lost", f.IfLost.given}}
}

// taskKeys tells which keys of a task are there.
func (f itemFile) taskKeys() []use {
	return []use{{"takes", f.Takes != nil}, {"sea_limit", f.SeaLimit.given}, {"interruptible", f.Interruptible.given}}
}

// strangers notes keys that belong to the other kind of item.
func (r siteReader) strangers(path string, uses []use, wanted string) {
	for _, u := range uses {
		if u.given {
			r.fault(join(path, u.key), "", wanted)
		}
	}
}

// condition reads on which earlier hole an item depends.
func (r siteReader) condition(path string, f whenFile) *plan.Condition {
	condition := &plan.Condition{
		Hole:  slices.IndexFunc(r.site.Items, func(i plan.Item) bool { return i.Hole != nil && i.Name == f.Hole.value }),
		Depth: unit.Depth(r.number(join(path, "depth"), f.Depth, depthMeasure)),
	}
	if !f.Refused.given {
		r.fault(join(path, "refused"), "", "above or below")
	}
	condition.Above = r.choice(join(path, "refused"), f.Refused, "above", "below") == 0
	switch {
	case condition.Hole < 0:
		r.fault(join(path, "hole"), f.Hole.value, "the name of a hole before this one at the same site")
		condition.Hole = 0
	case !pistonCored(r.site.Items[condition.Hole].Hole):
		r.fault(join(path, "hole"), f.Hole.value, "a hole that is cored with a piston corer, which alone is refused")
	}
	return condition
}

func pistonCored(h *plan.Hole) bool {
	return slices.ContainsFunc(h.Stages, func(s plan.Stage) bool { return s.With.Piston() })
}

// listedStrings are the names of the ship's tool strings.
func (r siteReader) listedStrings() (list []string) {
	for _, s := range r.ship.Strings {
		list = append(list, s.Name)
	}
	return list
}

// logging reads which tool strings are run, in order.
func (r siteReader) logging(path string, given []text) (all []int) {
	known := r.listedStrings()
	for i, t := range given {
		s := slices.Index(known, t.value)
		switch {
		case s < 0:
			wanted, _ := suggest(t.value, known, "tool string")
			r.fault(at(path, i), t.value, wanted)
		case slices.Contains(all, s):
			r.fault(at(path, i), t.value, "each tool string once")
		default:
			all = append(all, s)
		}
	}
	return all
}

// cores reads the numbers of cores.
func (r siteReader) cores(path string, given []text) (all []int) {
	if len(given) == 0 {
		r.fault(path, "", `the numbers of the cores, such as "[4, 7, 10]"`)
	}
	for i, t := range given {
		n := int(r.number(at(path, i), t, countMeasure))
		if len(all) > 0 && n > 0 && n <= all[len(all)-1] {
			r.fault(at(path, i), t.value, fmt.Sprintf("a number above %d", all[len(all)-1]))
		}
		all = append(all, n)
	}
	return all
}
