package main

import (
	"context"
	"fmt"
	"io"
	"math"
	"os"
	"slices"

	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/record"
	"coredays/model/score"
	shapes "coredays/model/spread"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
)

// What a record of holes leaves open is fitted to the days on its sites with the simulator itself:
// every trial of the figures is a hindcast of all sites with the same random numbers, scored by CRPS.

// trialReplications is how often each site is sailed in a trial: the mean CRPS is then known to
// 0.015 d against more of them, and differences between trials much better.
const trialReplications = 40

// judged are the sites that figures are tried on.
type judged struct {
	sites []record.Site
	legs  []string
	seed  uint64
}

func openSites(name string) (judged, error) {
	f, err := os.Open(name)
	if err != nil {
		return judged{}, err
	}
	defer f.Close()
	sites, _, err := scenario.ReadHoles(name, f)
	j := judged{sites: sites, seed: 1}
	for _, s := range sites {
		j.legs = append(j.legs, s.Program+" "+s.Leg)
	}
	return j, err
}

// only keeps some of the sites.
func (j judged) only(keep func(i int) bool) judged {
	k := judged{seed: j.seed}
	for i := range j.sites {
		if keep(i) {
			k.sites, k.legs = append(k.sites, j.sites[i]), append(k.legs, j.legs[i])
		}
	}
	return k
}

// cases forecasts every site with what the figures say.
func (j judged) cases(u scenario.Unrecorded, known scenario.Knowledge, replications int) ([]score.Case, error) {
	plans := make([]*plan.Plan, len(j.sites))
	for i, s := range j.sites {
		p, err := u.Plan(s, known)
		if err != nil {
			return nil, fmt.Errorf("%s site %s: %w", j.legs[i], s.Name, err)
		}
		plans[i] = p
	}
	voyages, errs := voyage.CompileAll(plans)
	for i, err := range errs {
		if err != nil {
			return nil, fmt.Errorf("%s site %s: %w", j.legs[i], j.sites[i].Name, err)
		}
	}
	visits := sim.Hindcast(context.Background(), voyages, j.legs, sim.Run{Seed: j.seed, Replications: replications})
	cases := make([]score.Case, len(j.sites))
	for i := range cases {
		for n := range visits.Days[i] {
			visits.Days[i][n] /= float64(unit.Day)
		}
		cases[i] = score.Case{Group: j.legs[i], Actual: float64(j.sites[i].Days() / unit.Day), Forecast: score.NewForecast(visits.Days[i])}
	}
	return cases, nil
}

// knobs are the figures that are fitted. Chances move in the logit, all else in the logarithm.
// Each concerns some sites only: the others need not be sailed again when it is turned.
var knobs = []struct {
	name     string
	prior    float64
	concerns func(s *record.Site) bool
	turn     func(u *scenario.Unrecorded, by float64)
}{
	{"site pace, spread", 0.4, anySite, func(u *scenario.Unrecorded, by float64) { u.SitePace.Shape = wider(u.SitePace.Shape, by) }},
	{"rotary rate, below other ground", 0.1, rotaryCored, func(u *scenario.Unrecorded, by float64) { faster(&u.Ground[1], by) }},
	{"rotary rate, from the sea floor", 0.1, rotaryCored, func(u *scenario.Unrecorded, by float64) { faster(&u.Ground[2], by) }},
	{"rotary rate below other ground, spread", 0.4, rotaryCored, func(u *scenario.Unrecorded, by float64) { u.Ground[1].Rate.Shape = wider(u.Ground[1].Rate.Shape, by) }},
	{"rotary rate from the sea floor, spread", 0.4, rotaryCored, func(u *scenario.Unrecorded, by float64) { u.Ground[2].Rate.Shape = wider(u.Ground[2].Rate.Shape, by) }},
	{"drilling ahead", 0.3, anySite, func(u *scenario.Unrecorded, by float64) {
		for i := range u.Ground {
			u.Ground[i].Ahead.Shape = times(u.Ground[i].Ahead.Shape, by)
		}
	}},
	{"cycles of rotated tools, from 2004", 0.1, recent, func(u *scenario.Unrecorded, by float64) { u.Eras[len(u.Eras)-1].Rotated *= math.Exp(by) }},
	{"piston cycles, from 2004", 0.15, recent, func(u *scenario.Unrecorded, by float64) { u.Eras[len(u.Eras)-1].Piston *= math.Exp(by) }},
	{"piston cycles, no other tool", 0.07, pistonAlone, func(u *scenario.Unrecorded, by float64) { u.PistonAlone *= math.Exp(by) }},
	{"chance, piston", 0.7, has(scenario.PistonHole), chanceOf(scenario.PistonHole)},
	{"chance, extended", 0.7, has(scenario.ExtendedHole), chanceOf(scenario.ExtendedHole)},
	{"chance, rotary", 0.7, has(scenario.RotaryHole), chanceOf(scenario.RotaryHole)},
	{"chance, rotary from the sea floor", 0.7, has(scenario.BareHole), chanceOf(scenario.BareHole)},
	{"chance, without cores", 0.7, has(scenario.CorelessHole), chanceOf(scenario.CorelessHole)},
	{"time, piston", 0.7, has(scenario.PistonHole), timeOf(scenario.PistonHole)},
	{"time, extended", 0.7, has(scenario.ExtendedHole), timeOf(scenario.ExtendedHole)},
	{"time, rotary", 0.5, has(scenario.RotaryHole), timeOf(scenario.RotaryHole)},
	{"time, rotary from the sea floor", 0.5, has(scenario.BareHole), timeOf(scenario.BareHole)},
	{"time, without cores", 0.5, has(scenario.CorelessHole), timeOf(scenario.CorelessHole)},
	{"time of rotary and coreless holes, spread", 0.3, anySite, func(u *scenario.Unrecorded, by float64) {
		for _, c := range []scenario.UnrecordedClass{scenario.RotaryHole, scenario.BareHole, scenario.CorelessHole} {
			u.Work[c].Factor = math.Pow(u.Work[c].Factor, math.Exp(by))
		}
	}},
	{"power of water", 0.3, anySite, func(u *scenario.Unrecorded, by float64) { u.WithWater += by }},
	{"power of depth", 0.3, anySite, func(u *scenario.Unrecorded, by float64) { u.WithDepth += by }},
}

