package sea

import (
	"slices"

	"golang.org/x/exp/stats"
)

// Windows are the lengths of calm that waits are counted for, h.
var Windows = [3]int{12, 24, 48}

// Spells says how a sea stays above and below a height, over one or more series of hours with
// gaps, in one group of a division of the year; spells and waits count to the group in which they
// begin.
type Spells struct {
	hours, above float64 // with a height; above the height
	crossings    float64 // up and down, both hours without a gap between
	waited       [len(Windows)]float64
	waits        [len(Windows)]float64 // hours from which the wait is known
	inWindows    [len(Windows)]float64 // hours that belong to a calm so long
	storms       []float64             // lengths of whole spells above, h
	calms        []float64             // and below
}

func (s *Spells) add(above bool, hours float64) {
	if above {
		s.storms = append(s.storms, hours)
	} else {
		s.calms = append(s.calms, hours)
	}
}

// merge adds what was counted elsewhere.
func (s *Spells) merge(o *Spells) {
	s.hours, s.above, s.crossings = s.hours+o.hours, s.above+o.above, s.crossings+o.crossings
	for w := range Windows {
		s.waited[w], s.waits[w], s.inWindows[w] = s.waited[w]+o.waited[w], s.waits[w]+o.waits[w], s.inWindows[w]+o.inWindows[w]
	}
	s.storms, s.calms = append(s.storms, o.storms...), append(s.calms, o.calms...)
}

// Hours is how many hours were counted.
func (s *Spells) Hours() float64 { return s.hours }

// Crossings is how often the sea rose above the height or fell below it.
func (s *Spells) Crossings() float64 { return s.crossings }

// ShareAbove is the share of the time above the height; NaN without hours.
func (s *Spells) ShareAbove() float64 { return s.above / s.hours }

// MeanAbove is the mean length of a spell above, h: the hours above over the ways up, counted as
// half of all crossings, which gaps do not bias. Without crossings it is infinite or NaN.
func (s *Spells) MeanAbove() float64 { return 2 * s.above / s.crossings }

// MeanBelow is the mean length of a spell below, h, counted likewise.
func (s *Spells) MeanBelow() float64 { return 2 * (s.hours - s.above) / s.crossings }

// MeanWait is the mean wait from any hour until the start of a window, h; NaN where none came.
func (s *Spells) MeanWait(window int) float64 { return s.waited[window] / s.waits[window] }

// ShareInWindows is the share of the time that belongs to a calm as long as a window.
func (s *Spells) ShareInWindows(window int) float64 { return s.inWindows[window] / s.hours }

// StormAt is the length that a share of the spells above do not reach, h, and CalmAt that of the
// spells below; false without spells.
func (s *Spells) StormAt(share float64) (float64, bool) { return lengthAt(s.storms, share) }

// CalmAt is the length of the spells below; see StormAt.
func (s *Spells) CalmAt(share float64) (float64, bool) { return lengthAt(s.calms, share) }

func lengthAt(lengths []float64, share float64) (float64, bool) {
	if len(lengths) == 0 {
		return 0, false
	}
	sorted := slices.Clone(lengths)
	slices.Sort(sorted)
	return stats.Quantiles(sorted, share)[0], true
}
