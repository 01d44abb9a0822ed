package record

import "time"

// Row is a hole with the site that it belongs to.
type Row struct {
	Program, Leg, Site string
	Hole               Hole
	Of                 int // holes of the site, by the source
	Coring             bool
	Later              bool // the source says that the leg drilled another site before
	Partial            bool // the source has not all sites of the leg
}

// LeftOut is a row that is not used.
type LeftOut struct {
	Row int // line in the file
	Why string
}

// Group makes sites of rows, in the order in which they first come. A site that is not whole is
// left out: its days would be too few. torn are the sites of which a row was left out already.
func Group(rows []Row, torn map[[3]string]bool) (sites []Site, out []LeftOut) {
	of := map[[3]string][]Row{}
	var keys [][3]string
	for _, r := range rows {
		k := r.key()
		if of[k] == nil {
			keys = append(keys, k)
		}
		of[k] = append(of[k], r)
	}
	began := beginnings(rows)
	reached, left := hopsOf(rows)
	partial := partialLegs(rows)
	for _, k := range keys {
		s := Site{Program: k[0], Leg: k[1], Name: k[2]}
		for _, r := range of[k] {
			s.Holes = append(s.Holes, r.Hole)
		}
		s.inOrder()
		if why := s.why(of[k][0], torn[k]); why != "" {
			for _, r := range of[k] {
				out = append(out, LeftOut{r.Hole.Row, why})
			}
			continue
		}
		s.First = s.Start().Equal(began[[2]string{s.Program, s.Leg}]) && !of[k][0].Later
		s.Reached, s.LeftHanging = reached[k], left[k]
		s.Partial = partial[[2]string{s.Program, s.Leg}]
		sites = append(sites, s)
	}
	return sites, out
}

// partialLegs are those of which the source has not all sites.
func partialLegs(rows []Row) map[[2]string]bool {
	partial := map[[2]string]bool{}
	for _, r := range rows {
		if r.Partial {
			partial[[2]string{r.Program, r.Leg}] = true
		}
	}
	return partial
}

// beginnings are when the first hole of each leg began, whether or not its site is used.
func beginnings(rows []Row) map[[2]string]time.Time {
	began := map[[2]string]time.Time{}
	for _, r := range rows {
		leg := [2]string{r.Program, r.Leg}
		if at, known := began[leg]; !known || r.Hole.Start.Before(at) {
			began[leg] = r.Hole.Start
		}
	}
	return began
}

func (r *Row) key() [3]string { return [3]string{r.Program, r.Leg, r.Site} }

// why a site can't be scored, "" where it can.
func (s *Site) why(first Row, torn bool) string {
	switch {
	case !first.Coring:
		return "the expedition did not core"
	case torn:
		return "another row of the site was left out"
	case len(s.Holes) != first.Of:
		return "the site has more holes than the file has rows of it, or fewer"
	case !s.inTurn():
		return "the holes of the site do not follow each other in order and time"
	case !s.Cored():
		return "no hole of the site was cored below 20 m: scored apart"
	}
	return ""
}

// inTurn reports whether each hole begins after the one before.
func (s *Site) inTurn() bool {
	for i := 1; i < len(s.Holes); i++ {
		if s.Holes[i].Order == s.Holes[i-1].Order || s.Holes[i].Start.Before(s.Holes[i-1].Start) {
			return false
		}
	}
	return true
}
