package hindcast

import (
	"gonum.org/v1/gonum/floats"

	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/unit"
)

// GivenLegTime is the visits once it is known how long legs are on their sites. Legs of which not all sites are on record stay as they are.
func (v *Visits) GivenLegTime(sites []record.Site, l score.LegTime) *Visits {
	given := *v
	given.OnSite = append([][]float64(nil), v.OnSite...)
	var whole []int
	var legs []string
	var days [][]float64
	for i := range sites {
		if !sites[i].Partial {
			whole, legs = append(whole, i), append(legs, sites[i].LegName())
			days = append(days, inDays(v.OnSite[i]))
		}
	}
	for k, moved := range l.Condition(days, legs) {
		given.OnSite[whole[k]] = floats.ScaleTo(moved, float64(unit.Day), moved)
	}
	return &given
}
