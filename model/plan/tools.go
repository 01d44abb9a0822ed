package plan

import "slices"

// PistonAlone reports whether no tool but piston corers is used at a site.
func (s *Site) PistonAlone() bool {
	cored := false
	for i := range s.Items {
		h := s.Items[i].Hole
		if h == nil {
			continue
		}
		if slices.ContainsFunc(h.Stages, func(st Stage) bool { return !st.With.Piston() }) {
			return false
		}
		cored = cored || len(h.Stages) > 0
	}
	return cored
}
