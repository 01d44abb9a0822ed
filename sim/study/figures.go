package study

import (
	"math"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/sim/statistics"
)

// Figures kept of each replication.
const (
	daysNeeded  = iota // s
	daysWaiting        // s on weather, whole programme
	rankOneDone        // 1 when everything of the first rank was done within the days
	allDone
	daysInHand   // s
	metresWithin // recovered within the days
	figures
)

// appended is a row of figures more.
func appended(rows []float64, c statistics.Layout, needed, bound statistics.Row) []float64 {
	recovered := 0.0
	for n := range c.Voyage.Sites {
		if m := bound[c.Site(n, statistics.SiteRecovered)]; !math.IsNaN(m) {
			recovered += m
		}
	}
	return append(rows, needed[statistics.ColDays], needed[statistics.ColClass+int(activity.Waiting)],
		bound[statistics.ColFirst], bound[statistics.ColAll], bound[statistics.ColInHand], recovered)
}

// figuresOf describes the rows of a plan.
func figuresOf(rows []float64) result.PlanFigures {
	column := make([]float64, len(rows)/figures)
	of := func(figure int) []float64 {
		for n := range column {
			column[n] = rows[n*figures+figure]
		}
		return column
	}
	late := 0
	for _, left := range of(daysInHand) {
		if left < 0 {
			late++
		}
	}
	return result.PlanFigures{
		Needed: statistics.Summarise(of(daysNeeded)), Waiting: statistics.Summarise(of(daysWaiting)),
		ChancePrimary: statistics.Summarise(of(rankOneDone)).Mean, ChanceAll: statistics.Summarise(of(allDone)).Mean,
		ChanceLate: float64(late) / float64(max(1, len(column))),
		InHand:     statistics.Summarise(of(daysInHand)), Recovered: statistics.Summarise(of(metresWithin)),
	}
}
