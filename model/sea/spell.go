package sea

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/unit"
)

// Correlation is that of the scores at two times so far apart.
func (p *Process) Correlation(apart unit.Duration) float64 {
	t, t1, t2 := math.Abs(apart.Hours()), p.long, p.short
	if t1 == t2 {
		return (1 + t/t1) * math.Exp(-t/t1) // the limit of the line below
	}
	return (t1*math.Exp(-t/t1) - t2*math.Exp(-t/t2)) / (t1 - t2) // autocorrelation of the CAR(2) process
}

// MeanSpell is how long the sea stays above, and below, a height on average, where exceeded is
// the share of time above it. It counts every crossing however short: records read hourly or
// every 3 hours miss some and show longer spells. With memories fitted to the same records (37 h
// and 3.6 h) it is 14 % off on average over 154 cells of station, season and height. The share
// must be between 0 and 1.
func (p *Process) MeanSpell(exceeded float64) (above, below unit.Duration) {
	u := distuv.UnitNormal.Quantile(1 - exceeded)
	// Rice: upcrossings a unit of time = sqrt(-rho''(0)) exp(-u^2/2) / 2 pi, with -rho''(0) = 1/(T1 T2)
	each := unit.Duration(2*math.Pi*math.Sqrt(p.long*p.short)*math.Exp(u*u/2)) * unit.Hour
	return each * unit.Duration(exceeded), each * unit.Duration(1-exceeded)
}
