package hindcast_test

import (
	"slices"
	"testing"

	"gonum.org/v1/gonum/stat"

	"coredays/model/record"
	"coredays/model/score"
	"coredays/sim/hindcast"
)

// A leg of which not all sites are on record is not told how long legs are; of a whole one, the visits are about so long.
func TestOnlyWholeLegsAreToldTheirTime(t *testing.T) {
	var sample []float64
	for i := range 200 {
		sample = append(sample, (5+float64(i)/20)*86400)
	}
	visits := &hindcast.Visits{OnSite: [][]float64{sample, slices.Clone(sample)}}
	sites := []record.Site{{Program: "P", Leg: "1"}, {Program: "P", Leg: "2", Partial: true}}
	given := visits.GivenLegTime(sites, score.LegTime{Mean: 40, SD: 1, Freedom: 1, Scale: 1})
	if mean := stat.Mean(given.OnSite[0], nil) / 86400; mean < 30 {
		t.Errorf("the whole leg has %.1f d", mean)
	}
	if !slices.Equal(given.OnSite[1], sample) || !slices.Equal(visits.OnSite[0], sample) {
		t.Error("a leg in part, or the visits themselves, were changed")
	}
}
