package hindcast_test

import (
	"slices"
	"testing"
	"time"

	"coredays/model/record"
	"coredays/sim/hindcast"
)

func TestCasesAreInDaysAndGroupedByLeg(t *testing.T) {
	begin := time.Date(2030, 1, 1, 0, 0, 0, 0, time.UTC)
	hole := func(hours int) record.Hole {
		return record.Hole{Start: begin, End: begin.Add(time.Duration(hours) * time.Hour)}
	}
	sites := []record.Site{
		{Program: "P", Leg: "1", Name: "a", Holes: []record.Hole{hole(12), hole(36)}},
		{Program: "P", Leg: "2", Name: "a", Holes: []record.Hole{hole(6)}},
	}
	visits := &hindcast.Visits{OnSite: [][]float64{{3 * 86400, 86400}, {43200}}}
	for range 2 { // the visits are left as they were
		cases := hindcast.Cases(sites, visits)
		if len(cases) != 2 || cases[0].Group != "P 1" || cases[1].Group != "P 2" {
			t.Fatalf("%+v", cases)
		}
		if cases[0].Actual != 2 || cases[1].Actual != 0.25 {
			t.Errorf("on record %g and %g d, want 2 and 0.25", cases[0].Actual, cases[1].Actual)
		}
		if !slices.Equal(cases[0].Forecast, []float64{1, 3}) || !slices.Equal(cases[1].Forecast, []float64{0.5}) {
			t.Errorf("forecasts %v and %v d, want 1 3 and 0.5", cases[0].Forecast, cases[1].Forecast)
		}
	}
}
