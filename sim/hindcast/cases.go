package hindcast

import (
	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/unit"
)

// Cases are the days on each site on record and as the visits to it forecast them, grouped by leg.
func Cases(sites []record.Site, visits *Visits) []score.Case {
	cases := make([]score.Case, len(sites))
	for i := range sites {
		cases[i] = score.Case{Group: sites[i].LegName(), Actual: float64(sites[i].Days() / unit.Day), Forecast: score.NewForecast(inDays(visits.OnSite[i]))}
	}
	return cases
}
