package random

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat"

	"coredays/model/chance"
	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// What is drawn after a score of 1.5 was seen of a quantity whose runs persist by 0.8, in 1.5 standard scores of which 0.5
// of the variance is the hole's, by hand. The score seen is the hole's h plus the run's r, each with a variance of 0.5 and
// so each 0.75 in the mean, with a variance of 0.25 and a covariance of -0.25. The next value is h + 0.8 r and a shock
// with the variance 0.5 (1 - 0.64): mean 1.35, variance 0.25 + 0.16 - 0.4 + 0.18. Of a quantity that has the hole's score
// in common, h and a run of its own: mean 0.75, variance 0.75. In another hole nothing is known: mean 0, variance 1.
func TestDrawsGoOnFromWhatIsKnown(t *testing.T) {
	q := spread.Quantity{Shape: line{}, Shares: spread.Shares{spread.Hole: 0.5, spread.Run: 0.5}, Persistence: 0.8}
	v := &voyage.Voyage{}
	for range int(rig.Rates) + 2 {
		v.Quantities = append(v.Quantities, q.Compile())
		v.Purposes, v.Above = append(v.Purposes, chance.Key(len(v.Purposes))), append(v.Above, 7)
	}
	a, b := voyage.Quantity(rig.Rates), voyage.Quantity(rig.Rates)+1
	p, err := learn.From(learn.Evidence{Of: q, Seen: []learn.Observation{{At: learn.Place{Site: 1, Hole: 1}, Run: 3, Value: 1.5}}, Above: 7})
	if err != nil {
		t.Fatal(err)
	}
	known := NewKnown(v, p, []voyage.Quantity{a}, func(p learn.Place) chance.Key { return chance.Key(100 + p.Site) },
		func(p learn.Place) chance.Key { return chance.Key(200 + p.Hole) })
	const n = 20_000
	for _, c := range []struct {
		of       voyage.Quantity
		hole     chance.Key
		mean, va float64
	}{{a, 201, 1.35, 0.19}, {b, 201, 0.75, 0.75}, {a, 202, 0, 1}} {
		s := New(v)
		var values []float64
		for i := range n {
			s.Begins(chance.Replication(3, i))
			s.Learns(known)
			s.Place = Place{Site: 101, Hole: c.hole}
			values = append(values, s.Draw(c.of))
		}
		mean, va := stat.MeanVariance(values, nil)
		if math.Abs(mean-c.mean) > 4*math.Sqrt(c.va/n) || math.Abs(va-c.va) > 4*c.va*math.Sqrt(2.0/n) {
			t.Errorf("quantity %d in hole %d: mean %.3f and variance %.3f, want %.3f and %.3f", c.of, c.hole, mean, va, c.mean, c.va)
		}
	}
}
