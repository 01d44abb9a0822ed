package scenario

import (
	"coredays/model/plan"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// stops reads what closes the site, or stops work wherever the ship is, and the call on the way there.
func (r siteReader) stops() {
	s := r.site
	if f := r.file.Unusable; f != nil {
		s.Unusable = r.closing(r.at("unusable"), *f)
	}
	for i, f := range entry.Few(r.Reader, r.at("closings"), r.file.Closings, entry.MostClosings) {
		s.More = append(s.More, r.closing(document.At(r.at("closings"), i), f))
	}
	s.More = append(s.More, r.anywhere...)
	if r.file.Call != nil {
		s.Call = r.call(r.at("call"), *r.file.Call)
	}
}

// closing reads something that closes a site for a while.
func (c *clerk) closing(path string, f unusableFile) plan.Unusable {
	u := plan.Unusable{
		Because: c.Name(document.Join(path, "because"), f.Because),
		Every:   c.Quantity(document.Join(path, "every"), f.Every, entry.EveryMeasure, spread.Quantity{}),
		Lasts:   c.Quantity(document.Join(path, "lasts"), f.Lasts, entry.ClosingMeasure, spread.Quantity{}),
	}
	c.openings(path, u)
	return u
}

// call reads a call in port on the way to a site, or of a boat where it has no position.
func (r siteReader) call(path string, f callFile) plan.Call {
	call := plan.Call{Name: r.Name(document.Join(path, "port"), f.Port),
		Takes: r.Quantity(document.Join(path, "takes"), f.Takes, entry.TaskMeasure, spread.Quantity{})}
	if f.Position.Given {
		at := r.Position(document.Join(path, "position"), f.Position)
		call.Position = &at
	}
	if r.site.Hanging {
		r.Fault(path, f.Port.Value, "nothing here, or move: pipe recovered: no pipe hangs on a call")
	}
	return call
}

// endsEarly reads the rule that ends a hole before its target.
func (r siteReader) endsEarly(path string, f *endsFile, h *plan.Hole) {
	if f == nil {
		return
	}
	end := &plan.EndsEarly{
		Because: r.Name(document.Join(path, "because"), f.Because),
		Chance:  r.Number(document.Join(path, "chance"), f.Chance, entry.ShareMeasure),
		From:    r.Depth(document.Join(path, "from"), f.From),
		Waits:   unit.Duration(r.Maybe(document.Join(path, "waits"), f.Waits, entry.TaskMeasure)),
		Plugged: r.Yes(document.Join(path, "plugged"), f.Plugged, true),
	}
	if target := bottomOf(h); end.From >= target && end.From > 0 {
		r.Fault(document.Join(path, "from"), f.From.Value, "above the target of the hole, "+exactly(target))
	}
	h.EndsEarly = end
}
