package hindcast

import (
	"coredays/model/record"
	"coredays/model/score"
)

// Judge scores the visits to sites against what is on record of them: of days told how long legs are on their sites, and
// not told it.
func Judge(sites []record.Site, visits *Visits, l score.LegTime) *score.Hindcast {
	alone := score.Judge(Cases(sites, visits))
	visits = visits.GivenLegTime(sites, l)
	cases := Cases(sites, visits)
	result := &score.Hindcast{Card: score.Judge(cases), WithoutLegTime: alone}
	for i, c := range cases {
		result.Sites = append(result.Sites, siteScore(&sites[i], c))
	}
	scoreResults(result, sites, visits)
	for _, by := range record.Classifications {
		result.Classes = append(result.Classes, score.Classes(by.By, cases, func(i int) string { return by.Class(&sites[i]) })...)
	}
	return result
}

func siteScore(s *record.Site, c score.Case) score.Site {
	q := c.Forecast.Quantiles(0.1, 0.5, 0.9)
	return score.Site{Program: s.Program, Leg: s.Leg, Site: s.Name, Actual: c.Actual, Mean: c.Forecast.Mean(), P10: q[0], P50: q[1], P90: q[2],
		CRPS: c.Forecast.CRPS(c.Actual), Water: float64(s.Water()), Depth: float64(s.Deepest()), Tool: s.DeepestTool().String(), Year: s.Start().Year()}
}
