package refit

import (
	"fmt"
	"io"
	"math"

	"gonum.org/v1/gonum/floats"

	"coredays/cmd/fitlevels/printed"
	"coredays/model/score"
	"coredays/model/unit"
	"coredays/scenario/records"
)

// legSum is a leg's time on its sites, d, on record and in the forecasts of its sites.
type legSum struct {
	actual float64
	sample []float64
}

// legTimes are the figures that are tried: likelihood picks one of each, in turn, until none is better.
var legTimes = []struct {
	name  string
	of    func(*score.LegTime) *float64
	tried []float64
}{
	{"mean, d", func(l *score.LegTime) *float64 { return &l.Mean }, []float64{36, 37, 38, 39, 40, 41, 42, 43}},
	{"standard deviation, d", func(l *score.LegTime) *float64 { return &l.SD }, []float64{6, 7, 8, 9, 10, 12}},
	{"otherwise", func(l *score.LegTime) *float64 { return &l.Otherwise }, []float64{0.04, 0.06, 0.08, 0.11, 0.15, 0.2, 0.3}},
	{"degrees of freedom", func(l *score.LegTime) *float64 { return &l.Freedom }, []float64{1, 1.5, 2, 3, 5, 10}},
	{"scale", func(l *score.LegTime) *float64 { return &l.Scale }, []float64{0.6, 0.7, 0.8, 0.9, 1, 1.2}},
}

// fitLegTime is the time that legs spend on their sites, of the highest likelihood.
func fitLegTime(legs []legSum) score.LegTime {
	best := score.LegTime{Mean: 40, SD: 9, Otherwise: 0.11, Freedom: 2, Scale: 0.9}
	most := likelihood(best, legs)
	for better := true; better; {
		better = false
		for _, figure := range legTimes {
			for _, x := range figure.tried {
				l := best
				*figure.of(&l) = x
				if p := likelihood(l, legs); p > most {
					best, most, better = l, p, true
				}
			}
		}
	}
	return best
}

// likelihood is the logarithm of the chance density of all legs.
func likelihood(l score.LegTime, legs []legSum) (sum float64) {
	for _, leg := range legs {
		if p := l.Chance(leg.sample, leg.actual); !math.IsNaN(p) {
			sum += math.Log(max(p, 1e-6))
		}
	}
	return sum
}

// LegTime is the study of how long legs are on their sites: the figures fitted to all legs, and how figures fitted on other legs do.
func LegTime(holesFile string, out io.Writer) error {
	j, model, err := openStudy(holesFile)
	if err != nil {
		return err
	}
	var rows [][]string
	for _, known := range []records.Knowledge{records.Programme, records.Counts} {
		days, err := j.days(model, known, heldReplications)
		if err != nil {
			return err
		}
		actual := make([]float64, len(j.Sites))
		for i := range j.Sites {
			actual[i] = float64(j.Sites[i].Days() / unit.Day)
		}
		l := fitLegTime(sumsOf(actual, days, j.Legs, func(string) bool { return true }))
		if _, err := fmt.Fprintf(out, "\n%s: all legs: %.3g d, standard deviation %.3g d, otherwise %.3g %%, %.3g degrees of freedom, scale %.3g %%\n", known, l.Mean, l.SD, 100*l.Otherwise, l.Freedom, 100*l.Scale); err != nil {
			return err
		}
		given := givenByOthers(actual, days, j.Legs, j.fold())
		rows = append(rows, coverageRows(known.String()+", not told", actual, days, j.Legs)...)
		rows = append(rows, coverageRows(known.String()+", told by other legs", actual, given, j.Legs)...)
	}
	return printed.Table(out, "Days of sites and of legs, built-in figures, told how long other legs were on their sites", []string{"forecast", "of", "number", "CRPS d", "95 %", "in 50 %", "in 80 %", "95 %"}, rows)
}

// days forecasts the days of every site, by replication.
func (j judged) days(u records.Unrecorded, known records.Knowledge, replications int) ([][]float64, error) {
	visits, err := j.visits(u, known, replications)
	if err != nil {
		return nil, err
	}
	for _, sample := range visits.OnSite {
		floats.Scale(1/float64(unit.Day), sample)
	}
	return visits.OnSite, nil
}

// sumsOf adds up the sites of some of the legs.
func sumsOf(actual []float64, days [][]float64, legs []string, of func(leg string) bool) (sums []legSum) {
	var cases []score.Sampled
	var names []string
	for i := range days {
		if of(legs[i]) {
			cases, names = append(cases, score.Sampled{Actual: actual[i], Sample: days[i]}), append(names, legs[i])
		}
	}
	summed, _ := score.Summed(cases, names)
	for _, s := range summed {
		sums = append(sums, legSum{s.Actual, s.Sample})
	}
	return sums
}

// givenByOthers moves the forecasts of each fold of the legs by the time of the legs of the others.
func givenByOthers(actual []float64, days [][]float64, legs []string, fold map[string]int) [][]float64 {
	given := make([][]float64, len(days))
	for f := range folds {
		l := fitLegTime(sumsOf(actual, days, legs, func(leg string) bool { return fold[leg] != f }))
		var held []int
		var samples [][]float64
		var names []string
		for i, leg := range legs {
			if fold[leg] == f {
				held, samples, names = append(held, i), append(samples, days[i]), append(names, leg)
			}
		}
		for k, moved := range l.Condition(samples, names) {
			given[held[k]] = moved
		}
	}
	return given
}

// coverageRows are the scores of sites and of legs.
func coverageRows(name string, actual []float64, days [][]float64, legs []string) (rows [][]string) {
	cases := make([]score.Sampled, len(days))
	for i := range days {
		cases[i] = score.Sampled{Actual: actual[i], Sample: days[i]}
	}
	return coverRows(name, score.Days, cases, legs)
}

// coverRows are the scores of a result of sites and, summed, of legs.
func coverRows(name string, of score.Results, cases []score.Sampled, legs []string) (rows [][]string) {
	summed, names := score.Summed(cases, legs)
	for _, x := range []struct {
		of string
		c  score.Coverage
	}{{"sites", score.Cover(of, cases, legs)}, {"legs", score.Cover(of, summed, names)}} {
		rows = append(rows, []string{name, x.of, fmt.Sprint(x.c.Cases), fmt.Sprintf("%.4g", x.c.CRPS), fmt.Sprintf("%.4g-%.4g", x.c.CRPSCI[0], x.c.CRPSCI[1]),
			fmt.Sprintf("%.3f", x.c.Inside50), fmt.Sprintf("%.3f", x.c.Inside80), fmt.Sprintf("%.3f-%.3f", x.c.Inside80CI[0], x.c.Inside80CI[1])})
	}
	return rows
}
