package refit

import (
	"io"
	"slices"

	"coredays/model/score"
	"coredays/model/unit"
	"coredays/scenario/records"
)

// folds is in how many parts the legs are rotated.
const folds = 5

// fold of a leg: in the order of the file, one after the other.
func (j judged) fold() map[string]int {
	of := map[string]int{}
	for _, leg := range j.Legs {
		if _, seen := of[leg]; !seen {
			of[leg] = len(of) % folds
		}
	}
	return of
}

// held are forecasts of sites by figures fitted on the legs of others: the cases, and the days replication by replication.
type held struct {
	cases []score.Case
	days  [][]float64
}

// rotated fits on all legs but those of a fold and forecasts these, for each fold: in the order of the sites, by level of
// knowledge.
func (j judged) rotated(notes io.Writer) (byLevel [2]held, err error) {
	of := j.fold()
	for k := range byLevel {
		byLevel[k] = held{make([]score.Case, len(j.Sites)), make([][]float64, len(j.Sites))}
	}
	for f := range folds {
		x, err := j.only(func(i int) bool { return of[j.Legs[i]] != f }).fit(notes)
		if err != nil {
			return byLevel, err
		}
		out := j.only(func(i int) bool { return of[j.Legs[i]] == f })
		for k := range byLevel {
			days, err := out.days(turned(x), records.Knowledge(k), heldReplications)
			if err != nil {
				return byLevel, err
			}
			for i := range j.Sites {
				if of[j.Legs[i]] == f {
					byLevel[k].days[i], days = days[0], days[1:]
					byLevel[k].cases[i] = j.caseOf(i, byLevel[k].days[i])
				}
			}
		}
	}
	return byLevel, nil
}

// caseOf is a site with a sample of its days.
func (j judged) caseOf(i int, days []float64) score.Case {
	return score.Case{Group: j.Legs[i], Actual: float64(j.Sites[i].Days() / unit.Day), Forecast: score.NewForecast(days)}
}

// told are forecasts moved by the time that the legs of the other folds spent on their sites.
func (j judged) told(h held) held {
	actual := make([]float64, len(j.Sites))
	for i := range j.Sites {
		actual[i] = float64(j.Sites[i].Days() / unit.Day)
	}
	t := held{make([]score.Case, len(j.Sites)), givenByOthers(actual, h.days, j.Legs, j.fold())}
	for i := range t.cases {
		t.cases[i] = j.caseOf(i, t.days[i])
	}
	return t
}

// ofLegs are the cases of whole legs: the sums of the days of their sites.
func (h held) ofLegs(legs []string) (cases []score.Case) {
	sampled := make([]score.Sampled, len(h.days))
	for i := range h.days {
		sampled[i] = score.Sampled{Actual: h.cases[i].Actual, Sample: h.days[i]}
	}
	summed, names := score.Summed(sampled, legs)
	for i, s := range summed {
		cases = append(cases, score.Case{Group: names[i], Actual: s.Actual, Forecast: score.NewForecast(s.Sample)})
	}
	return cases
}

// heldReplications is how often a site that is held back is sailed.
const heldReplications = 1000

// later fits on the older half of the sites and forecasts the newer half.
func (j judged) later(notes io.Writer) ([]score.Case, error) {
	var starts []int64
	for i := range j.Sites {
		starts = append(starts, j.Sites[i].Start().Unix())
	}
	slices.Sort(starts)
	middle := starts[len(starts)/2]
	older := func(i int) bool { return j.Sites[i].Start().Unix() < middle }
	x, err := j.only(older).fit(notes)
	if err != nil {
		return nil, err
	}
	return j.only(func(i int) bool { return !older(i) }).cases(turned(x), records.Programme, heldReplications)
}
