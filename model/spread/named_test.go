package spread

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

// must is for shapes whose numbers are good.
func must(t testing.TB) func(Shape, error) Shape {
	return func(s Shape, err error) Shape {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
}

// Quantile functions solved by hand from the textbook distribution functions.
func TestNamedShapesHaveTheirTextbookQuantiles(t *testing.T) {
	ok := must(t)
	for name, c := range map[string]struct {
		shape Shape
		want  func(p float64) float64
	}{
		"lognormal":   {ok(NewLognormal(25, 1.5)), func(p float64) float64 { return 25 * math.Pow(1.5, distuv.UnitNormal.Quantile(p)/1.2815515655446004) }},
		"uniform":     {ok(NewUniform(-2, 6)), func(p float64) float64 { return -2 + 8*p }},
		"triangular":  {ok(NewTriangular(2, 4, 12)), triangle},
		"weibull":     {ok(NewWeibull(25, 1.8)), func(p float64) float64 { return 25 * math.Pow(-math.Log(1-p), 1/1.8) }},
		"exponential": {ok(NewExponential(25)), func(p float64) float64 { return -25 * math.Log(1-p) }},
	} {
		for _, p := range []float64{1e-6, 0.01, 0.1, 0.2, 0.5, 0.77, 0.9, 0.999} {
			if got, want := c.shape.Quantile(p), c.want(p); math.Abs(got-want) > 1e-9*math.Abs(want) {
				t.Errorf("%s: quantile %g is %g, want %g", name, p, got, want)
			}
		}
	}
}

// triangle is the quantile of a triangle from 2 over 4 to 12: (x-2)^2/20 = p up to 0.2, then
// (12-x)^2/80 = 1-p.
func triangle(p float64) float64 {
	if p <= 0.2 {
		return 2 + math.Sqrt(20*p)
	}
	return 12 - math.Sqrt(80*(1-p))
}

func TestLognormalGoesThroughMedianAndFactor(t *testing.T) {
	s := must(t)(NewLognormal(25, 1.5))
	for p, want := range map[float64]float64{0.1: 25 / 1.5, 0.5: 25, 0.9: 37.5} {
		if got := s.Quantile(p); math.Abs(got-want) > 1e-12*want {
			t.Errorf("quantile %g is %g, want %g", p, got, want)
		}
	}
}

// Means by the closed forms of the textbooks, from the quantiles at the middles of equal cells.
func TestNamedShapesHaveTheirTextbookMeans(t *testing.T) {
	ok := must(t)
	sigma := math.Log(1.5) / 1.2815515655446004
	for name, c := range map[string]struct {
		shape Shape
		want  float64
	}{
		"lognormal":   {ok(NewLognormal(25, 1.5)), 25 * math.Exp(sigma*sigma/2)},
		"uniform":     {ok(NewUniform(-2, 6)), 2},
		"triangular":  {ok(NewTriangular(2, 4, 12)), 6},
		"weibull":     {ok(NewWeibull(25, 1.8)), 25 * math.Gamma(1+1/1.8)},
		"exponential": {ok(NewExponential(25)), 25},
	} {
		const cells = 100_000
		sum := 0.0
		for i := range cells {
			sum += c.shape.Quantile((float64(i) + 0.5) / cells)
		}
		if got := sum / cells; math.Abs(got-c.want) > 1e-4*c.want {
			t.Errorf("mean of the %s is %g, want %g", name, got, c.want)
		}
	}
}

func TestNamedShapesRefuseNumbersThatMakeNone(t *testing.T) {
	for name, make := range map[string]func() (Shape, error){
		"lognormal without median":      func() (Shape, error) { return NewLognormal(0, 2) },
		"lognormal with factor 1":       func() (Shape, error) { return NewLognormal(1, 1) },
		"uniform of no width":           func() (Shape, error) { return NewUniform(1, 1) },
		"triangular, mode too low":      func() (Shape, error) { return NewTriangular(1, 0, 2) },
		"triangular, mode too high":     func() (Shape, error) { return NewTriangular(1, 3, 2) },
		"triangular of no width":        func() (Shape, error) { return NewTriangular(1, 1, 1) },
		"triangular with no number":     func() (Shape, error) { return NewTriangular(1, math.NaN(), 2) },
		"weibull without scale":         func() (Shape, error) { return NewWeibull(0, 1) },
		"weibull without shape":         func() (Shape, error) { return NewWeibull(1, 0) },
		"exponential with mean below 0": func() (Shape, error) { return NewExponential(-1) },
	} {
		if s, err := make(); err == nil || s != nil {
			t.Errorf("%s gives %v, %v", name, s, err)
		}
	}
	for _, mode := range []float64{1, 2} {
		must(t)(NewTriangular(1, mode, 2)) // a right angle is a triangle
	}
}
