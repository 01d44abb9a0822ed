package statistics

import (
	"math"
	"testing"
)

// upTo is the numbers from 1 to n, so that a value is its rank.
func upTo(n int) (values []float64) {
	for i := range n {
		values = append(values, float64(i+1))
	}
	return values
}

// With n values so many of which lie below the quantile as n throws with the chance p, the interval leaves at
// most 2.5 % on each side. By hand: of ten throws with even chances at most one succeeds in 11 of 1,024
// cases, at most two in 56 of 1,024, which is too much; so the second and the ninth. Of a thousand with 0.9
// the mean is 900 and the deviation 9.487; the ranks 881 and 919 are the binomial distribution's, which
// leave 2.2 and 2.3 %, while 882 and 918 would leave 2.8 and 3.0. Of 20 with 0.1, none succeeds in
// 0.9^20 = 12 % of cases: there is no lower bound but the least; at most four do in 95.7 %, at most five in 98.9 %.
func TestIntervalsOfQuantilesAreOrderStatistics(t *testing.T) {
	for _, c := range []struct {
		n    int
		p    float64
		want [2]float64
	}{{10, 0.5, [2]float64{2, 9}}, {1000, 0.9, [2]float64{881, 919}}, {1000, 0.1, [2]float64{82, 120}}, {20, 0.1, [2]float64{1, 6}}, {1, 0.5, [2]float64{1, 1}}} {
		if got := interval(upTo(c.n), c.p); got != c.want {
			t.Errorf("of %d at %g: ranks %v, want %v", c.n, c.p, got, c.want)
		}
	}
}

// By hand: 1 to 9 have the mean 5 and the variance 60/8; quantiles by R-7 lie at 1+8p.
func TestAColumnIsSummarisedAsByHand(t *testing.T) {
	s := Summarise(append(upTo(9), math.NaN()))
	if s.N != 9 || s.Mean != 5 || math.Abs(s.SD-math.Sqrt(7.5)) > 1e-12 || math.Abs(s.P10-1.8) > 1e-12 || s.P50 != 5 || math.Abs(s.P90-8.2) > 1e-12 {
		t.Errorf("%+v", s)
	}
	if s := Summarise([]float64{7}); s.SD != 0 || s.P90 != 7 {
		t.Errorf("of one: %+v", s)
	}
	if s := Summarise(nil); s.N != 0 || s.Mean != 0 {
		t.Errorf("of none: %+v", s)
	}
}
