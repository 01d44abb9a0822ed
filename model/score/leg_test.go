package score

import (
	"math"
	"slices"
	"testing"
)

// Sums of a leg go replication by replication: of two sites that move against each other nothing is left of
// the spread, of two that move together twice as much.
func TestALegKeepsWhatItsSitesShare(t *testing.T) {
	up, down := []float64{1, 2, 3}, []float64{3, 2, 1}
	sums, of := Summed([]Sampled{{10, up}, {1, up}, {20, down}, {2, up}}, []string{"a", "b", "a", "b"})
	if !slices.Equal(of, []string{"a", "b"}) || len(sums) != 2 {
		t.Fatalf("legs %v", of)
	}
	if sums[0].Actual != 30 || !slices.Equal(sums[0].Sample, []float64{4, 4, 4}) {
		t.Errorf("leg a: %v, want 30 and 4 each time", sums[0])
	}
	if sums[1].Actual != 3 || !slices.Equal(sums[1].Sample, []float64{2, 4, 6}) {
		t.Errorf("leg b: %v, want 3 and 2, 4, 6", sums[1])
	}
	if !slices.Equal(up, []float64{1, 2, 3}) {
		t.Errorf("the sites' own forecasts became %v", up)
	}
}

// By hand: of 0, 1, 2, 3, 4 the mean distance to 2 is 6/5 and half the mean distance of pairs 1, so CRPS 0.2; of
// 10 it is 8 less 1, 7. The quarters are 1 and 3, the tenths 0.4 and 3.6: 2 is in both bands, 3.5 only in the wider.
func TestCoverageByHand(t *testing.T) {
	sample := []float64{4, 0, 3, 1, 2}
	blank := Sampled{math.NaN(), sample}
	c := Cover(Cores, []Sampled{{2, sample}, {10, sample}, blank, {3.5, sample}, {2, sample}}, []string{"a", "a", "c", "b", "b"})
	if c.Cases != 4 || c.Legs != 2 || c.Inside50 != 0.5 || c.Inside80 != 0.75 {
		t.Errorf("%+v", c)
	}
	if want := (0.2 + 7 + (1.7 - 1) + 0.2) / 4; math.Abs(c.CRPS-want) > 1e-12 { // 3.5: (3.5+2.5+1.5+0.5+0.5)/5 = 1.7
		t.Errorf("CRPS %g, want %g", c.CRPS, want)
	}
	if q := blank.Quantiles(); !math.IsNaN(q.P50) || !math.IsNaN(q.CRPS) {
		t.Errorf("of a blank record %+v", q)
	}
	if q := (Sampled{2, sample}).Quantiles(); math.Abs(q.P10-0.4) > 1e-12 || q.P50 != 2 || math.Abs(q.P90-3.6) > 1e-12 || math.Abs(q.CRPS-0.2) > 1e-12 {
		t.Errorf("%+v", q)
	}
}
