package sea

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/unit"
)

// near reports whether got is within tolerance of want.
func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.8g, want %.8g within %g", what, got, want, tolerance)
	}
}

// scores runs a process for n steps from its long run.
func scores(p *Process, n int, seed uint64) []float64 {
	r := rand.New(rand.NewPCG(seed, 36))
	z := make([]float64, n)
	s := p.Start(r.NormFloat64(), r.NormFloat64())
	for i := range z {
		z[i] = s.Score()
		s = p.Next(s, r.NormFloat64(), r.NormFloat64())
	}
	return z
}

// upcrossings counts the steps that go from at most u to above it.
func upcrossings(z []float64, u float64) (n int) {
	for i := 1; i < len(z); i++ {
		if z[i-1] <= u && z[i] > u {
			n++
		}
	}
	return n
}

// Worked out apart from this code, for memories of 36 h and 3 h and a step of 1 h.
func TestStepMatchesWorkedExample(t *testing.T) {
	a11, a21, a22 := transition(36, 3, 1)
	near(t, "a11", a11, 0.97260448, 5e-9)
	near(t, "a21", a21, 0.27935255, 5e-9)
	near(t, "a22", a22, 0.71653131, 5e-9)
	v := 36.0 / 39
	near(t, "v", v, 0.92307692, 5e-9)
	l11, l21, l22 := spread(v, a11, a21, a22)
	near(t, "l11", l11, 0.23246619, 5e-9)
	near(t, "l21", l21, 0.03477339, 5e-9)
	near(t, "l22", l22, 0.01926904, 5e-9)
	p := NewProcess(LongMemory, ShortMemory, unit.Hour)
	near(t, "follow scaled back", p.follow*math.Sqrt(v), 0.27935255, 5e-9)
	near(t, "noise scaled back", p.n22*math.Sqrt(v), 0.01926904, 5e-9)
}

func TestCorrelationMatchesWorkedExample(t *testing.T) {
	p := NewProcess(LongMemory, ShortMemory, unit.Hour)
	for lag, want := range map[unit.Duration]float64{1: 0.99588, 3: 0.97024, 6: 0.91113, 12: 0.78001, 24: 0.56006, 48: 0.28756, 72: 0.14764} {
		near(t, "correlation", p.Correlation(lag*unit.Hour), want, 5e-6)
	}
}

// One step of 3 h and three of 1 h are the same law: A(3) = A(1)^3, and the noise adds up.
func TestOneLongStepEqualsThreeShortOnes(t *testing.T) {
	v := 36.0 / 39
	a, b, d := transition(36, 3, 1)
	A, B, D := transition(36, 3, 3)
	near(t, "a11", A, a*a*a, 1e-14)
	near(t, "a21", B, b*a*a+d*b*a+d*d*b, 1e-14)
	near(t, "a22", D, d*d*d, 1e-14)
	var c11, c21, c22 float64 // noise covariance after three steps: C -> A C A' + Q
	l11, l21, l22 := spread(v, a, b, d)
	for range 3 {
		c11, c21, c22 = a*a*c11+l11*l11,
			a*(b*c11+d*c21)+l11*l21,
			b*b*c11+2*b*d*c21+d*d*c22+l21*l21+l22*l22
	}
	L11, L21, L22 := spread(v, A, B, D)
	near(t, "c11", L11*L11, c11, 1e-13)
	near(t, "c21", L11*L21, c21, 1e-13)
	near(t, "c22", L21*L21+L22*L22, c22, 1e-13)
}

func TestEqualMemoriesAreTheLimitOfNearlyEqualOnes(t *testing.T) {
	same := NewProcess(12*unit.Hour, 12*unit.Hour, unit.Hour)
	nearly := NewProcess(12*unit.Hour+1, 12*unit.Hour, unit.Hour)
	near(t, "follow", same.follow, nearly.follow, 1e-4)
	near(t, "noise", same.n22, nearly.n22, 1e-4)
	near(t, "correlation", same.Correlation(5*unit.Hour), nearly.Correlation(5*unit.Hour), 1e-4)
}

