package drillstring

import "coredays/model/unit"

// Stretch is the lengthening of pipe by a pull: F L/(E A), Hooke. API RP 7G writes it with the plain-end
// weight, 3.4 lb/ft for each square inch.
func Stretch(area Area, length unit.Length, pull unit.Force) unit.Length {
	return length * unit.Length(float64(pull)/(young*float64(area)))
}

// FreeLength is the length of pipe above the point where it is stuck, from its stretch under a pull: the
// same turned round (Lapeyrouse 2nd ed.: 735294 e W / F).
func FreeLength(area Area, stretch unit.Length, pull unit.Force) unit.Length {
	return stretch * unit.Length(young*float64(area)/float64(pull))
}

// Stretch is the lengthening of the whole string by a pull at its ends.
func (s String) Stretch(pull unit.Force) (sum unit.Length) {
	for _, section := range s.Sections() {
		sum += Stretch(section.Body.Area(), section.Length, pull)
	}
	return sum
}

// FreeLength is the length from the top down to where the string is stuck, by its stretch under a pull,
// section by section; it is never more than the string.
func (s String) FreeLength(stretch unit.Length, pull unit.Force) (free unit.Length) {
	sections := s.Sections()
	for i := len(sections) - 1; i >= 0; i-- {
		section := sections[i]
		whole := Stretch(section.Body.Area(), section.Length, pull)
		if whole >= stretch {
			return free + FreeLength(section.Body.Area(), stretch, pull)
		}
		stretch -= whole
		free += section.Length
	}
	return free
}

// OwnStretch is how much longer the string hangs in a fluid than it lies on deck: each section by the
// weight below it and half its own. Sideways pressure, which shortens it a little, is left out.
func (s String) OwnStretch(fluid Density) (sum unit.Length) {
	var below unit.Force
	for _, section := range s.Sections() {
		own := buoyed(section.mass(), fluid)
		sum += Stretch(section.Body.Area(), section.Length, below+own/2)
		below += own
	}
	return sum
}
