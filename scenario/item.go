package scenario

import (
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
	for i, f := range few(r.reader, r.at("holes"), r.file.Holes, mostItems) {
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
		item.Rank = int(r.number(join(path, "rank"), f.Rank, rankMeasure))
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

// holeKeys says which keys of a hole are there.
func (f itemFile) holeKeys() []use {
	return []use{{"name", f.Name.given}, {"start_offset", f.StartOffset.given}, {"drill_ahead_to", f.DrillAheadTo.given}, {"core", f.Core != nil},
		{"oriented", f.Oriented.given}, {"temperature", f.Temperature != nil}, {"penetrometer", f.Penetrometer != nil}, {"logging", f.Logging != nil},
		{"reentry", f.Reentry.given}, {"abandon", f.Abandon.given}, {"if_lost", f.IfLost.given}}
}

// taskKeys says which keys of a task are there.
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
