package choice

import (
	"slices"

	"coredays/model/plan"
	"coredays/model/voyage"
)

// orderRules say which orders of the sites are allowed. Primary sites are visited first and
// alternates when time is left, so each kind has an order of its own.
type orderRules struct {
	primary, alternate []int
	before             []plan.Precedence
}

func orderRulesOf(v *voyage.Voyage) orderRules {
	rules := orderRules{before: v.Plan.Before}
	for _, n := range v.Visits() {
		if v.Sites[n].Alternate {
			rules.alternate = append(rules.alternate, n)
		} else {
			rules.primary = append(rules.primary, n)
		}
	}
	return rules
}

// may reports whether a site may come next, when those of a list are still to come: none of them must
// come before it.
func (r orderRules) may(site int, toCome []int) bool {
	return !slices.ContainsFunc(r.before, func(b plan.Precedence) bool {
		return b.Then == site && b.First != site && slices.Contains(toCome, b.First)
	})
}

// orders lists the orders of some sites that the rules allow, at most so many; all reports whether
// these are all. The first is that in which the sites are given, if it is allowed.
func (r orderRules) orders(sites []int, most int) (list [][]int, all bool) {
	all = true
	var extend func(begun, toCome []int)
	extend = func(begun, toCome []int) {
		if len(list) >= most {
			all = false
			return
		}
		if len(toCome) == 0 {
			list = append(list, slices.Clone(begun))
			return
		}
		for i, site := range toCome {
			if all && r.may(site, toCome) {
				extend(append(begun, site), slices.Delete(slices.Clone(toCome), i, i+1))
			}
		}
	}
	extend(nil, sites)
	return list, all
}

// allOrders lists whole orders: those of the primary sites, each with each of the alternates'.
func (r orderRules) allOrders(most int) (list [][]int, all bool) {
	primary, one := r.orders(r.primary, most)
	alternate, two := r.orders(r.alternate, most)
	for _, p := range primary {
		for _, a := range alternate {
			if len(list) >= most {
				return list, false
			}
			list = append(list, slices.Concat(p, a))
		}
	}
	return list, one && two
}

// withAlternates puts an order of the primary sites before the alternates as they stand.
func (r orderRules) withAlternates(primary []int) []int { return slices.Concat(primary, r.alternate) }
