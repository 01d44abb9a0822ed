package ship

import (
	"math"
	"testing"

	"coredays/model/sea"
	"coredays/model/unit"
)

// By hand: a score of 2 known with a skill of 0.8 leaves sqrt(1-0.64) = 0.6 of what is drawn. Half way to a score of 0
// with a skill of 0.6 it is 1, with a skill of 0.7, which leaves sqrt(0.51). After the last one, at a time when the
// process keeps c, the skill is 0.6 c.
func TestKnownSeaIsBentAndForgotten(t *testing.T) {
	p := sea.NewProcess(sea.LongMemory, sea.ShortMemory, unit.Hour)
	k := newSeaKnown([]stated{{10, 2, 0.8}, {14, 0, 0.6}}, p)
	c := p.Correlation(20 * unit.Hour)
	for _, x := range []struct {
		step        int
		drawn, want float64
	}{
		{10, 1, 2 + 0.6}, {10, -1, 2 - 0.6}, {12, 1, 1 + math.Sqrt(0.51)}, {14, 1, 0.8},
		{34, 1, math.Sqrt(1 - 0.36*c*c)}, {10 + knownAhead, 0.7, 0.7}, {8, 1, 2.6},
	} {
		if got := k.bent(x.step, x.drawn); math.Abs(got-x.want) > 1e-12 {
			t.Errorf("step %d, %g drawn: %g, want %g", x.step, x.drawn, got, x.want)
		}
	}
}