func TestTimesThatAreNotAboveZeroAreRefused(t *testing.T) {
	for _, bad := range [][3]unit.Duration{{0, 1, 1}, {1, -1, 1}, {1, 1, 0}, {unit.Duration(math.NaN()), 1, 1}, {1, 1, unit.Duration(math.Inf(1))}} {
		if CheckMemory(bad[0], bad[1], bad[2]) == nil {
			t.Errorf("%v accepted", bad)
		}
	}
}

func TestSampledScoreIsStandardAndRemembersAsTheFormulaSays(t *testing.T) {
	p := NewProcess(LongMemory, ShortMemory, unit.Hour)
	z := scores(p, 4_000_000, 1)
	mean, sd := stat.MeanStdDev(z, nil)
	near(t, "mean", mean, 0, 0.02) // standard error sqrt(2 (36+3) / 4e6) = 0.0044
	near(t, "standard deviation", sd, 1, 0.01)
	for _, lag := range []int{1, 6, 24, 48} {
		got := stat.Correlation(z[lag:], z[:len(z)-lag], nil)
		near(t, "sample correlation", got, p.Correlation(unit.Duration(lag)*unit.Hour), 0.01)
	}
}

// bothSides is P(Z0 < u < Z1) of two standard normals with correlation rho.
func bothSides(u, rho float64) float64 {
	n := distuv.UnitNormal
	return quad.Fixed(func(x float64) float64 {
		return n.Prob(x) * n.Survival((u-rho*x)/math.Sqrt(1-rho*rho))
	}, u-3, u, 200, nil, 0) // below u-3 the partner is 30 of its deviations away at rho(1 h)
}

func TestHourlyCrossingsAreThoseOfTwoNormals(t *testing.T) {
	p := NewProcess(LongMemory, ShortMemory, unit.Hour)
	z := scores(p, 4_000_000, 2)
	for _, q := range []float64{0.1, 0.3, 0.5} {
		u := distuv.UnitNormal.Quantile(1 - q)
		want := bothSides(u, p.Correlation(unit.Hour))
		got := float64(upcrossings(z, u)) / float64(len(z))
		near(t, "crossings an hour over theory", got/want, 1, 0.02)
	}
}

func TestHourlyCrossingsStayWhenTheStepIsHalved(t *testing.T) {
	p := NewProcess(LongMemory, ShortMemory, unit.Hour/2)
	fine := scores(p, 8_000_000, 3)
	hourly := make([]float64, 0, len(fine)/2)
	for i := 0; i < len(fine); i += 2 {
		hourly = append(hourly, fine[i])
	}
	for _, q := range []float64{0.1, 0.5} {
		u := distuv.UnitNormal.Quantile(1 - q)
		got := float64(upcrossings(hourly, u)) / float64(len(hourly))
		near(t, "crossings an hour over theory", got/bothSides(u, p.Correlation(unit.Hour)), 1, 0.02)
	}
}

func TestStartIsAlreadyTheLongRun(t *testing.T) {
	p := NewProcess(LongMemory, ShortMemory, 6*unit.Hour)
	r := rand.New(rand.NewPCG(11, 11))
	first, next := make([]float64, 400_000), make([]float64, 400_000)
	for i := range first {
		s := p.Start(r.NormFloat64(), r.NormFloat64())
		first[i] = s.Score()
		next[i] = p.Next(s, r.NormFloat64(), r.NormFloat64()).Score()
	}
	near(t, "variance at the start", stat.Variance(first, nil), 1, 0.01) // standard error 0.0022
	near(t, "variance a step on", stat.Variance(next, nil), 1, 0.01)
	near(t, "correlation over 6 h", stat.Correlation(first, next, nil), p.Correlation(6*unit.Hour), 0.002) // standard error 0.0003
}
