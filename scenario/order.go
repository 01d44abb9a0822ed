package scenario

import (
	"fmt"
	"slices"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// order is the order of the visits: as stated, else primary sites as they stand in the file and
// then the alternates. Alternates that a stated order leaves out come last.
func (c *clerk) order(f expeditionFile, sites []plan.Site) []int {
	var order []int
	for i, t := range f.Order {
		path := document.At("order", i)
		s, found := c.siteNamed(path, t, sites)
		if found && slices.Contains(order, s) {
			c.Fault(path, t.Value, "each site once")
		} else if found {
			order = append(order, s)
		}
	}
	if f.Order != nil {
		c.noneLeftOut(order, sites)
	}
	for _, alternate := range []bool{false, true} {
		for s := range sites {
			if sites[s].Alternate == alternate && !slices.Contains(order, s) {
				order = append(order, s)
			}
		}
	}
	return order
}

// noneLeftOut notes primary sites that a stated order does not have: a site is not dropped in silence.
func (c *clerk) noneLeftOut(order []int, sites []plan.Site) {
	for s := range sites {
		if !sites[s].Alternate && !c.out[s] && !slices.Contains(order, s) && sites[s].Name != "" {
			c.Fault("order", "", fmt.Sprintf("every primary site; %q is left out", sites[s].Name))
		}
	}
}

// siteNamed finds a site by its name.
func (c *clerk) siteNamed(path string, t document.Text, sites []plan.Site) (int, bool) {
	name := c.Name(path, t)
	known := make([]string, len(sites))
	for s := range sites {
		known[s] = sites[s].Name
	}
	s := slices.Index(known, name)
	if s < 0 && name != "" {
		wanted, _ := fault.Suggest(name, known, "site")
		c.Fault(path, name, wanted)
	}
	return s, s >= 0
}

// precedences reads the rules that the order must keep.
func (c *clerk) precedences(f expeditionFile, p *plan.Plan) (rules []plan.Precedence) {
	for i, rule := range entry.Few(c.Reader, "order_rules", f.OrderRules, entry.MostRules) {
		path := document.At("order_rules", i)
		first, found := c.siteNamed(document.Join(path, "first"), rule.First, p.Sites)
		then, foundToo := c.siteNamed(document.Join(path, "then"), rule.Then, p.Sites)
		if !found || !foundToo {
			continue
		}
		if !c.out[first] && !c.out[then] && slices.Index(p.Order, first) >= slices.Index(p.Order, then) {
			c.Fault(path, "", fmt.Sprintf("an order in which %s comes before %s", rule.First.Value, rule.Then.Value))
		}
		rules = append(rules, plan.Precedence{First: first, Then: then})
	}
	return rules
}

// headland is a way over land that costs little to go round: check alone gives it, judgement.
const headland = 120 * unit.NauticalMile

// routes warns of passages that cross land, with the alternates and without.
func (c *clerk) routes(p *plan.Plan) {
	for _, leg := range voyage.OverLand(p) {
		if leg.Length < headland {
			continue
		}
		c.Warn("the great circle from %s to %s crosses land near %s; give waypoints with via", leg.From, leg.To, near(leg.Near))
	}
}

// near is a place to a tenth of a degree.
func near(p geo.Position) string {
	north, east := "N", "E"
	if p.Latitude < 0 {
		north, p.Latitude = "S", -p.Latitude
	}
	if p.Longitude < 0 {
		east, p.Longitude = "W", -p.Longitude
	}
	return fmt.Sprintf("%.1f%s %.1f%s", p.Latitude, north, p.Longitude, east)
}
