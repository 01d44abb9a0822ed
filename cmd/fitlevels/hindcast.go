package main

import (
	"context"
	"fmt"
	"os"

	"coredays/model/plan"
	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/scenario"
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
	visits := hindcast.Sail(context.Background(), voyages, j.legs, sim.Run{Seed: j.seed, Replications: replications})
	cases := make([]score.Case, len(j.sites))
	for i := range cases {
		for n := range visits.Days[i] {
			visits.Days[i][n] /= float64(unit.Day)
		}
		cases[i] = score.Case{Group: j.legs[i], Actual: float64(j.sites[i].Days() / unit.Day), Forecast: score.NewForecast(visits.Days[i])}
	}
	return cases, nil
}
