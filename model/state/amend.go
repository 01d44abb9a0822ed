package state

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/unit"
)

// Approval is how deep a site is approved, as amended while the ship is at sea.
type Approval struct {
	Site string
	To   float64 // m below the sea floor
}

// Amend is a plan with the approvals and ranks that the crew states; the plan itself where they state none that differs. Holes go
// no deeper than their site is approved. Notes tell what is amended, faults name the field.
func (c *Correction) Amend(p *plan.Plan) (amended *plan.Plan, notes, faults []string) {
	a := *p
	a.Sites = slices.Clone(p.Sites)
	for _, x := range c.Approvals {
		n := slices.IndexFunc(a.Sites, func(s plan.Site) bool { return s.Name == x.Site })
		switch {
		case n < 0:
			faults = append(faults, fmt.Sprintf("approvals: the scenario has no site %s", x.Site))
		case math.IsNaN(x.To):
			faults = append(faults, fmt.Sprintf("approvals: site %s has no to_mbsf: write the depth below the sea floor to which it is approved", x.Site))
		case math.Abs(x.To-float64(a.Sites[n].ApprovedTo)) > sameDepth:
			s := &a.Sites[n]
			was := "without an approved depth"
			if s.ApprovedTo > 0 {
				was = fmt.Sprintf("approved to %g m", float64(s.ApprovedTo))
			}
			notes = append(notes, fmt.Sprintf("site %s is approved to %g m by the state file; by the scenario it is %s", s.Name, x.To, was))
			s.ApprovedTo = unit.Depth(x.To)
			s.Items = slices.Clone(s.Items)
			for i := range s.Items {
				if h := s.Items[i].Hole; h != nil {
					cut, fault := noDeeper(h, s.ApprovedTo)
					if fault != "" {
						faults = append(faults, fmt.Sprintf("approvals: site %s: hole %s %s", s.Name, s.Items[i].Name, fault))
					}
					s.Items[i].Hole = cut
				}
			}
		}
	}
	for i := range c.Holes {
		h := &c.Holes[i]
		n := slices.IndexFunc(a.Sites, func(s plan.Site) bool { return s.Name == h.Site })
		if h.Rank == 0 || n < 0 {
			continue // what the scenario does not have is told where the state is put right
		}
		k := slices.IndexFunc(a.Sites[n].Items, func(x plan.Item) bool { return x.Name == h.Hole })
		if k < 0 || a.Sites[n].Items[k].Rank == h.Rank {
			continue
		}
		s := &a.Sites[n]
		notes = append(notes, fmt.Sprintf("%s of %s has rank %d by the state file; by the scenario it has rank %d", h.Hole, h.Site, h.Rank, s.Items[k].Rank))
		s.Items = slices.Clone(s.Items)
		s.Items[k].Rank = h.Rank
	}
	if len(notes) == 0 {
		return p, nil, faults
	}
	return &a, notes, faults
}

// sameDepth is by how much two depths may differ that a file states to a decimetre, m.
const sameDepth = 0.05

// noDeeper is a hole that goes no deeper than a depth: stages that would begin there are left out. fault tells what cannot be cut.
func noDeeper(h *plan.Hole, to unit.Depth) (cut *plan.Hole, fault string) {
	c := *h
	for _, casing := range h.Casing {
		if casing.To > to {
			return h, fmt.Sprintf("is to be cased to %g m: put the casing right in the scenario", float64(casing.To))
		}
	}
	c.DrillAheadTo = min(c.DrillAheadTo, to)
	c.Stages = nil
	begins := c.DrillAheadTo
	for i, s := range h.Stages {
		if begins = max(begins, s.From); i > 0 && begins >= to-unit.Depth(coring.Shortest) {
			break
		}
		s.To, s.From = min(s.To, to), min(s.From, to)
		c.Stages = append(c.Stages, s)
		begins = s.To
	}
	return &c, ""
}
