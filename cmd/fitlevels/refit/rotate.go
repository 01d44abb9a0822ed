package refit

import (
	"io"
	"slices"

	"coredays/model/score"
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

// rotated fits on all legs but those of a fold and forecasts these, for each fold: the cases in the
// order of the sites, by level of knowledge.
func (j judged) rotated(notes io.Writer) (byLevel [2][]score.Case, err error) {
	of := j.fold()
	for k := range byLevel {
		byLevel[k] = make([]score.Case, len(j.Sites))
	}
	for f := range folds {
		x, err := j.only(func(i int) bool { return of[j.Legs[i]] != f }).fit(notes)
		if err != nil {
			return byLevel, err
		}
		held := func(i int) bool { return of[j.Legs[i]] == f }
		for k := range byLevel {
			cases, err := j.only(held).cases(turned(x), records.Knowledge(k), heldReplications)
			if err != nil {
				return byLevel, err
			}
			for i := range j.Sites {
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
