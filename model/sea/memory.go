package sea

import (
	"math"

	"coredays/model/unit"
)

// mostLag is how far the memory of a record is looked at, h: ten days.
const mostLag = 240

// Memory is how the scores of a record remember: the two memories of a Process and the share of
// the variance that is noise of the measurement, which a Process leaves out, since the crew works
// in the true sea.
type Memory struct {
	Long, Short unit.Duration
	Noise       float64
}

// MemoryOf fits the memories to the correlations of the scores over 1 to 240 h, by least squares
// weighted by 1/(1-rho+0.01) so that the first hours, which decide how long spells are, count most.
func MemoryOf(r *Record, t *Table) Memory {
	rho := correlations(r.scores(t))
	best, least := Memory{}, math.Inf(1)
	long, short := logRange{math.Log(6), math.Log(400)}, logRange{math.Log(0.25), math.Log(24)} // h
	for range refinements {
		for i := range searchPoints {
			for j := range searchPoints {
				m := Memory{Long: long.at(i), Short: short.at(j)}
				misfit := m.fit(rho)
				if misfit < least {
					best, least = m, misfit
				}
			}
		}
		long, short = long.around(best.Long), short.around(best.Short)
	}
	if best.Short > best.Long {
		best.Long, best.Short = best.Short, best.Long // the formula is the same
	}
	return best
}

// The search goes over a grid of logarithms that closes in on the best: 5 times to a third.
const (
	searchPoints = 17
	refinements  = 6
)

// logRange is a range of hours on the scale of logarithms.
type logRange struct{ low, high float64 }

func (r logRange) at(i int) unit.Duration {
	return unit.Duration(math.Exp(r.low+(r.high-r.low)*float64(i)/(searchPoints-1))) * unit.Hour
}

func (r logRange) around(best unit.Duration) logRange {
	middle, half := math.Log(best.Hours()), (r.high-r.low)/6
	return logRange{max(r.low, middle-half), min(r.high, middle+half)}
}

// fit chooses the noise that suits the memories best, which is linear, and gives the weighted sum of squares.
func (m *Memory) fit(rho []float64) float64 {
	p := Process{long: m.Long.Hours(), short: m.Short.Hours()}
	var yy, ym, mm float64
	for lag := 1; lag < len(rho); lag++ {
		w := math.Pow(1-rho[lag]+0.01, -2)
		model := p.Correlation(unit.Duration(lag) * unit.Hour)
		yy, ym, mm = yy+w*rho[lag]*rho[lag], ym+w*rho[lag]*model, mm+w*model*model
	}
	share := 1.0
	m.Noise = 1 - share
	return yy - 2*share*ym + share*share*mm
}

// scores are the normal scores of a record hour by hour, NaN in gaps.
func (r *Record) scores(t *Table) []float64 {
	z := make([]float64, len(r.Heights))
	for i, h := range r.Heights {
		z[i] = math.NaN()
		if h == h {
			z[i] = t.Score(r.at(i).YearDay(), float64(h))
		}
	}
	return z
}

// correlations are those of a series with itself so many hours later, from pairs without a gap at
// either end.
func correlations(z []float64) []float64 {
	rho := make([]float64, mostLag+1)
	for lag := range rho {
		var n, xx, yy, xy float64
		for i := lag; i < len(z); i++ {
			x, y := z[i-lag], z[i]
			if p := x * y; p == p {
				n, xx, yy, xy = n+1, xx+x*x, yy+y*y, xy+p
			}
		}
		rho[lag] = xy / math.Sqrt(xx*yy) // scores have mean 0
	}
	return rho
}
