package plan

import "slices"

// Kind is what sort of thing is cut from a programme.
type Kind int

// The kinds, in the order in which a chief scientist cuts.
const (
	Measurement Kind = iota
	WholeTask
	WholeHole
	WholeSite
)

func (k Kind) String() string { return [...]string{"measurement", "task", "hole", "site"}[k] }

// Cut is a plan with one thing less.
type Cut struct {
	Kind Kind
	Site string
	What string   // the hole, task or measurement; empty for a site
	Also []string // items of the site that go with it, because they depend on it
	Plan *Plan
}

// Cuts lists all that can be cut from the primary sites of a plan, site by site in the order of the
// visits. The last site stays, and so does the last item of a site, which is cut with the site.
func (p *Plan) Cuts() []Cut {
	var cuts []Cut
	for _, n := range p.Order {
		site := &p.Sites[n]
		if site.Alternate {
			continue
		}
		for i := range site.Items {
			cuts = append(cuts, p.measurements(n, i)...)
			if cut, left := p.withoutItem(n, i); left > 0 {
				cuts = append(cuts, cut)
			}
		}
		if p.primaries() > 1 {
			cuts = append(cuts, Cut{Kind: WholeSite, Site: site.Name, Plan: p.withoutSite(n)})
		}
	}
	return cuts
}

// primaries counts the sites that are not alternates.
func (p *Plan) primaries() (n int) {
	for i := range p.Sites {
		if !p.Sites[i].Alternate {
			n++
		}
	}
	return n
}

// measurements are the cuts of what is measured in a hole.
func (p *Plan) measurements(site, item int) []Cut {
	i := &p.Sites[site].Items[item]
	if i.Hole == nil {
		return nil
	}
	var cuts []Cut
	for _, m := range []struct {
		name  string
		there bool
		drop  func(*Hole)
	}{
		{"orientation", i.Hole.Oriented, func(h *Hole) { h.Oriented = false }},
		{"temperature", len(i.Hole.Temperature) > 0, func(h *Hole) { h.Temperature = nil }},
		{"penetrometer", len(i.Hole.Penetrometer) > 0, func(h *Hole) { h.Penetrometer = nil }},
		{"logging", len(i.Hole.Logging) > 0, func(h *Hole) { h.Logging = nil }},
	} {
		if m.there {
			cuts = append(cuts, Cut{Kind: Measurement, Site: p.Sites[site].Name, What: i.Name + " " + m.name, Plan: p.withHole(site, item, m.drop)})
		}
	}
	return cuts
}

// withHole is the plan with a hole changed.
func (p *Plan) withHole(site, item int, change func(*Hole)) *Plan {
	other := p.withItems(site, slices.Clone(p.Sites[site].Items))
	hole := *other.Sites[site].Items[item].Hole
	change(&hole)
	other.Sites[site].Items[item].Hole = &hole
	return other
}

// withItems is the plan with other items at a site.
func (p *Plan) withItems(site int, items []Item) *Plan {
	other := *p
	other.Sites = slices.Clone(p.Sites)
	other.Sites[site].Items = items
	return &other
}

// withoutItem cuts an item and all that depend on where its corer was refused, and says how many
// items are left.
func (p *Plan) withoutItem(site, item int) (cut Cut, left int) {
	items := p.Sites[site].Items
	cut = Cut{Kind: WholeHole, Site: p.Sites[site].Name, What: items[item].Name}
	if items[item].Task != nil {
		cut.Kind = WholeTask
	}
	gone := make([]bool, len(items))
	gone[item] = true
	now := make([]int, len(items)) // where each item stands after the cut
	var kept []Item
	for i, it := range items {
		if it.When != nil && gone[it.When.Hole] {
			gone[i] = true
			cut.Also = append(cut.Also, it.Name)
		}
		if gone[i] {
			continue
		}
		if it.When != nil {
			when := *it.When
			when.Hole = now[when.Hole]
			it.When = &when
		}
		now[i] = len(kept)
		kept = append(kept, it)
	}
	cut.Plan = p.withItems(site, kept)
	return cut, len(kept)
}

// withoutSite is the plan without a site.
func (p *Plan) withoutSite(site int) *Plan {
	other := *p
	other.Sites = slices.Delete(slices.Clone(p.Sites), site, site+1)
	other.Order, other.Before = nil, nil
	moved := func(n int) int {
		if n > site {
			return n - 1
		}
		return n
	}
	for _, n := range p.Order {
		if n != site {
			other.Order = append(other.Order, moved(n))
		}
	}
	for _, b := range p.Before {
		if b.First != site && b.Then != site {
			other.Before = append(other.Before, Precedence{First: moved(b.First), Then: moved(b.Then)})
		}
	}
	return &other
}
