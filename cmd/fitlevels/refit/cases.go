// Package refit fits to the days on sites what records leave open, and judges the fit by legs not seen.
package refit

import (
	"context"

	"coredays/model/record"
	"coredays/model/score"
	"coredays/scenario/records"
	"coredays/sim"
	"coredays/sim/hindcast"
)

// What a record of holes leaves open is fitted to the days on its sites with the simulator itself:
// every trial of the figures is a hindcast of all sites with the same random numbers, scored by CRPS.

// trialReplications is how often each site is sailed in a trial: the mean CRPS is then known to
// 0.02 d against more of them, and differences between trials much better. Of 19 and the truth, all alike,
// just a tenth lie below two and a quarter below five: with other numbers the tails of good forecasts would
// seem to hold more or less than they do.
const trialReplications = 19

// judged are the sites that figures are tried on.
type judged struct {
	Sites []record.Site
	Legs  []string
	seed  uint64
}

func OpenSites(name string) (judged, error) {
	sites, _, err := records.HolesIn(name)
	return judged{Sites: sites, Legs: record.LegNames(sites), seed: 1}, err
}

// openStudy reads the sites of a table and the built-in figures of what it leaves open.
func openStudy(holesFile string) (judged, records.Unrecorded, error) {
	j, err := OpenSites(holesFile)
	if err != nil {
		return j, records.Unrecorded{}, err
	}
	model, faults := records.Model()
	if len(faults) > 0 {
		return j, model, faults
	}
	return j, model, nil
}

// only keeps some of the sites.
func (j judged) only(keep func(i int) bool) judged {
	k := judged{seed: j.seed}
	for i := range j.Sites {
		if keep(i) {
			k.Sites, k.Legs = append(k.Sites, j.Sites[i]), append(k.Legs, j.Legs[i])
		}
	}
	return k
}

// cases forecasts every site with what the figures say.
func (j judged) cases(u records.Unrecorded, known records.Knowledge, replications int) ([]score.Case, error) {
	visits, err := j.visits(u, known, replications)
	if err != nil {
		return nil, err
	}
	return hindcast.Cases(j.Sites, visits), nil
}

// visits sails every site with what the figures say.
func (j judged) visits(u records.Unrecorded, known records.Knowledge, replications int) (*hindcast.Visits, error) {
	voyages, err := u.Voyages(j.Sites, known)
	if err != nil {
		return nil, err
	}
	return hindcast.Sail(context.Background(), voyages, j.Legs, sim.Run{Seed: j.seed, Replications: replications}), nil
}
