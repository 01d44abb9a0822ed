package spread

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

var inf = math.Inf(1)

// The four ways to bound a Metalog, as maps from the unbounded line, written apart from the code.
var bounds = map[string]struct {
	lower, upper float64
	outward      func(y float64) float64
}{
	"unbounded":     {-inf, inf, func(y float64) float64 { return y }},
	"bounded below": {-3, inf, func(y float64) float64 { return -3 + math.Exp(y) }},
	"bounded above": {-inf, 40, func(y float64) float64 { return 40 - math.Exp(-y) }},
	"bounded":       {-3, 40, func(y float64) float64 { return (-3 + 40*math.Exp(y)) / (1 + math.Exp(y)) }},
}

// within are the lowest and the highest place of mid between low and high on the unbounded line
// that are surely feasible.
const within = 0.17

// triples draws the values on the unbounded line at 0.1, 0.5 and 0.9; a width of 1.2 is narrow enough
// for a single bound at any place of mid.
func triples(t *rapid.T) (low, mid, high float64) {
	low = rapid.Float64Range(-2, 2).Draw(t, "low")
	width := rapid.Float64Range(0.01, 1.2).Draw(t, "width")
	place := rapid.Float64Range(within, 1-within).Draw(t, "place of mid")
	return low, low + place*width, low + width
}

func TestMetalogHonoursLowMidAndHighWhateverItsBounds(t *testing.T) {
	for name, b := range bounds {
		t.Run(name, rapid.MakeCheck(func(t *rapid.T) {
			low, mid, high := triples(t)
			want := Triple{b.outward(low), b.outward(mid), b.outward(high)}
			m, err := NewMetalog(want, b.lower, b.upper)
			if err != nil {
				t.Fatal(want, err)
			}
			got := Triple{m.Quantile(0.1), m.Quantile(0.5), m.Quantile(0.9)}
			const rounding = 1e-13 * 43 // some hundred units in the last place of the distance between the bounds
			if math.Abs(got.Low-want.Low) > rounding || math.Abs(got.Mid-want.Mid) > rounding || math.Abs(got.High-want.High) > rounding {
				t.Errorf("got %v, want %v", got, want)
			}
		}))
	}
}

func TestMetalogRisesAndKeepsItsBounds(t *testing.T) {
	for name, b := range bounds {
		t.Run(name, rapid.MakeCheck(func(t *rapid.T) {
			low, mid, high := triples(t)
			m, err := NewMetalog(Triple{b.outward(low), b.outward(mid), b.outward(high)}, b.lower, b.upper)
			if err != nil {
				t.Fatal(err)
			}
			last := b.lower
			for _, p := range probabilities(64) {
				x := m.Quantile(p)
				if !(x > last) && p > 1e-3 && p < 1-1e-3 || x < last || x > b.upper {
					t.Fatalf("quantile %g is %g after %g", p, x, last)
				}
				last = x
			}
		}))
	}
}

// probabilities rise from about 1e-9 to one minus that, in equal steps of the logit.
func probabilities(n int) (p []float64) {
	for i := range n {
		p = append(p, 1/(1+math.Exp(20-40*float64(i)/float64(n-1))))
	}
	return p
}

// With mid half way the third term is 0: a logistic distribution, whose quartiles are at a third of the
// way from the middle to the P90 value times ln 3 / ln 9 = 1/2 by hand.
func TestSymmetricMetalogIsLogistic(t *testing.T) {
	m, err := NewMetalog(Triple{10, 20, 30}, -inf, inf)
	if err != nil {
		t.Fatal(err)
	}
	for p, want := range map[float64]float64{0.25: 15, 0.75: 25, 0.01: 20 - 10*math.Log(99)/math.Log(9)} {
		if got := m.Quantile(p); math.Abs(got-want) > 1e-12 {
			t.Errorf("quantile %g is %g, want %g", p, got, want)
		}
	}
}

func TestMetalogRefusesWhatDoesNotRiseOrLieInside(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		t            Triple
		lower, upper float64
		want         string
	}{
		{Triple{2, 2, 3}, 0, inf, "low, mid and high must rise"},
		{Triple{1, 3, 2}, 0, inf, "low, mid and high must rise"},
		{Triple{nan, 2, 3}, 0, inf, "low, mid and high must rise"},
		{Triple{1, nan, 3}, 0, inf, "low, mid and high must rise"},
		{Triple{0, 1, 2}, 0, inf, "low and high must lie inside the bounds"},
		{Triple{0.1, 0.5, 1}, 0, 1, "low and high must lie inside the bounds"},
		{Triple{1, 2, inf}, 0, inf, "low and high must lie inside the bounds"},
		{Triple{1, 2, 3}, 5, 0, "low and high must lie inside the bounds"},
	} {
		if _, err := NewMetalog(c.t, c.lower, c.upper); err == nil || err.Error() != c.want {
			t.Errorf("%v: %v, want %s", c, err, c.want)
		}
	}
}
