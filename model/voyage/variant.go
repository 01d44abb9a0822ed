package voyage

import (
	"time"

	"coredays/model/unit"
)

// Variants of a voyage share what is compiled of it.

// InOrder is the voyage with the sites in another order. The compiled figures of places and passages
// are those of the voyage, since none depends on the order.
func (v *Voyage) InOrder(order []int) *Voyage {
	other, p := *v, *v.Plan
	p.Order = order
	other.Plan = &p
	return &other
}

// ByTheSeaFrom is the voyage in a sea that begins at a moment, which must not be after sailing.
// Voyages in a sea from the same moment meet the same sea on the same date.
func (v *Voyage) ByTheSeaFrom(moment time.Time) *Voyage {
	other := *v
	other.SeaFrom = moment
	return &other
}

// WithDays is the voyage with so many days port to port.
func (v *Voyage) WithDays(days unit.Duration) *Voyage {
	other, p := *v, *v.Plan
	p.SeaDays = days
	other.Plan, other.Deadline = &p, float64(days)
	return &other
}

// Visits are the sites in the order in which they are visited: the primary ones, then the alternates.
func (v *Voyage) Visits() (visits []int) {
	for _, alternate := range []bool{false, true} {
		for _, n := range v.Plan.Order {
			if v.Sites[n].Alternate == alternate {
				visits = append(visits, n)
			}
		}
	}
	return visits
}

// Sailing is the voyage that sails at another moment.
func (v *Voyage) Sailing(at time.Time) *Voyage {
	other, p := *v, *v.Plan
	p.Sails = at
	other.Plan = &p
	return &other
}