func anySite(*record.Site) bool { return true }

func rotaryCored(s *record.Site) bool {
	return slices.ContainsFunc(s.Holes, func(h record.Hole) bool {
		return slices.ContainsFunc(h.Steps(), func(step record.Step) bool { return step.With == coring.RCB })
	})
}

func pistonAlone(s *record.Site) bool { return s.DeepestTool() == coring.APC }

func recent(s *record.Site) bool { return s.Start().Year() >= 2004 }

// has tells whether a site has a hole of a class.
func has(c scenario.UnrecordedClass) func(*record.Site) bool {
	return func(s *record.Site) bool { return slices.Contains(scenario.ClassesOf(s), c) }
}

func chanceOf(c scenario.UnrecordedClass) func(*scenario.Unrecorded, float64) {
	return func(u *scenario.Unrecorded, by float64) {
		p := u.Work[c].Chance
		u.Work[c].Chance = 1 / (1 + (1-p)/p*math.Exp(-by))
	}
}

func timeOf(c scenario.UnrecordedClass) func(*scenario.Unrecorded, float64) {
	return func(u *scenario.Unrecorded, by float64) { u.Work[c].Median *= math.Exp(by) }
}

func faster(g *ground.Lithology, by float64) { g.Rate.Shape = times(g.Rate.Shape, by) }

// multiplied is a shape whose values are all multiplied.
type multiplied struct {
	shapes.Shape
	by float64
}

func (m multiplied) Quantile(p float64) float64 { return m.by * m.Shape.Quantile(p) }

func times(s shapes.Shape, by float64) shapes.Shape { return multiplied{s, math.Exp(by)} }

// stretched is a shape whose logarithm spreads more about its even value.
type stretched struct {
	shapes.Shape
	by float64
}

func (s stretched) Quantile(p float64) float64 {
	mid := s.Shape.Quantile(0.5)
	return mid * math.Pow(s.Shape.Quantile(p)/mid, s.by)
}

func wider(s shapes.Shape, by float64) shapes.Shape { return stretched{s, math.Exp(by)} }

// turned are the round figures with the knobs turned.
func turned(x []float64) scenario.Unrecorded {
	u := round()
	for i, k := range knobs {
		k.turn(&u, x[i])
	}
	return u
}

// round are the figures before they are fitted: round numbers, so that nothing of the days that a
// fold is judged on is in them.
func round() scenario.Unrecorded {
	u, _ := scenario.RecordModel()
	u.Eras = slices.Clone(u.Eras)
	last := &u.Eras[len(u.Eras)-1]
	last.Piston, last.Rotated = 1.1, 1.1
	u.SitePace.Shape, _ = shapes.NewLognormal(1, 2)
	for i, factor := range []float64{1.6, 2, 2.5} {
		u.Ground[i].Rate.Shape, _ = shapes.NewLognormal([]float64{33, 13, 12}[i]*perHour, factor)
		u.Ground[i].Ahead.Shape, _ = shapes.NewLognormal([]float64{20, 10, 10}[i]*perHour, 1.6)
	}
	chances := [scenario.UnrecordedClasses]float64{0.1, 0.2, 0.4, 0.4, 0.5}
	hours := [scenario.UnrecordedClasses]float64{6, 10, 24, 24, 36}
	for c := range u.Work {
		u.Work[c] = scenario.Sometimes{Chance: chances[c], Median: hours[c] * float64(unit.Hour), Factor: 3}
	}
	u.WithWater, u.WithDepth = 0.5, 0
	u.PistonAlone = 0.9
	return u
}

