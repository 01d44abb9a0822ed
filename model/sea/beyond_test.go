package sea

import (
	"math"
	"testing"

	"coredays/model/chance"
)

// Of a thousand hours nothing is seen beyond one in two thousand, a score of 3.29. A lognormal sea of 2 m and a
// sigma of 0.3 goes on there as it did: one in 31,574 is 2 exp(0.3 x 4) = 6.64 m, and 0.602 m on the other side.
func TestBeyondARecordItsSeaGoesOnAsSteeply(t *testing.T) {
	var counts [bins]float64
	const total, sigma = 1000.0, 0.3
	for b := range counts {
		from := lowestBin + float64(b)*binWidth
		counts[b] = total * (normal.CDF((from+binWidth-math.Log(2))/sigma) - normal.CDF((from-math.Log(2))/sigma))
	}
	q := quantilesOf(&counts, total)
	for z, want := range map[float64]float64{-4: 0.602, -3.5: 0.700, 0: 2, 3.5: 5.715, 4: 6.640, 5: 8.963} {
		near(t, "height, m", math.Exp(q.at(z))/want, 1, 0.002)
	}
}

func TestPiecesOfARecordAreFifteenToTwentyDaysLong(t *testing.T) {
	b := blocksOf(t, madeUp(t, 6))
	const n = 3000
	shortest, longest, sum := math.MaxInt, 0, 0
	for i := range n {
		_, length, ok := b.pick(chance.Replication(9, i), 3000+i%2000, float32(math.Log(2)))
		if !ok {
			t.Fatal("nothing found")
		}
		shortest, longest, sum = min(shortest, length), max(longest, length), sum+length
	}
	if shortest < 15*24 || shortest > 15*24+2 || longest > 20*24 || longest < 20*24-2 {
		t.Errorf("pieces of %d to %d h, want 360 to 480", shortest, longest)
	}
	near(t, "mean length, h", float64(sum)/n, 17.5*24, 4*35/math.Sqrt(n)) // evenly spread over 121 h: a standard deviation of 35 h
}

// Six years of which 3.6 or 4.5 have heights, the gaps going through the seasons from year to year: pieces want four.
func TestPiecesWantFourYearsOfHeights(t *testing.T) {
	for lost, want := range map[int]bool{40: false, 25: true} {
		r := madeUp(t, 6)
		r.Report.Hours = 0
		for i := range r.Heights {
			if i/24%100 < lost {
				r.Heights[i] = float32(math.NaN())
			} else {
				r.Report.Hours++
			}
		}
		l, err := NewLikeness(r, "gaps")
		if err != nil {
			t.Fatal(err)
		}
		if l.Blocks != want {
			t.Errorf("%.1f years of heights: pieces %v", r.Years(), l.Blocks)
		}
	}
}

// A hundred hours at a limit of 3 m: calms of 11, 12 and 30 h. In the first nobody comes back to work.
func TestLostIsAllButCalmsOfTwelveHours(t *testing.T) {
	series := make([]float32, 100)
	for i := range series {
		series[i] = 4
		if i >= 5 && i < 16 || i >= 20 && i < 32 || i >= 50 && i < 80 {
			series[i] = 2
		}
	}
	s := Study{Question: Question{Coring: 1}, Work: NewTally(ByMonth, []float64{1, 3})}
	s.Work.Add(newYear(2027), series)
	for month := range 2 {
		near(t, "share lost", s.Lost(month), 0.58, 1e-12)
	}
}

// Two thirds of a cell are water: near shore whatever the table gives it; nine tenths are not.
func TestACellWithMuchLandIsNearShore(t *testing.T) {
	for water, want := range map[float64]bool{0.1: true, 0.4: true, 0.66: true, 0.9: false, 1: false} {
		if got := warns(Climate{Cautions: cautions(&cell{water: water}, 30, false)}, "near shore"); got != want {
			t.Errorf("%.0f %% water: near shore %v", 100*water, got)
		}
	}
	if !warns(Climate{Cautions: cautions(&cell{water: 1, coastal: true}, 30, false)}, "near shore") {
		t.Error("a coastal cell is not near shore")
	}
}
