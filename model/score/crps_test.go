package score

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

// normal is the standard normal at the middles of n cells of equal probability.
func normal(n int) Forecast {
	f := make(Forecast, n)
	for i := range f {
		f[i] = distuv.UnitNormal.Quantile((float64(i) + 0.5) / float64(n))
	}
	return f
}

// The closed form of the CRPS of a normal forecast: Gneiting and Raftery 2007, JASA 102, 359, section 4.2.
func ofNormal(z float64) float64 {
	return z*(2*distuv.UnitNormal.CDF(z)-1) + 2*distuv.UnitNormal.Prob(z) - 1/math.Sqrt(math.Pi)
}

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if math.Abs(got-want) > within || math.IsNaN(got) {
		t.Errorf("%s: %.6g, want %.6g within %.2g", what, got, want, within)
	}
}

func TestCRPSOfANormalSampleIsTheClosedForm(t *testing.T) {
	f := normal(20_000)
	for _, z := range []float64{-2.5, -0.7, 0, 0.3, 1, 3} {
		near(t, "CRPS", f.CRPS(z), ofNormal(z), 2e-4) // the stratified sample's own error falls as 1/n
	}
}

func TestCRPSOfAUniformSampleIsTheClosedForm(t *testing.T) {
	f := make(Forecast, 10_000)
	for i := range f {
		f[i] = (float64(i) + 0.5) / float64(len(f))
	}
	for _, x := range []float64{0, 0.25, 0.5, 1} {
		near(t, "CRPS", f.CRPS(x), x*x-x+1.0/3, 2e-4) // the integral of the squared distance of the distribution functions
	}
	near(t, "CRPS beyond", f.CRPS(1.5), 0.5+1.0/3, 2e-4)
}

// The fair estimator does not depend on the size of the sample: the mean over all pairs of a small
// population, drawn without order, is that of the whole population with its ensemble term by n².
func TestTheFairEstimatorHasNoBiasFromSampleSize(t *testing.T) {
	population := []float64{0, 1, 4, 9}
	const actual = 2.0
	var mean, n float64
	for _, a := range population {
		for _, b := range population { // with replacement: two independent draws
			mean += NewForecast([]float64{a, b}).CRPS(actual)
			n++
		}
	}
	var apart, within float64
	for _, a := range population {
		apart += math.Abs(a-actual) / 4
		for _, b := range population {
			within += math.Abs(a-b) / 16
		}
	}
	near(t, "mean of samples of two", mean/n, apart-within/2, 1e-12)
}

func TestASampleOfOneScoresItsDistance(t *testing.T) {
	near(t, "CRPS", Forecast{3}.CRPS(5), 2, 0)
}

func TestRanksCountTiesHalf(t *testing.T) {
	f := Forecast{1, 2, 2, 3}
	for x, want := range map[float64]float64{0: 0, 1: 0.125, 2: 0.5, 2.5: 0.75, 9: 1} {
		near(t, "rank", f.Rank(x), want, 1e-12)
	}
}
