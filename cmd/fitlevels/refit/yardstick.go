package refit

import (
	"fmt"
	"io"
	"math"
	"math/rand/v2"
	"slices"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"

	"coredays/cmd/fitlevels/printed"
	"coredays/cmd/fitlevels/regress"
	"coredays/model/coring"
	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/unit"
)

// Yardsticks are statistical models that know the programme of a site and nothing of a ship: they say what the
// facts are worth by themselves.

// predictor gives the logarithm of the days of a site from its features.
type predictor func(features []float64) float64

// yardsticks are trained on features and logarithms of days.
var yardsticks = []struct {
	name  string
	train func(rows [][]float64, y []float64) predictor
}{
	{"log-linear regression", func(rows [][]float64, y []float64) predictor {
		b := regress.WeightedLeastSquares(rows, y, slices.Repeat([]float64{1}, len(y)))
		return func(f []float64) float64 { return regress.Dot(b, f) }
	}},
	{"boosted regression trees", boosted},
}

// features are what the level programme gives a site.
func features(s *record.Site) []float64 {
	var metres [coring.Tools]float64
	ahead, holes := 0.0, 0.0
	for i := range s.Holes {
		h := &s.Holes[i]
		if h.FailedStart() {
			continue
		}
		holes++
		ahead += float64(h.Ahead())
		for _, step := range h.Steps() {
			metres[step.With] += float64(step.Length)
		}
	}
	hung := 0.0
	for _, is := range []bool{s.Reached != coring.NoBHA, s.LeftHanging} {
		hung += indicator(is)
	}
	f := []float64{1, math.Log(float64(s.Water())), math.Log(float64(s.Deepest())), math.Log(holes), math.Log1p(metres[coring.APC] + metres[coring.HLAPC]),
		math.Log1p(metres[coring.XCB]), math.Log1p(metres[coring.RCB]), math.Log1p(ahead), indicator(s.First), hung,
		math.Sqrt(metres[coring.RCB]), math.Sqrt(metres[coring.XCB])}
	for era := range len(eraFrom) - 1 {
		f = append(f, indicator(inEra(era)(s)))
	}
	return f
}

func indicator(is bool) float64 {
	if is {
		return 1
	}
	return 0
}

// yardstick forecasts each site by a model trained on the other parts of the legs. Its spread is that of its own errors
// on legs that it was not trained on, by the deepest tool of a site.
func (j judged) yardstick(train func([][]float64, []float64) predictor) held {
	of := j.fold()
	rows, y := make([][]float64, len(j.Sites)), make([]float64, len(j.Sites))
	for i := range j.Sites {
		rows[i], y[i] = features(&j.Sites[i]), math.Log(float64(j.Sites[i].Days()/unit.Day))
	}
	without := func(left ...int) predictor {
		var r [][]float64
		var v []float64
		for i := range rows {
			if !slices.Contains(left, of[j.Legs[i]]) {
				r, v = append(r, rows[i]), append(v, y[i])
			}
		}
		return train(r, v)
	}
	h := held{make([]score.Case, len(j.Sites)), make([][]float64, len(j.Sites))}
	legs := j.legScores()
	for out := range folds {
		errors := map[coring.Tool][]float64{}
		for inner := range folds {
			if inner == out {
				continue
			}
			p := without(out, inner)
			for i := range rows {
				if of[j.Legs[i]] == inner {
					tool := j.Sites[i].DeepestTool()
					errors[tool] = append(errors[tool], y[i]-p(rows[i]))
				}
			}
		}
		p := without(out)
		for i := range rows {
			if of[j.Legs[i]] == out {
				var days []float64
				for _, e := range errors[j.Sites[i].DeepestTool()] {
					days = append(days, math.Exp(p(rows[i])+e))
				}
				h.cases[i] = j.caseOf(i, days)
				slices.Sort(days)
				h.days[i] = alike(days, legs[j.Legs[i]], i)
			}
		}
	}
	return h
}

// legShare is what the errors of a leg's sites have in common, of the variance of their scores: as the simulator's days have it
// (record.yaml, leg.share).
const legShare = 0.33

// legScores are a normal score a replication for each leg, of what its sites have in common.
func (j judged) legScores() map[string][]float64 {
	scores := map[string][]float64{}
	for _, leg := range j.Legs {
		if scores[leg] == nil {
			scores[leg] = scoresOf(uint64(len(scores)), heldReplications)
		}
	}
	return scores
}

func scoresOf(stream uint64, n int) []float64 {
	random := rand.New(rand.NewPCG(7, stream))
	scores := make([]float64, n)
	for r := range scores {
		scores[r] = random.NormFloat64()
	}
	return scores
}

// alike are quantiles of sorted values, replication by replication, whose scores share those of the leg.
func alike(sorted, leg []float64, site int) []float64 {
	own := scoresOf(uint64(1e6+site), len(leg))
	values := make([]float64, len(leg))
	for r := range values {
		z := math.Sqrt(legShare)*leg[r] + math.Sqrt(1-legShare)*own[r]
		values[r] = stat.Quantile(distuv.UnitNormal.CDF(z), stat.LinInterp, sorted, nil)
	}
	return values
}

// reportYardsticks holds the simulator against the yardsticks site by site, all by figures of other legs.
func reportYardsticks(out io.Writer, j judged, simulated held) error {
	var cards, pairs [][]string
	for _, k := range yardsticks {
		y := j.yardstick(k.train)
		told := j.told(y)
		cards = append(cards, cardRow(k.name, y.cases), cardRow(k.name+", told the time of legs", told.cases))
		pairs = append(pairs, pairRow(k.name, simulated.cases, y.cases), pairRow(k.name+", both told the time of legs", j.told(simulated).cases, told.cases))
	}
	if err := printed.Table(out, "Yardsticks on the programme, other legs", []string{"yardstick", "sites", "CRPS d", "95 %", "skill", "CRPS log", "abs %", "actual/median", "95 %", "in 50 %", "95 %", "in 80 %", "95 %"}, cards); err != nil {
		return err
	}
	return printed.Table(out, "Simulator less yardstick, site by site", []string{"yardstick", "CRPS d", "95 %", "CRPS log", "95 %", "sites with lower CRPS"}, pairs)
}

// pairRow has the mean difference of CRPS, in days and of the logarithm, with intervals over legs.
func pairRow(name string, a, b []score.Case) []string {
	var days, logs []float64
	var groups []string
	lower := 0.0
	for i := range a {
		d := a[i].Forecast.CRPS(a[i].Actual) - b[i].Forecast.CRPS(b[i].Actual)
		days = append(days, d)
		logs = append(logs, a[i].Forecast.Log().CRPS(math.Log(a[i].Actual))-b[i].Forecast.Log().CRPS(math.Log(b[i].Actual)))
		groups = append(groups, a[i].Group)
		lower += indicator(d < 0)
	}
	mean := func(v []float64) float64 { return stat.Mean(v, nil) }
	pair := func(v []float64) []string {
		ci := score.Interval(v, groups, mean)
		return []string{fmt.Sprintf("%+.3f", mean(v)), fmt.Sprintf("%+.3f to %+.3f", ci[0], ci[1])}
	}
	return append(append(append([]string{name}, pair(days)...), pair(logs)...), fmt.Sprintf("%.0f %%", 100*lower/float64(len(a))))
}
