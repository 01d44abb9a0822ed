package hindcast

import (
	"coredays/model/record"
	"coredays/model/score"
)

// WithGround are the sites of which some ground is described.
func WithGround(sites []record.Site) (kept []record.Site) {
	for i := range sites {
		if sites[i].Ground() != nil {
			kept = append(kept, sites[i])
		}
	}
	return kept
}

// ToldGround scores the days of the sites that were told their ground against the visits to the same sites untold, which are
// those of WithGround in their order. The time of legs is not used.
func ToldGround(sites []record.Site, visits, untold *Visits) *score.AsItGoes {
	told, before := Cases(sites, visits), Cases(WithGround(sites), untold)
	var list []score.Told
	for i := range sites {
		s := &sites[i]
		if s.Ground() == nil {
			continue
		}
		c := told[i]
		q := c.Forecast.Quantiles(0.1, 0.5, 0.9)
		list = append(list, score.Told{Program: s.Program, Leg: s.Leg, Site: s.Name,
			Days: score.Quantiles{Actual: c.Actual, P10: q[0], P50: q[1], P90: q[2], CRPS: c.Forecast.CRPS(c.Actual)}, Untold: before[len(list)].Forecast.CRPS(c.Actual)})
	}
	return score.JudgeTold(list)
}
