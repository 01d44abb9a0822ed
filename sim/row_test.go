package sim

import "testing"

// Only what ranks first counts to the chance of the first rank; all counts to the chance of all.
func TestWhatRanksSecondCountsToTheWholeOnly(t *testing.T) {
	a, b := pistonHole("A", 33), pistonHole("B", 33)
	b.Rank = 2
	for undone, want := range [][2]float64{{0, 0}, {0, 1}} { // all, first
		s := sailed(t, oneSite(a, b), false)
		c := newColumns(s.v)
		r := make(row, c.width)
		if writeRow(c, r, s); r[colAll] != 1 || r[colFirst] != 1 {
			t.Fatalf("all done, yet %g and %g", r[colAll], r[colFirst])
		}
		s.items[undone].incomplete = true
		if writeRow(c, r, s); r[colAll] != want[0] || r[colFirst] != want[1] {
			t.Errorf("item %d incomplete: all %g, first rank %g; want %v", undone, r[colAll], r[colFirst], want)
		}
	}
}
