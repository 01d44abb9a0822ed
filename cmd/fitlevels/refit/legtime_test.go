package refit

import (
	"math"
	"math/rand/v2"
	"testing"
)

// The study finds again what legs were drawn from: 40 d with a standard deviation of 8 d, forecasts that say little.
func TestTheTimeOfLegsIsFoundAgain(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	var legs []legSum
	for range 400 {
		leg := legSum{actual: 40 + 8*r.NormFloat64()}
		for range 60 {
			leg.sample = append(leg.sample, 40*math.Exp(3*r.NormFloat64()))
		}
		legs = append(legs, leg)
	}
	if l := fitLegTime(legs); math.Abs(l.Mean-40) > 1.5 || math.Abs(l.SD-8) > 1.5 || l.Otherwise > 0.08 {
		t.Errorf("%+v", l)
	}
}
