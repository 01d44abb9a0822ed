package rates

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/activity"
	"coredays/model/coring"
)

// confidence of the intervals of events.
const confidence = 0.95

// counted is a count over its exposure, with the exact interval of a Poisson mean (Garwood 1936, from memory). Where
// none happened the interval ends where no event had a chance of 2.5 %.
func counted(kind string, count int, exposure float64, unit string) Event {
	low, high := 0.0, chiSquared(1-(1-confidence)/2, 2*float64(count)+2)/2
	if count > 0 {
		low = chiSquared((1-confidence)/2, 2*float64(count)) / 2
	}
	return Event{kind, count, exposure, unit, [2]float64{low / exposure, high / exposure}}
}

func chiSquared(p, degrees float64) float64 { return distuv.ChiSquared{K: degrees}.Quantile(p) }

// toolNames are how events name the tools.
var toolNames = [coring.Tools]string{"piston", "half-length piston", "extended barrel", "rotary"}

// events counts what went wrong.
func events(works []work, cycles []cycle) (list []Event) {
	cores, troubled := [coring.Tools]int{}, [coring.Tools]int{}
	for i := range cycles {
		cores[cycles[i].tool]++
		if cycles[i].troubled {
			troubled[cycles[i].tool]++
		}
	}
	for t := range coring.Tools {
		if cores[t] > 0 {
			list = append(list, counted("trouble with barrel or wire, "+toolNames[t]+" (cycles above twice their hole's median)", troubled[t], float64(cores[t]), "cores"))
		}
	}
	var days float64
	count := map[activity.Kind]int{}
	holes := map[[2]string]bool{}
	for i := range works {
		w := &works[i]
		for _, k := range append([]activity.Kind{w.kind}, w.also...) {
			count[k]++
		}
		if w.site != "" {
			days += w.hours() / 24
			if w.hole != "" {
				holes[[2]string{w.site, w.hole}] = true
			}
		}
	}
	if days > 0 {
		list = append(list, counted("breakdowns", count[activity.Breakdown], days, "days on site"))
	}
	if n := math.Max(1, float64(len(holes))); len(holes) > 0 {
		list = append(list, counted("starts given up", count[activity.FailedStart], n, "holes"),
			counted("water cores", count[activity.WaterCore], n, "holes"), counted("stuck pipe", count[activity.StuckPipe], n, "holes"))
	}
	return list
}
