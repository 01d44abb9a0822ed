package sea

import (
	"slices"
	"time"

	"golang.org/x/exp/stats"
)

// Windows are the lengths of calm that waits are counted for, h.
var Windows = [3]int{12, 24, 48}

// Spells tells how a sea stays above and below a height, over one or more series of hours with
// gaps. All of it holds for one season; spells and waits count to the season in which they begin.
type Spells struct {
	hours, above float64 // with a height; above the height
	crossings    float64 // up and down, both hours without a gap between
	waited       [len(Windows)]float64
	waits        [len(Windows)]float64 // hours from which the wait is known
	inWindows    [len(Windows)]float64 // hours that belong to a calm so long
	storms       []float64             // lengths of whole spells above, h
	calms        []float64             // and below
}

// Gather adds the hours of a series to the spells of its season and of all the year, one for each
// height. Heights are in metres, the series goes hour by hour from start, NaN in a gap.
func Gather(into [][Seasons]Spells, start time.Time, series []float32, heights []float64) {
	seasons := make([]Season, len(series))
	month := newMonths(start)
	for i := range series {
		seasons[i] = SeasonOf(month.of(i))
	}
	for i, height := range heights {
		t := tally{into: &into[i], series: series, seasons: seasons, height: float32(height)}
		t.hours()
		t.spells()
		for w := range Windows {
			t.waits(w)
		}
	}
}

// tally counts one height in one series.
type tally struct {
	into    *[Seasons]Spells
	series  []float32
	seasons []Season
	height  float32
}

// at are the spells that an hour counts to.
func (t *tally) at(hour int) [2]*Spells {
	return [2]*Spells{&t.into[AllYear], &t.into[t.seasons[hour]]}
}

func (t *tally) hours() {
	for i, h := range t.series {
		if h != h {
			continue
		}
		for _, s := range t.at(i) {
			s.hours++
			if h > t.height {
				s.above++
			}
			if i > 0 && t.series[i-1] == t.series[i-1] && (t.series[i-1] > t.height) != (h > t.height) {
				s.crossings++
			}
		}
	}
}

// spells finds whole spells: those with a crossing at both ends and no gap in them.
func (t *tally) spells() {
	begun := -1
	for i := 1; i < len(t.series); i++ {
		a, b := t.series[i-1], t.series[i]
		if a != a || b != b {
			begun = -1
			continue
		}
		if (a > t.height) == (b > t.height) {
			continue
		}
		if begun >= 0 {
			for _, s := range t.at(begun) {
				s.add(a > t.height, float64(i-begun))
			}
		}
		begun = i
	}
}

func (s *Spells) add(above bool, hours float64) {
	if above {
		s.storms = append(s.storms, hours)
	} else {
		s.calms = append(s.calms, hours)
	}
}

// waits counts, from every hour, the hours until the start of a window, going backwards. A wait
// that a gap or the end cuts off is not known.
func (t *tally) waits(w int) {
	const unknown = -1
	wait, calm := unknown, 0
	for i := len(t.series) - 1; i >= 0; i-- {
		h := t.series[i]
		if h != h {
			wait, calm = unknown, 0
			continue
		}
		if calm++; h > t.height {
			calm = 0
		}
		switch {
		case calm >= Windows[w]:
			wait = 0
		case wait != unknown:
			wait++
		}
		if wait == unknown {
			continue
		}
		for _, s := range t.at(i) {
			s.waits[w]++
			s.waited[w] += float64(wait)
		}
	}
	t.belong(w)
}

// belong counts the hours of calms that are long enough for a window.
func (t *tally) belong(w int) {
	calm := 0
	for i := 0; i <= len(t.series); i++ {
		if i < len(t.series) && t.series[i] <= t.height {
			calm++
			continue
		}
		for j := i - calm; j < i && calm >= Windows[w]; j++ {
			for _, s := range t.at(j) {
				s.inWindows[w]++
			}
		}
		calm = 0
	}
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