const perHour = 1.0 / 3600 // m/h in m/s

// penalty keeps a figure near its start unless the days speak: the weight makes a move by its prior
// cost 0.002 d of CRPS.
const penalty = 0.002

// calibration makes bands that hold too little or too much cost: 3 points off cost 0.018 d, as CRPS alone
// hardly tells a band from one that is a little too narrow.
const calibration = 20

// lossOf is the mean CRPS with what the shares inside the bands are off.
func lossOf(cases []score.Case) float64 {
	n := float64(len(cases))
	var crps, in50, in80 float64
	for _, c := range cases {
		crps += c.Forecast.CRPS(c.Actual) / n
		rank := c.Forecast.Rank(c.Actual)
		if rank >= 0.25 && rank <= 0.75 {
			in50 += 1 / n
		}
		if rank >= 0.1 && rank <= 0.9 {
			in80 += 1 / n
		}
	}
	return crps + calibration*((in50-0.5)*(in50-0.5)+(in80-0.8)*(in80-0.8))
}

// setting is a trial of the figures with the forecasts that they make.
type setting struct {
	x     []float64
	cases []score.Case
	loss  float64
}

// try forecasts the sites that a knob concerns anew, all where there is no setting yet.
func (j judged) try(x []float64, from *setting, knob int) (*setting, error) {
	s := &setting{x: slices.Clone(x), cases: make([]score.Case, len(j.sites))}
	concerned := func(i int) bool { return from == nil || knobs[knob].concerns(&j.sites[i]) }
	cases, err := j.only(concerned).cases(turned(x), scenario.Programme, trialReplications)
	if err != nil {
		return nil, err
	}
	for i := range j.sites {
		if concerned(i) {
			s.cases[i], cases = cases[0], cases[1:]
		} else {
			s.cases[i] = from.cases[i]
		}
	}
	s.loss = lossOf(s.cases)
	for i, k := range knobs {
		s.loss += penalty * (x[i] / k.prior) * (x[i] / k.prior)
	}
	return s, nil
}

// sweeps and the first step, in units of the prior.
const (
	sweeps    = 3
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
		fmt.Fprintf(notes, "%d sites, step %.2g: loss %.4f d\n", len(j.sites), step, best.loss)
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

// folds is in how many parts the legs are rotated.
const folds = 5

// fold of a leg: in the order of the file, one after the other.
func (j judged) fold() map[string]int {
	of := map[string]int{}
	for _, leg := range j.legs {
		if _, seen := of[leg]; !seen {
			of[leg] = len(of) % folds
		}
	}
	return of
}

// rotated fits on all legs but those of a fold and forecasts these, for each fold: the cases in the
// order of the sites, by level of knowledge.
func (j judged) rotated(notes io.Writer) (byLevel [2][]score.Case, err error) {
	of := j.fold()
	for k := range byLevel {
		byLevel[k] = make([]score.Case, len(j.sites))
	}
	for f := range folds {
		x, err := j.only(func(i int) bool { return of[j.legs[i]] != f }).fit(notes)
		if err != nil {
			return byLevel, err
		}
		held := func(i int) bool { return of[j.legs[i]] == f }
		for k := range byLevel {
			cases, err := j.only(held).cases(turned(x), scenario.Knowledge(k), heldReplications)
			if err != nil {
				return byLevel, err
			}
			for i := range j.sites {
				if held(i) {
					byLevel[k][i], cases = cases[0], cases[1:]
				}
			}
		}
	}
	return byLevel, nil
}

// heldReplications is how often a site that is held back is sailed.
const heldReplications = 1000

// later fits on the older half of the sites and forecasts the newer half.
func (j judged) later(notes io.Writer) ([]score.Case, error) {
	var starts []int64
	for i := range j.sites {
		starts = append(starts, j.sites[i].Start().Unix())
	}
	slices.Sort(starts)
	middle := starts[len(starts)/2]
	older := func(i int) bool { return j.sites[i].Start().Unix() < middle }
	x, err := j.only(older).fit(notes)
	if err != nil {
		return nil, err
	}
	return j.only(func(i int) bool { return !older(i) }).cases(turned(x), scenario.Programme, heldReplications)
}
