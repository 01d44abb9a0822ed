package refit

import (
	"fmt"
	"io"
	"maps"
	"slices"

	"coredays/model/score"
	"coredays/scenario/records"
)

// penalty keeps a figure near its start unless the days speak: the weight makes a move by its prior
// cost 0.002 d of CRPS.
const penalty = 0.002

// calibration makes tails that hold too little or too much cost, tool by tool: 3 points off in each cost
// 0.14 d, as CRPS alone hardly describes a band from one that is a little too narrow, and wide bands of some
// sites would make up for narrow ones of others.
const calibration = 30

// CRPS pulls towards narrower bands than hold what they should, and the fit settles between: aimed at 0.5 and
// 0.8, bands came to hold 0.49 and 0.76 of legs not in the fit. So less is aimed at for the tails: quarters
// and tenths of forecasts, below and above.
const aimQuarter, aimTenth = 0.245, 0.08

// lossOf is the mean CRPS with what the shares in the tails are off, by class of sites.
func lossOf(cases []score.Case, class func(i int) string) float64 {
	var crps float64
	of := map[string]*tails{}
	for i, c := range cases {
		crps += c.Forecast.CRPS(c.Actual)
		t := of[class(i)]
		if t == nil {
			t = &tails{}
			of[class(i)] = t
		}
		t.add(c.Forecast.Rank(c.Actual))
	}
	for _, name := range slices.Sorted(maps.Keys(of)) { // in order, as sums hang on it
		crps += calibration * of[name].off()
	}
	return crps / float64(len(cases))
}

// tails counts how often what came true lies in the tails of its forecast.
type tails struct{ n, low10, low25, high25, high10 float64 }

func (t *tails) add(rank float64) {
	t.n++
	for _, in := range []struct {
		is    bool
		count *float64
	}{{rank < 0.1, &t.low10}, {rank < 0.25, &t.low25}, {rank > 0.75, &t.high25}, {rank > 0.9, &t.high10}} {
		if in.is {
			*in.count++
		}
	}
}

// off is the sum of squares of what the shares are off, times the number.
func (t *tails) off() (sum float64) {
	for _, tail := range []struct{ count, aim float64 }{{t.low10, aimTenth}, {t.low25, aimQuarter}, {t.high25, aimQuarter}, {t.high10, aimTenth}} {
		d := tail.count/t.n - tail.aim
		sum += d * d
	}
	return sum * t.n
}

// setting is a trial of the figures with the forecasts that they make.
type setting struct {
	x     []float64
	cases []score.Case
	loss  float64
}

// try forecasts the sites that a knob concerns anew, all where there is no setting yet.
func (j judged) try(x []float64, from *setting, knob int) (*setting, error) {
	s := &setting{x: slices.Clone(x), cases: make([]score.Case, len(j.Sites))}
	concerned := func(i int) bool { return from == nil || knobs[knob].concerns(&j.Sites[i]) }
	cases, err := j.only(concerned).cases(turned(x), records.Programme, trialReplications)
	if err != nil {
		return nil, err
	}
	for i := range j.Sites {
		if concerned(i) {
			s.cases[i], cases = cases[0], cases[1:]
		} else {
			s.cases[i] = from.cases[i]
		}
	}
	s.loss = lossOf(s.cases, func(i int) string { return j.Sites[i].DeepestTool().String() })
	for i, k := range knobs {
		s.loss += penalty * (x[i] / k.prior) * (x[i] / k.prior)
	}
	return s, nil
}

// sweeps and the first step, in units of the prior.
const (
	sweeps    = 2
	firstStep = 0.6
)

// fit turns one knob after the other as long as that pays, with smaller steps each sweep.
func (j judged) fit(notes io.Writer) ([]float64, error) {
	best, err := j.try(make([]float64, len(knobs)), nil, 0)
	step := firstStep
	for range sweeps {
		for i := range knobs {
			if err == nil {
				best, err = j.turn(best, i, step)
			}
		}
		if err != nil {
			return nil, err
		}
		fmt.Fprintf(notes, "%d sites, step %.2g: loss %.4f d\n", len(j.Sites), step, best.loss)
		step /= 2
	}
	return best.x, nil
}

// turn turns one knob up, or else down, as long as that pays.
func (j judged) turn(best *setting, knob int, step float64) (*setting, error) {
	for _, by := range []float64{step, -step} {
		before := best
		for {
			x := slices.Clone(best.x)
			x[knob] += by * knobs[knob].prior
			next, err := j.try(x, best, knob)
			if err != nil {
				return nil, err
			}
			if next.loss >= best.loss {
				break
			}
			best = next
		}
		if best != before {
			break
		}
	}
	return best, nil
}
