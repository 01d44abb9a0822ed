package scenario

import (
	"coredays/model/plan"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// items reads what is to be done at a site.
func (r siteReader) items() []plan.Item {
	if len(r.file.Holes) == 0 {
		r.Fault(r.at("holes"), "", "at least one hole or task")
	}
	names := map[string]bool{}
	for i, f := range entry.Few(r.Reader, r.at("holes"), r.file.Holes, entry.MostItems) {
		path := document.At(r.at("holes"), i)
		item, out := r.itemOrNone(path, f)
		if names[item.Name] && item.Name != "" {
			r.Fault(path, item.Name, "a name that nothing else at this site has")
		}
		names[item.Name] = true
		if !out {
			r.site.Items = append(r.site.Items, item)
		}
	}
	if len(r.site.Items) == 0 && len(r.file.Holes) > 0 {
		r.Fault(r.at("holes"), "", "at least one hole or task that is not left out, or left_out: yes for the whole site")
	}
	return r.site.Items
}

func (r siteReader) item(path string, f itemFile) plan.Item {
	item := plan.Item{Rank: 1, Path: path}
	if f.Rank.Given {
		item.Rank = int(r.Number(document.Join(path, "rank"), f.Rank, entry.RankMeasure))
	}
	if f.When != nil {
		item.When = r.condition(document.Join(path, "when"), *f.When)
	}
	if f.Task.Given {
		item.Name = r.Name(document.Join(path, "task"), f.Task)
		item.Task = r.task(path, f)
		return item
	}
	item.Name = r.Name(document.Join(path, "name"), f.Name)
	item.Hole = r.hole(path, f)
	return item
}

// use is a key of an item and whether it is there.
type use struct {
	key   string
	given bool
}

// holeKeys says which keys of a hole are there.
func (f itemFile) holeKeys() []use {
	return []use{{"name", f.Name.Given}, {"start_offset", f.StartOffset.Given}, {"existing", f.Existing.Given}, {"fill", f.Fill.Given}, {"cased_to", f.CasedTo.Given}, {"drill_ahead_to", f.DrillAheadTo.Given}, {"core", f.Core != nil},
		{"oriented", f.Oriented.Given}, {"temperature", f.Temperature != nil}, {"penetrometer", f.Penetrometer != nil}, {"logging", f.Logging != nil}, {"ends_early", f.EndsEarly != nil},
		{"reentry", f.Reentry.Given}, {"casing", f.Casing != nil}, {"abandon", f.Abandon.Given}, {"if_lost", f.IfLost.Given}}
}

// taskKeys says which keys of a task are there.
func (f itemFile) taskKeys() []use {
	return []use{{"takes", f.Takes != nil}, {"sea_limit", f.SeaLimit.Given}, {"interruptible", f.Interruptible.Given},
		{"breakdown", f.Breakdown.Given}, {"pipe", f.Pipe.Given}, {"steps", f.Steps != nil}}
}

// strangers notes keys that belong to the other kind of item.
func (r siteReader) strangers(path string, uses []use, wanted string) {
	for _, u := range uses {
		if u.given {
			r.Fault(document.Join(path, u.key), "", wanted)
		}
	}
}
