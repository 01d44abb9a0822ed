package learn

import (
	"math"
	"math/rand/v2"
	"testing"

	"coredays/model/spread"
)

// One bound by hand. A score of which half the variance is the expedition's is at least 0.5: the whole score has the
// mean of a truncated normal, hazard h = 0.352065/0.308538 = 1.141078, and variance 1 - h(h - 0.5) = 0.268480. The
// expedition's score has the correlation r = 0.7071 with it: mean r h, variance 1 - r2 + r2 0.268480.
func TestOneBoundIsTheTruncatedNormal(t *testing.T) {
	q := spread.Quantity{Shape: linear{}, Shares: spread.Shares{0.5, 0, 0, 0.5}}
	for _, side := range []struct {
		bound Bound
		score float64
		sign  float64
	}{{AtLeast, 0.5, 1}, {AtMost, -0.5, -1}} {
		p, err := From(Evidence{Of: q, Seen: []Observation{{Value: valueAt(side.score), Bound: side.bound}}})
		if err != nil {
			t.Fatal(err)
		}
		got := p.Of(Factor{0, spread.Expedition, Place{}})
		near(t, "mean", got.Mean, side.sign*math.Sqrt(0.5)*1.141078, 3e-6)
		near(t, "variance", got.SD*got.SD, 0.5+0.5*0.268480, 3e-6)
	}
}

// Several bounds among values, against 10^6 draws from the prior of which those are kept that fit, weighted by how
// likely the values are. The tolerance is five standard errors of the draws, and a hundredth for the propagation.
func TestSeveralBoundsAreNearTheWholeDistribution(t *testing.T) {
	q := spread.Quantity{Shape: linear{}, Shares: spread.Shares{0.4, 0.3, 0, 0.3}}
	seen := []Observation{{At: Place{0, 0}, Value: valueAt(0.4)}, {At: Place{0, 0}, Value: valueAt(0.9), Bound: AtLeast},
		{At: Place{1, 0}, Value: valueAt(0.7), Bound: AtLeast}, {At: Place{1, 0}, Value: valueAt(1.0), Bound: AtLeast}, {At: Place{1, 0}, Value: valueAt(1.5), Bound: AtMost}}
	p, err := From(Evidence{Of: q, Seen: seen})
	if err != nil {
		t.Fatal(err)
	}
	random := rand.New(rand.NewPCG(5, 6))
	var weight, sum, squares, weights2 float64
	for range 1_000_000 {
		e := random.NormFloat64()
		s := [2]float64{random.NormFloat64(), random.NormFloat64()}
		w := 1.0
		for _, o := range seen {
			mean := math.Sqrt(0.4)*e + math.Sqrt(0.3)*s[o.At.Site]
			z := ((o.Value-10)/2 - mean) / math.Sqrt(0.3)
			switch o.Bound {
			case Exactly:
				w *= math.Exp(-z * z / 2)
			case AtLeast:
				w *= spread.Probability(-z)
			case AtMost:
				w *= spread.Probability(z)
			}
		}
		weight, sum, squares, weights2 = weight+w, sum+w*e, squares+w*e*e, weights2+w*w
	}
	mean := sum / weight
	sd := math.Sqrt(squares/weight - mean*mean)
	got, most := p.Of(Factor{0, spread.Expedition, Place{}}), 5*sd*math.Sqrt(weights2)/weight
	near(t, "mean", got.Mean, mean, most+0.01)
	near(t, "sd", got.SD, sd, most+0.01)
}

// Work in hand says little as long as it is no slower than usual, and more and more beyond.
func TestTheLongerAWorkLastsTheMoreItsBoundTells(t *testing.T) {
	q := spread.Quantity{Shape: linear{}, Shares: spread.Shares{0.5, 0, 0, 0.5}}
	before := 0.0
	for _, score := range []float64{-3.5, -1, 0, 1, 2, 3.5} {
		p, err := From(Evidence{Of: q, Seen: []Observation{{Value: valueAt(score), Bound: AtLeast}}})
		if err != nil {
			t.Fatal(err)
		}
		got := p.Of(Factor{0, spread.Expedition, Place{}}).Mean
		if got <= before {
			t.Errorf("at least %.1f: mean %.5f, not above %.5f", score, got, before)
		}
		before = got
	}
	if before < 2.4 || before > 3 { // a score of 3.5 and a bit more, of which half the variance: root 0.5 of 3.75
		t.Errorf("far out the mean is %.3f", before)
	}
}

// The tail's series joins the exact form.
func TestHazardIsSmoothFarOut(t *testing.T) {
	near(t, "hazard", hazardOf(25.0001), hazardOf(24.9999)+0.0002, 2e-6)
	near(t, "hazard at 0.5", hazardOf(0.5), 1.141078, 1e-6)
}
