package random

import (
	"math"
	"testing"

	"golang.org/x/exp/stats"

	"coredays/model/chance"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// A standard normal that is more than 0.5 has the mean 1.141078 and the variance 0.268480 (by hand in model/learn,
// TestOneBoundIsTheTruncatedNormal). A far bound is kept, and a value without any run of its own is no less than the bound.
func TestBeyondIsTheTruncatedNormal(t *testing.T) {
	v := &voyage.Voyage{}
	for range int(rig.Rates) {
		v.Quantities = append(v.Quantities, spread.Quantity{Shape: line{}, Shares: spread.All(spread.Run)}.Compile())
		v.Purposes, v.Above = append(v.Purposes, chance.Key(len(v.Purposes))), append(v.Above, chance.Key(len(v.Above)))
	}
	v.Quantities[1] = spread.Quantity{Shape: line{}, Shares: spread.All(spread.Site)}.Compile()
	s := New(v)
	const n = 20_000
	var values []float64
	for i := range n {
		s.Begins(chance.Replication(3, i))
		s.Place = Place{Site: 1, Hole: 1}
		x := s.Beyond(0, 0.5)
		if x < 0.5 {
			t.Fatalf("%g is not beyond 0.5", x)
		}
		values = append(values, x)
		if x := s.Beyond(0, 6.9); x < 6.9 || math.IsInf(x, 0) {
			t.Fatalf("%g is not beyond 6.9", x)
		}
		if x := s.Beyond(1, 3); x < 3 {
			t.Fatalf("%g is not beyond 3", x)
		}
	}
	if got := stats.Mean(values); math.Abs(got-1.141078) > 4*math.Sqrt(0.26848/n) {
		t.Errorf("mean %.4f, want 1.1411", got)
	}
}
