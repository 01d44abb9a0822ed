package sim

import (
	"math"

	"gonum.org/v1/gonum/mat"

	"coredays/model/chance"
	"coredays/model/sea"
)

// What is known of the sea to come: the waves now, and a forecast. The score of the sea is a Gaussian process, so that a
// path drawn without knowing is bent to one drawn knowing by what it misses at the times known, each with its
// weight (conditioning by kriging: Chilès and Delfiner 2012, ch. 7.3.1, from memory). Heights stay continuous, and what
// is known fades into the climate as the process forgets.

// seaKnown bends the sea of each replication.
type seaKnown struct {
	from    int // step of the sea of the first known
	steps   []int
	value   []float64   // score stated
	error   []float64   // its standard deviation
	weights [][]float64 // of each step after from, on what each misses
}

// SeaPoint is a height known or forecast.
type SeaPoint struct {
	At     float64 // s after sailing
	Height float64 // m
}

const (
	readOff    = 0.15 // sd, in the score, of a height read off a buoy or the bridge: 5 to 10 % of the height [judgement]
	oneIssue   = 0.9  // correlation of the errors at different leads of one forecast [judgement; the crew's own have 1]
	knownAhead = 30 * 24
)

// knowSea works out the weights: now is the moment of the answer, waves the height then or not a number, and forecast
// the heights stated for later.
func (x *Start) knowSea(waves float64, forecast []SeaPoint, height func(step int) *sea.Table, day func(step int) int) {
	k := &seaKnown{}
	add := func(at, h, err float64) {
		step := int(math.Round(at / seaStep))
		if n := len(k.steps); h > 0 && (n == 0 || step > k.steps[n-1]) {
			k.steps, k.error = append(k.steps, step), append(k.error, err)
			k.value = append(k.value, height(step).Score(day(step), h))
		}
	}
	add(x.At, waves, readOff)
	for _, f := range forecast {
		lead := f.At - x.At
		if lead < 0 {
			continue
		}
		r := x.v.Forecast.Correlation(seconds(lead))
		if r < 0.05 {
			break // it says nothing any more
		}
		before := len(k.steps)
		add(f.At, f.Height, math.Hypot(readOff, math.Sqrt(1-r*r)/r))
		if len(k.steps) > before { // stated is the best estimate, r times what was issued: Forecast.Issued
			k.value[before] /= r * r
		}
	}
	if len(k.steps) == 0 {
		return
	}
	k.from = k.steps[0]
	k.weigh(sea.NewProcess(sea.LongMemory, sea.ShortMemory, seconds(seaStep)))
	x.sea = k
}

// weigh solves for the weights.
func (k *seaKnown) weigh(p *sea.Process) {
	n := len(k.steps)
	c := mat.NewSymDense(n, nil)
	for i := range n {
		for j := i; j < n; j++ {
			v := p.Correlation(seconds(math.Abs(float64(k.steps[i]-k.steps[j])) * seaStep))
			if i == j {
				v += k.error[i] * k.error[i]
			} else {
				v += oneIssue * k.error[i] * k.error[j]
			}
			c.SetSym(i, j, v)
		}
	}
	var root mat.Cholesky
	if !root.Factorize(c) {
		return
	}
	row, w := mat.NewVecDense(n, nil), mat.NewVecDense(n, nil)
	for step := range knownAhead {
		for i := range n {
			row.SetVec(i, p.Correlation(seconds(math.Abs(float64(k.from+step-k.steps[i]))*seaStep)))
		}
		if root.SolveVecTo(w, row) != nil {
			return
		}
		k.weights = append(k.weights, append([]float64(nil), w.RawVector().Data...))
	}
}

// bend is what is added to the score of a step, given what the path drawn has at those known.
func (k *seaKnown) bend(step int, miss []float64) (sum float64) {
	i := max(0, step-k.from)
	if i >= len(k.weights) {
		return 0
	}
	for j, w := range k.weights[i] {
		sum += w * miss[j]
	}
	return sum
}

// missed is by how much a path as drawn misses what is known, along one course.
type missed struct {
	of    *seaKnown
	along int
	by    []float64
	noise chance.Source
}

// theReadings is the purpose of the errors of what is known of the sea.
var theReadings = chance.KeyOf("readings of the sea")

// misses is by how much the sea of this replication misses what is known.
func (w *weather) misses() []float64 {
	m, k := &w.missed, w.known
	if m.of == k && m.along == w.course {
		return m.by
	}
	m.of, m.along, m.by = k, w.course, make([]float64, len(k.steps))
	for i, step := range k.steps {
		off := math.Sqrt(oneIssue)*m.noise.Normal(0) + math.Sqrt(1-oneIssue)*m.noise.Normal(i+1)
		m.by[i] = k.value[i] - w.series[w.course].Score(step+w.ahead) - k.error[i]*off
	}
	return m.by
}
