package records

import (
	"math"
	"testing"

	"coredays/model/coring"
	"coredays/model/spread"
)

// Half cores oftener: the mean goes down by a tenth, and the longest core is as long as ever. Of half a barrel and a whole one, evenly, the mean
// 7.5 m becomes 6.75 m where 65 in 100 are half ones: the score moves by that of 0.35 (by hand).
func TestShorterCoresAreMoreHalfCores(t *testing.T) {
	half := spread.Table{P: []float64{0.49999, 0.50001}, Value: []float64{5, 10}}
	moved := withMean(half, 0.9)
	if got := meanOf(moved); math.Abs(got-6.75) > 0.02 {
		t.Errorf("mean %.3f, by hand 6.75", got)
	}
	if low, high := moved.Quantile(0.64), moved.Quantile(0.66); low != 5 || high != 10 {
		t.Errorf("quantiles about 0.65: %g and %g, want 5 and 10", low, high)
	}
	if whole := withMean(half, 1); whole.Quantile(0.6) != 10 {
		t.Error("cores of the ship's years were changed")
	}
}

// The years since 2004 have shorter cores, those of the ship itself are as they were.
func TestCoresOfTheYearsStandInTheModel(t *testing.T) {
	u, faults := Model()
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	if e := u.era(1995); e.Cores[coring.RCB] != 1 || e.Cores[coring.APC] != 1 {
		t.Errorf("1995: %+v", e)
	}
	near := func(x, want float64) bool { return math.Abs(x-want) < 1e-9 }
	if e := u.era(2010); !near(e.Cores[coring.RCB], 0.94) || !near(e.Cores[coring.XCB], 0.91) || !near(e.Cores[coring.HLAPC], 0.96) {
		t.Errorf("2010: %+v", e)
	}
	if e := (&Unrecorded{}).era(2010); e.Cores[coring.RCB] != 1 {
		t.Errorf("without eras: %+v", e)
	}
	if l := u.LegTime; !near(l.Mean, 39) || !near(l.SD, 8) || !near(l.Otherwise, 0.11) || l.Freedom != 2 || !near(l.Scale, 0.8) {
		t.Errorf("time of legs: %+v", l)
	}
}
