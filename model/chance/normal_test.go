package chance

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

func TestNormalDrawsAreTheQuantilesOfUniformOnes(t *testing.T) {
	s, worst := Replication(3, 0), 0.0
	for n := range 1_000_000 {
		worst = max(worst, math.Abs(s.Normal(n)-distuv.UnitNormal.Quantile(s.Uniform(n))))
	}
	if worst > 2e-4 || worst == 0 {
		t.Errorf("off by %.2g at worst", worst)
	}
}

// Where the straight line would be far off, at either end, the quantile is exact.
func TestNormalDrawsOfTheTailsAreExact(t *testing.T) {
	s, tails := Replication(5, 0), 0
	for n := range 200_000 {
		if u := s.Uniform(n); min(u, 1-u) < float64(exactCells)/normalCells {
			tails++
			if want := distuv.UnitNormal.Quantile(u); math.Abs(s.Normal(n)-want) > 1e-12*math.Abs(want) {
				t.Fatalf("draw %d is %v, want %v", n, s.Normal(n), want)
			}
		}
	}
	if want := 200_000 * 2 * exactCells / normalCells; tails < want*9/10 || tails > want*11/10 {
		t.Errorf("%d draws in the tails, want about %d", tails, want)
	}
}
