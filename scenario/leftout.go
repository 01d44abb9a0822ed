package scenario

import (
	"slices"
	"strings"

	"coredays/model/plan"
	"coredays/scenario/document"
)

// What is left out is read like the rest, so that it can be taken in again as it stands. It must be
// well-formed; whether it could be done is not asked.

// readOrLeaveOut reads a site and reports whether it is left out.
func (r siteReader) readOrLeaveOut() (out bool) {
	forget := r.remarks()
	without := len(r.without)
	out = r.Yes(r.at("left_out"), r.file.LeftOut, false)
	r.read()
	if out {
		forget()
		r.without = append(r.without[:without], r.site.Name)
	}
	return out
}

// itemOrNone reads a hole or task and reports whether it is left out.
func (r siteReader) itemOrNone(path string, f itemFile) (item plan.Item, out bool) {
	forget := r.remarks()
	out = r.Yes(document.Join(path, "left_out"), f.LeftOut, false)
	if out && f.When != nil && r.leavesOut(f.When.Hole.Value) {
		f.When = nil // both wait together
	}
	item = r.item(path, f)
	if out {
		forget()
		r.without = append(r.without, r.site.Name+" "+item.Name)
	}
	return item, out
}

// remarks remembers what was remarked so far; forget drops what was since, but for what is malformed.
func (c *clerk) remarks() (forget func()) {
	faults, warnings := len(c.Faults), len(c.Warnings)
	return func() {
		kept := c.Faults[:faults]
		for _, f := range c.Faults[faults:] {
			if !f.Infeasible {
				kept = append(kept, f)
			}
		}
		c.Faults, c.Warnings = kept, c.Warnings[:min(warnings, len(c.Warnings))]
	}
}

// leavesOut reports whether a hole of this site is left out.
func (r siteReader) leavesOut(hole string) bool {
	return slices.ContainsFunc(r.file.Holes, func(f itemFile) bool {
		return f.Name.Value == hole && (f.LeftOut.Value == "yes" || f.LeftOut.Value == "true")
	})
}

// leaveOut takes the sites out of the plan that are left out, with their rules, and says so.
func (c *clerk) leaveOut(p *plan.Plan) {
	if len(c.without) > 0 {
		c.Warn("left out, as the scenario says: %s", strings.Join(c.without, ", "))
	}
	if !slices.Contains(c.out, true) {
		return
	}
	if !slices.Contains(c.out, false) {
		c.Fault("sites", "", "at least one site that is not left out")
	}
	sites, place := []plan.Site(nil), make([]int, len(p.Sites))
	for s := range p.Sites {
		place[s] = len(sites)
		if !c.out[s] {
			sites = append(sites, p.Sites[s])
		}
	}
	order, before := []int(nil), []plan.Precedence(nil)
	for _, s := range p.Order {
		if !c.out[s] {
			order = append(order, place[s])
		}
	}
	for _, rule := range p.Before {
		if !c.out[rule.First] && !c.out[rule.Then] {
			before = append(before, plan.Precedence{First: place[rule.First], Then: place[rule.Then]})
		}
	}
	p.Sites, p.Order, p.Before = sites, order, before
}

// needed warns where no site has to be visited.
func (c *clerk) needed(sites []plan.Site) {
	if !slices.ContainsFunc(sites, func(s plan.Site) bool { return !s.Alternate }) {
		c.Warn("every site is an alternate: none has to be visited, and the days needed are those of sailing alone")
	}
}
