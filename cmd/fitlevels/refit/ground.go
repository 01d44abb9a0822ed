package refit

import (
	"fmt"
	"io"
	"math"
	"slices"

	"coredays/cmd/fitlevels/printed"
	"coredays/model/coring"
	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/unit"
	"coredays/scenario/records"
	"coredays/sim/hindcast"
)

// What the lithology described at a site tells of its days and metres, fitted with the simulator itself to the sites of
// which something is described: shares of the rates and of the mean recovery that the tools alone tell of.

// toldFigure is a figure of what lithologies tell, with how far it moves easily, in its logarithm.
type toldFigure struct {
	name  string
	of    func(*records.Told) *float64
	prior float64
	days  bool // it is judged by days, else by metres
}

var toldFigures = []toldFigure{
	{"rotary rate", func(t *records.Told) *float64 { return &t.Rotary }, 0.4, true},
	{"extended rate", func(t *records.Told) *float64 { return &t.Extended }, 0.3, true},
	{"rotary recovery", func(t *records.Told) *float64 { return &t.Recovery[coring.RCB] }, 0.25, false},
	{"extended recovery", func(t *records.Told) *float64 { return &t.Recovery[coring.XCB] }, 0.2, false},
}

// toldSteps are the steps of the figures, one sweep each, in units of the prior.
var toldSteps = []float64{1, 0.5, 0.25}

// toldReplications is how often each site is sailed in a trial of what lithologies tell.
const toldReplications = 39

// toldLoss is the mean CRPS of days or of metres.
func (j judged) toldLoss(u records.Unrecorded, days bool) (float64, error) {
	visits, err := j.visits(u, records.Ground, toldReplications)
	if err != nil {
		return 0, err
	}
	return meanOf(j.toldCases(visits, days)), nil
}

// toldCases are the CRPS of days or of metres, site by site; metres that are not on record have none.
func (j judged) toldCases(v *hindcast.Visits, days bool) (crps []float64) {
	for i := range j.Sites {
		s := score.Sampled{Actual: float64(j.Sites[i].Recovered()), Sample: v.Recovered[i]}
		if days {
			s = score.Sampled{Actual: float64(j.Sites[i].Days() / unit.Day), Sample: inDays(v.OnSite[i])}
		}
		crps = append(crps, s.Quantiles().CRPS)
	}
	return crps
}

func inDays(seconds []float64) []float64 {
	days := slices.Clone(seconds)
	for i := range days {
		days[i] /= float64(unit.Day)
	}
	return days
}

func meanOf(x []float64) float64 {
	sum, n := 0.0, 0
	for _, v := range x {
		if !math.IsNaN(v) {
			sum, n = sum+v, n+1
		}
	}
	return sum / float64(n)
}

// withTold are the figures with what lithologies tell at 100 %.
func withTold(model records.Unrecorded) records.Unrecorded {
	u := model
	u.Described = slices.Clone(model.Described)
	for k := range u.Described {
		for _, f := range toldFigures {
			*f.of(&u.Described[k]) = 1
		}
	}
	return u
}

// fitTold turns one figure after the other as long as that pays.
func (j judged) fitTold(model records.Unrecorded, notes io.Writer) (records.Unrecorded, error) {
	u := withTold(model)
	for _, judgedByDays := range []bool{true, false} {
		base, err := j.toldLoss(u, judgedByDays)
		if err != nil {
			return u, err
		}
		weight := toldPenalty * base / float64(len(j.Sites))
		best := base
		for _, step := range toldSteps {
			for k := range u.Described {
				for _, f := range toldFigures {
					if f.days != judgedByDays {
						continue
					}
					if u, best, err = j.turnTold(u, k, f, step, best, weight); err != nil {
						return u, err
					}
				}
			}
		}
		fmt.Fprintf(notes, "%d sites told the ground: %.4g, untold %.4g\n", len(j.Sites), best, base)
	}
	return u, nil
}

// toldPenalty is what a move by its prior costs, in mean CRPS of one site: a figure that a few sites ask for moves little.
const toldPenalty = 0.5

