package record

import "coredays/model/unit"

// AllCores counts the cores of a site, those of holes near the sea floor and of other tools too.
func (s *Site) AllCores() (n int) {
	for i := range s.Holes {
		n += s.Holes[i].All
	}
	return n
}

// Recovered is what was recovered at a site, holes near the sea floor too; not a number where it is blank for
// one of its holes.
func (s *Site) Recovered() (sum unit.Length) {
	for i := range s.Holes {
		sum += s.Holes[i].Recovered
	}
	return sum
}
