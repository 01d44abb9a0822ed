package sea

import (
	"math"
	"slices"
	"testing"
)

func TestATableOfARecordHasTheHeightsAroundEachDay(t *testing.T) {
	r := madeUp(t, 6)
	table, err := TableOf(r)
	if err != nil {
		t.Fatal(err)
	}
	for _, day := range []int{1, 100, 366} {
		var around []float64
		for i, h := range r.Heights {
			off := math.Abs(float64(r.at(i).YearDay() - day))
			if min(off, 366-off) <= 20 {
				around = append(around, float64(h))
			}
		}
		slices.Sort(around)
		for _, z := range []float64{-2, -1, 0, 1, 2} { // knots
			want := around[int(normal.CDF(z)*float64(len(around)))]
			near(t, "quantile over the record's", table.Height(day, z)/want, 1, 0.006) // heights are sorted into bins of 0.5 %
		}
	}
}

func TestScoresOfARecordUndoItsHeightsFarBeyondIt(t *testing.T) {
	table, err := TableOf(madeUp(t, 2))
	if err != nil {
		t.Fatal(err)
	}
	for day := 1; day <= 366; day += 73 {
		last := 0.0
		for z := -6.0; z <= 6; z += 0.01 {
			h := table.Height(day, z)
			if h <= last {
				t.Fatalf("day %d: %g m at %g after %g m", day, h, z, last)
			}
			last = h
			near(t, "score", table.Score(day, h), z, 1e-6)
		}
	}
}

// A calm for ever has one height; its table must still tell scores from heights.
func TestARecordOfOneHeightStillHasScores(t *testing.T) {
	var counts [bins]float64
	counts[700] = 1000
	q := quantilesOf(&counts, 1000)
	for k := 1; k < knots; k++ {
		if q[k] <= q[k-1] {
			t.Errorf("knot %d: %g after %g", k, q[k], q[k-1])
		}
	}
}