// turnTold turns a figure up, or else down, as long as that pays.
func (j judged) turnTold(u records.Unrecorded, k int, f toldFigure, step, best, weight float64) (records.Unrecorded, float64, error) {
	if !j.meets(u.Described[k].Classes) {
		return u, best, nil
	}
	cost := func(x float64) float64 { m := math.Log(x) / f.prior; return weight * m * m }
	for _, by := range []float64{step, -step} {
		moved := false
		for {
			next := u
			next.Described = slices.Clone(u.Described)
			x := f.of(&next.Described[k])
			was := *x
			*x *= math.Exp(by * f.prior)
			loss, err := j.toldLoss(next, f.days)
			if err != nil {
				return u, best, err
			}
			if loss+cost(*x)-cost(was) >= best {
				break
			}
			u, best, moved = next, loss+cost(*x)-cost(was), true
		}
		if moved {
			break
		}
	}
	return u, best, nil
}

// meets reports whether a class was described at any of the sites.
func (j judged) meets(classes []string) bool {
	return slices.ContainsFunc(j.Sites, func(s record.Site) bool {
		return slices.ContainsFunc(s.Ground(), func(d record.Described) bool { return slices.Contains(classes, d.Class) })
	})
}

// Ground is the study of what the lithology tells: the figures fitted to all sites of which it is described, and how those
// fitted on other legs do against being told nothing.
func Ground(holesFile, lithologyFile string, out, notes io.Writer) error {
	j, model, err := openStudy(holesFile)
	if err != nil {
		return err
	}
	described, _, err := records.DescribedIn(lithologyFile)
	if err != nil {
		return err
	}
	records.Describe(j.Sites, described)
	all := j.fold()
	j = j.only(func(i int) bool { return j.Sites[i].Ground() != nil })
	fitted, err := j.fitTold(model, notes)
	if err != nil {
		return err
	}
	var rows [][]string
	for _, t := range fitted.Described {
		row := []string{fmt.Sprint(t.Classes)}
		for _, f := range toldFigures {
			row = append(row, fmt.Sprintf("%.0f", 100**f.of(&t)))
		}
		rows = append(rows, row)
	}
	if err := printed.Table(out, "What lithologies tell, % of what the tools alone tell", []string{"classes", "rotary rate", "extended rate", "rotary recovery", "extended recovery"}, rows); err != nil {
		return err
	}
	return j.reportTold(model, all, out, notes)
}

// reportTold forecasts each fold of the legs by what the others tell, and untold.
func (j judged) reportTold(model records.Unrecorded, fold map[string]int, out, notes io.Writer) error {
	var told, untold [2][]float64
	var legs []string
	var cases [2][]score.Case
	for f := range folds {
		fitted, err := j.only(func(i int) bool { return fold[j.Legs[i]] != f }).fitTold(model, notes)
		if err != nil {
			return err
		}
		held := j.only(func(i int) bool { return fold[j.Legs[i]] == f })
		a, err := held.visits(model, records.Programme, heldReplications)
		if err != nil {
			return err
		}
		b, err := held.visits(fitted, records.Ground, heldReplications)
		if err != nil {
			return err
		}
		for k, days := range []bool{true, false} {
			untold[k], told[k] = append(untold[k], held.toldCases(a, days)...), append(told[k], held.toldCases(b, days)...)
		}
		legs = append(legs, held.Legs...)
		cases[0], cases[1] = append(cases[0], hindcast.Cases(held.Sites, a)...), append(cases[1], hindcast.Cases(held.Sites, b)...)
	}
	var rows [][]string
	for k, of := range []string{"days", "metres"} {
		var d []float64
		var g []string
		for i := range told[k] {
			if x := told[k][i] - untold[k][i]; !math.IsNaN(x) {
				d, g = append(d, x), append(g, legs[i])
			}
		}
		ci := score.Interval(d, g, meanOf)
		rows = append(rows, []string{of, fmt.Sprint(len(d)), fmt.Sprintf("%.3f", meanOf(untold[k])), fmt.Sprintf("%.3f", meanOf(told[k])), fmt.Sprintf("%+.3f", meanOf(d)), fmt.Sprintf("%+.3f to %+.3f", ci[0], ci[1])})
	}
	if err := printed.Table(out, "Told the ground by what other legs tell of it", []string{"of sites", "number", "CRPS untold", "told", "difference", "95 %"}, rows); err != nil {
		return err
	}
	return printed.Table(out, "Days of these sites", []string{"forecast", "sites", "CRPS d", "95 %", "skill", "CRPS log", "abs %", "actual/median", "95 %", "in 50 %", "95 %", "in 80 %", "95 %"},
		[][]string{cardRow("untold", cases[0]), cardRow("told", cases[1])})
}
