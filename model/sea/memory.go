package sea

import (
	"math"

	"coredays/model/unit"
)

// mostLag is how far the memory of a record is looked at, h: ten days.
const mostLag = 240

// Memory is how the scores of a record remember: the two memories of a Process.
type Memory struct{ Long, Short unit.Duration }

// MemoryOf fits the memories to a record: to the correlations of the scores over 1 to 240 h by
// least squares, residuals weighted by 1/(1-rho+0.01), and to how often the scores cross a level. The
// short memory is halfway (by ratio) between the two, as they disagree: with correlations alone the
// spells of five NDBC buoys came out 18 % too long on average, with crossings alone, to which the
// noise left in 3-hour means adds, calms of a day came out too rare.
func MemoryOf(r *Record, t *Table) Memory {
	z := r.scores(t)
	rho, first := correlations(z), firstCorrelation(z)
	best, least := Memory{}, math.Inf(1)
	for long := 6.0; long <= 400; long *= memoryStep {
		for short := 0.25; short <= 24; short *= memoryStep {
			m := Memory{Long: unit.Duration(long) * unit.Hour, Short: unit.Duration(short) * unit.Hour}
			if misfit := m.misfit(rho); misfit < least {
				best, least = m, misfit
			}
		}
	}
	long := max(best.Long, best.Short) // the formula is the same either way round
	short := min(best.Long, best.Short)
	return Memory{Long: long, Short: unit.Duration(math.Sqrt(float64(short * shortFor(long.Hours(), first))))}
}

// memoryStep is the ratio between memories that are tried, h.
const memoryStep = 1.05

// roughScores are the scores at which crossings are counted: the rougher half of the time, where
// the limits of work are.
var roughScores = [...]float64{0, 0.5, 1, 1.5, 2}

// firstCorrelation is the correlation over an hour that makes a normal score cross heights as
// often as these do. The crossings an hour, up and down, of two normals with correlation cos(a)
// are a/pi exp(-u^2/2) for small a [textbook].
func firstCorrelation(z []float64) float64 {
	var crossings [len(roughScores)]float64
	pairs := 0.0
	for i := 1; i < len(z); i++ {
		if p := z[i] + z[i-1]; p != p {
			continue
		}
		pairs++
		for k, u := range roughScores {
			if (z[i-1] > u) != (z[i] > u) {
				crossings[k]++
			}
		}
	}
	logs := 0.0
	for k, u := range roughScores {
		logs += math.Log(math.Pi*max(crossings[k], 0.5)/pairs) + u*u/2
	}
	return math.Cos(min(1, math.Exp(logs/float64(len(roughScores)))))
}

// shortFor is the short memory that gives a correlation over an hour with a long memory in hours,
// at most the long one, at least 3 minutes.
func shortFor(long, first float64) unit.Duration {
	low, high := 0.05, long
	for range 40 {
		middle := (low + high) / 2
		p := Process{long: long, short: middle}
		if p.Correlation(unit.Hour) < first {
			low = middle
		} else {
			high = middle
		}
	}
	return unit.Duration(high) * unit.Hour
}

// misfit is the weighted sum of squares between correlations seen and those of the memory.
func (m Memory) misfit(rho []float64) (sum float64) {
	p := Process{long: m.Long.Hours(), short: m.Short.Hours()}
	for lag := 1; lag < len(rho); lag++ {
		d := rho[lag] - p.Correlation(unit.Duration(lag)*unit.Hour)
		sum += d * d / ((1 - rho[lag] + 0.01) * (1 - rho[lag] + 0.01))
	}
	return sum
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
