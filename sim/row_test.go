package sim

import (
	"testing"

	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// Only what ranks first counts to the chance of the first rank; all counts to the chance of all.
func TestWhatRanksSecondCountsToTheWholeOnly(t *testing.T) {
	a, b := simtest.PistonHole("A", 33), simtest.PistonHole("B", 33)
	b.Rank = 2
	for undone, want := range [][2]float64{{0, 0}, {0, 1}} { // all, first
		s := sailed(t, simtest.OneSite(a, b), false)
		c := statistics.NewLayout(s.Voyage)
		r := make(statistics.Row, c.Width)
		if writeRow(c, r, s); r[statistics.ColAll] != 1 || r[statistics.ColFirst] != 1 {
			t.Fatalf("all done, yet %g and %g", r[statistics.ColAll], r[statistics.ColFirst])
		}
		s.Items[undone].Incomplete = true
		if writeRow(c, r, s); r[statistics.ColAll] != want[0] || r[statistics.ColFirst] != want[1] {
			t.Errorf("item %d incomplete: all %g, first rank %g; want %v", undone, r[statistics.ColAll], r[statistics.ColFirst], want)
		}
	}
}
