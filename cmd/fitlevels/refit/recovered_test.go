package refit

import (
	"fmt"
	"math"
	"testing"

	"coredays/model/coring"
	"coredays/model/record"
	"coredays/model/score"
)

// Five legs of one site each, one a part: four have 10 m where 10 m are foreseen, the last has 60 m. All together have twice what is
// foreseen; without the last the others have it as foreseen, so that its forecast is halved, and with it each of them is moved by
// (90/40)/2.
func TestALegIsForeseenByWhatTheOthersGave(t *testing.T) {
	var j judged
	var cases []score.Sampled
	for i, actual := range []float64{10, 10, 10, 10, 60} {
		j.Sites = append(j.Sites, record.Site{Holes: []record.Hole{{Cores: [coring.Tools]int{coring.APC: 1}}}})
		j.Legs = append(j.Legs, fmt.Sprint(i))
		cases = append(cases, score.Sampled{Actual: actual, Sample: []float64{8, 10, 12}})
	}
	moved := j.byOthers(score.Recovered, cases)
	middle := func(i int) float64 { return moved[i].Sample[1] }
	if got := middle(4); math.Abs(got-5) > 1e-9 {
		t.Errorf("the leg that stands out is foreseen with %g m, want 10 halved", got)
	}
	for i := range 4 {
		if got, want := middle(i), 10*(90.0/40)/2; math.Abs(got-want) > 1e-9 {
			t.Errorf("leg %d is foreseen with %g m, want %g", i, got, want)
		}
	}
}

// By hand: 8, 10 and 12 about their median, twice as far on a logarithmic scale, and half as much: 3.2, 5 and 7.2.
func TestASampleIsWidenedAboutItsMedian(t *testing.T) {
	for r, want := range []float64{3.2, 5, 7.2} {
		if got := widened([]float64{8, 10, 12}, 0.5, 2)[r]; math.Abs(got-want) > 1e-9 {
			t.Errorf("%d: %g, want %g", r, got, want)
		}
	}
}
