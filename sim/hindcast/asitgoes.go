package hindcast

import (
	"slices"

	"coredays/model/coring"
	"coredays/model/learn"
	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/spread"
)

// firstTold is the place of the first site of a leg that is told of those before it: one site seen says little.
const firstTold = 3

// AsItGoes forecasts the days of each site of a leg, from the third on, after those before it were seen. The days of a site have a
// normal score in their forecast; inLeg says what of it the sites of a leg have in common, and how much of that is the same with and
// without rotary cores. The scores seen condition the one to come (package learn), which moves and narrows its forecast.
func AsItGoes(sites []record.Site, cases []score.Case, inLeg spread.Quantity) (told []score.Told, err error) {
	for _, leg := range inOrder(sites) {
		for k := firstTold - 1; k < len(leg); k++ {
			at := &sites[leg[k]]
			var evidence [2]learn.Evidence // without rotary cores, with
			for i, other := range leg[:k] {
				if s := &sites[other]; !s.Holes[len(s.Holes)-1].End.After(at.Start()) {
					of := &evidence[rotaryAt(s)]
					of.Seen = append(of.Seen, learn.Observation{At: learn.Place{Site: i}, Value: cases[other].Forecast.Score(cases[other].Actual)})
				}
			}
			evidence[0].Of, evidence[1].Of = inLeg, inLeg
			seen, err := learn.From(evidence[:]...)
			if err != nil {
				return nil, err
			}
			c := &cases[leg[k]]
			now := seen.Total(rotaryAt(at), learn.Place{Site: k})
			f := c.Forecast.At(now.Mean, now.SD)
			q := f.Quantiles(0.1, 0.5, 0.9)
			told = append(told, score.Told{Program: at.Program, Leg: at.Leg, Site: at.Name, Place: k + 1,
				Days: score.Quantiles{Actual: c.Actual, P10: q[0], P50: q[1], P90: q[2], CRPS: f.CRPS(c.Actual)}, Untold: c.Forecast.CRPS(c.Actual)})
		}
	}
	return told, nil
}

// rotaryAt is 1 for a site with rotary cores, else 0.
func rotaryAt(s *record.Site) int {
	if s.DeepestTool() == coring.RCB {
		return 1
	}
	return 0
}

// inOrder are the sites of each leg, in the order in which the ship came to them; legs as they stand.
func inOrder(sites []record.Site) (legs [][]int) {
	place := map[string]int{}
	for i := range sites {
		name := sites[i].LegName()
		n, known := place[name]
		if !known {
			n = len(legs)
			place[name] = n
			legs = append(legs, nil)
		}
		legs[n] = append(legs[n], i)
	}
	for _, leg := range legs {
		slices.SortStableFunc(leg, func(a, b int) int { return sites[a].Start().Compare(sites[b].Start()) })
	}
	return legs
}
