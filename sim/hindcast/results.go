package hindcast

import (
	"gonum.org/v1/gonum/floats"

	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/unit"
)

// scoreResults adds metres and cores of sites and all three results of legs to a score.
func scoreResults(result *score.Hindcast, sites []record.Site, visits *Visits) {
	cases, names := Sampled(sites, visits), record.LegNames(sites)
	for i := range result.Sites {
		result.Sites[i].Recovered, result.Sites[i].Cores = cases[score.Recovered][i].Quantiles(), cases[score.Cores][i].Quantiles()
	}
	for of := range score.AllResults {
		legs, legNames := score.Summed(cases[of], names)
		result.OfSites = append(result.OfSites, score.Cover(of, cases[of], names))
		result.OfLegs = append(result.OfLegs, score.Cover(of, legs, legNames))
		if result.Legs == nil {
			result.Legs = legsOf(sites)
		}
		for i := range legs {
			result.Legs[i].Results[of] = legs[i].Quantiles()
		}
	}
}

// Sampled are the results of each site, on record and simulated. What came true counts all holes of a site,
// those near the sea floor too, whatever the forecast was given of.
func Sampled(sites []record.Site, visits *Visits) (cases [score.AllResults][]score.Sampled) {
	for i := range sites {
		s := &sites[i]
		cases[score.Days] = append(cases[score.Days], score.Sampled{Actual: float64(s.Days() / unit.Day), Sample: inDays(visits.OnSite[i])})
		cases[score.Recovered] = append(cases[score.Recovered], score.Sampled{Actual: float64(s.Recovered()), Sample: visits.Recovered[i]})
		cases[score.Cores] = append(cases[score.Cores], score.Sampled{Actual: float64(s.AllCores()), Sample: visits.Cores[i]})
	}
	return cases
}

// legsOf are the legs of sites, in the order of their first sites, as score.Summed has them.
func legsOf(sites []record.Site) (legs []score.Leg) {
	place := map[[2]string]int{}
	for _, s := range sites {
		key := [2]string{s.Program, s.Leg}
		n, known := place[key]
		if !known {
			n = len(legs)
			place[key] = n
			legs = append(legs, score.Leg{Program: s.Program, Leg: s.Leg})
		}
		legs[n].Sites++
	}
	return legs
}

// inDays are seconds in days.
func inDays(seconds []float64) []float64 {
	return floats.ScaleTo(make([]float64, len(seconds)), 1/float64(unit.Day), seconds)
}
