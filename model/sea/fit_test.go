package sea

import (
	"math"
	"math/rand/v2"
	"testing"

	"coredays/model/unit"
)

// unlike is a record that no sea of two memories is like: weather that forgets over 20 h and weather that forgets
// over 150 h, and in each hour a little noise of its own. The scores of 1.5 m and a variation of 40 %.
func unlike(t *testing.T, years int) *Record {
	t.Helper()
	n := years * 8766
	quick, slow := scores(NewProcess(20*unit.Hour, 4*unit.Hour, unit.Hour), n, 21), scores(NewProcess(150*unit.Hour, 6*unit.Hour, unit.Hour), n, 22)
	noise, table := rand.New(rand.NewPCG(23, 1)), tableOf(t, flat(1.5, 0.4))
	r := &Record{Start: newYear(2010), Heights: make([]float32, n)}
	for i := range r.Heights {
		r.Heights[i] = float32(table.Height(1, math.Sqrt(0.68)*quick[i]+math.Sqrt(0.3)*slow[i]+math.Sqrt(0.02)*noise.NormFloat64()))
	}
	return r
}

// leastSquares searches the memories, in h, whose correlations are nearest to those seen over 1 to 240 h, each
// difference counted in units of what is left to 1 and a hundredth: by steps that halve, from where it is given to begin.
func leastSquares(rho []float64, long, short float64) (float64, float64) {
	misfit := func(t1, t2 float64) (sum float64) {
		for lag := 1; lag <= 240; lag++ {
			t := float64(lag)
			model := (t1*math.Exp(-t/t1) - t2*math.Exp(-t/t2)) / (t1 - t2) // of a CAR(2) process
			off := (rho[lag] - model) / (1.01 - rho[lag])
			sum += off * off
		}
		return sum
	}
	for step := 0.3; step > 1e-4; {
		best, a, b := misfit(long, short), long, short
		for _, f := range []float64{1 / (1 + step), 1, 1 + step} {
			for _, g := range []float64{1 / (1 + step), 1, 1 + step} {
				if m := misfit(long*f, short*g); m < best {
					best, a, b = m, long*f, short*g
				}
			}
		}
		if a == long && b == short {
			step /= 2
		}
		long, short = a, b
	}
	return long, short
}

// The long memory is that of least squares. The short one lies halfway by ratio between that of least squares
// and the one with as many crossings of the scores 0 to 2 as the record has.
func TestTheMemoryOfARecordIsThatOfLeastSquaresAndOfItsCrossings(t *testing.T) {
	r := unlike(t, 8)
	table, err := TableOf(r)
	if err != nil {
		t.Fatal(err)
	}
	z := r.scores(table)
	long, short := leastSquares(correlations(z), 30, 4)
	rough := shortFor(long, firstCorrelation(z)).Hours()
	if short < 2*rough {
		t.Fatalf("the short memory is %.2f h by correlations and %.2f h by crossings: too much alike for this test", short, rough)
	}
	m := MemoryOf(r, table)
	near(t, "long memory over least squares", m.Long.Hours()/long, 1, 0.05) // memories 5 % apart are tried
	near(t, "short memory over the middle of both", m.Short.Hours()/math.Sqrt(short*rough), 1, 0.05)
}
