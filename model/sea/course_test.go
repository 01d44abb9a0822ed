package sea

import (
	"testing"

	"coredays/model/chance"
	"coredays/model/unit"
)

// courses are one of each kind with a table.
func courses(t testing.TB) map[string]*Likeness {
	return map[string]*Likeness{"process": likenessOf(t, 2), "blocks": likenessOf(t, 6)}
}

func TestASeriesDoesNotDependOnWhenItIsAskedFor(t *testing.T) {
	for name, l := range courses(t) {
		var forward, jumping, again Series
		for _, s := range []*Series{&forward, &jumping, &again} {
			s.Begin(l.Course, chance.Replication(1, 3), newYear(2027))
		}
		jumping.Height(1999, l.Table)
		copied := new(Series)
		for step := range 2000 {
			if step == 700 {
				copied.CopyFrom(&again)
			}
			want := forward.Height(step, l.Table)
			if got := jumping.Height(step, l.Table); got != want {
				t.Fatalf("%s, step %d: %g m asked for at once, %g m in order", name, step, got, want)
			}
			if step >= 700 {
				if got := copied.Height(step, l.Table); got != want {
					t.Fatalf("%s, step %d: %g m in a copy, %g m in the original", name, step, got, want)
				}
			}
			again.Height(step, l.Table)
		}
	}
}

func TestReplicationsAndSeedsHaveSeasOfTheirOwn(t *testing.T) {
	for name, l := range courses(t) {
		seen := map[float64]bool{}
		for n := range 20 {
			var s Series
			s.Begin(l.Course, chance.Replication(uint64(n/10), n%10), newYear(2027))
			seen[s.Height(500, l.Table)] = true
		}
		if len(seen) < 19 {
			t.Errorf("%s: %d different heights in 20 replications", name, len(seen))
		}
	}
}

// The crew is given scores; in a sea made of pieces they are those of its heights.
func TestHeightOfAScoreIsTheHeight(t *testing.T) {
	for name, l := range courses(t) {
		var s Series
		s.Begin(l.Course, chance.Replication(1, 1), newYear(2027))
		for step := range 1440 {
			if got, want := l.Table.Height(s.Day(step), s.Score(step)), s.Height(step, l.Table); got/want > 1.0001 || got/want < 0.9999 {
				t.Fatalf("%s, step %d: score %g is %g m, the sea is %g m", name, step, s.Score(step), got, want)
			}
		}
	}
}

func TestTheDayOfTheYearGoesOnIntoTheNextYear(t *testing.T) {
	var s Series
	s.Begin(ByProcess(NewProcess(LongMemory, ShortMemory, unit.Hour)), chance.Replication(1, 1), newYear(2027).AddDate(0, 11, 29))
	for step, want := range map[int]int{0: 364, 24: 365, 24*3 + 6: 2, 24*33 + 6: 32} {
		if got := s.Day(step); got != want {
			t.Errorf("step %d: day %d, want %d", step, got, want)
		}
	}
}

func TestASeriesThatBeginsAgainAllocatesNothing(t *testing.T) {
	for name, l := range courses(t) {
		var s Series
		n, sum := 0, 0.0
		if allocations := testing.AllocsPerRun(50, func() {
			s.Begin(l.Course, chance.Replication(1, n%3), newYear(2027))
			for step := range 1440 {
				sum += s.Height(step, l.Table) + s.Score(step)
			}
			n++
		}); allocations > 0 {
			t.Errorf("%s: %g allocations", name, allocations)
		}
	}
}
