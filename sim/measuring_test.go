package sim

import (
	"testing"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// A run takes 45 min and the way there and back on the wire, at 250 m/min. Cores of 5, 9.5, ... m end at
// 52.5 m, the first depth below 50 m; a hole that is drilled is at 100 m when both runs are made.
func TestThePenetrometerIsRunDownToTheTargetOfAnyHole(t *testing.T) {
	runs := []unit.Depth{50, 100}
	cored, drilled := simtest.PistonHole("A", 100), simtest.DrilledHole("A", 100)
	for _, test := range []struct {
		item plan.Item
		bits float64 // sum of the depths of the bit, m
	}{{cored, 1552.5 + 1600}, {drilled, 1600 + 1600}} {
		test.item.Hole.Penetrometer = runs
		s := sailed(t, simtest.OneSite(test.item), false)
		want := 2*45*simtest.Minutes + 2*test.bits/250*simtest.Minutes
		if got := s.Spent[activity.Penetrometer]; !simtest.Near(got, want) {
			t.Errorf("%d stages: %.3f h, by hand %.3f h", len(test.item.Hole.Stages), got/simtest.Hours, want/simtest.Hours)
		}
	}
}

// Sailing at each hour of a day, the seismic run always falls between 6 and 18 o'clock by the sun, which
// at 1 degree east is 4 min ahead of universal time.
func TestSeismicStationsAreShotByDay(t *testing.T) {
	hole := plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.RCB, To: 200}}, Logging: []int{1}}}
	for start := range 24 {
		p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 3000, hole))
		p.Sails = p.Sails.Add(time.Duration(start) * time.Hour)
		runs := 0
		for _, e := range Diary(t.Context(), simtest.Compiled(t, p), 1, 0, false).Entries {
			if e.Kind != activity.RunString {
				continue
			}
			runs++
			from, to := e.From.Add(4*time.Minute), e.To.Add(4*time.Minute)
			if from.Hour() < 6 || to.Hour() >= 18 || from.Day() != to.Day() {
				t.Errorf("sails at %d h: run from %s to %s by the sun", start, from.Format("15:04"), to.Format("15:04"))
			}
		}
		if runs != 1 {
			t.Errorf("sails at %d h: %d runs", start, runs)
		}
	}
}

// From 80 m in a hole of 280 m in 1,500 m of water: 1,580 m down and up in the pipe and 200 m down the hole
// at 1 m/s, and the hole logged upwards at 300 m/h, as often as the string has passes.
func TestAStringLogsTheHoleAsOftenAsItHasPasses(t *testing.T) {
	for _, passes := range []float64{1, 2, 3} {
		hole := simtest.PistonHole("A", 280)
		hole.Hole.Logging = []int{0}
		p := simtest.OneSite(hole)
		p.Ship.Strings[0].Passes = passes
		want := 2*1580.0 + 200 + passes*200/300*simtest.Hours
		if got := sailed(t, p, false).Spent[activity.RunString]; !simtest.Near(got, want) {
			t.Errorf("%g passes: %.3f h, by hand %.3f h", passes, got/simtest.Hours, want/simtest.Hours)
		}
	}
}

// Tools wait for a forecast without a sea above 3 m while they are down, and after three days of it are tried.
func TestTheCrewWaitsThreeDaysForAForecast(t *testing.T) {
	tests := []struct {
		name    string
		heights []float64
		waits   float64 // h
	}{
		{"quiet", []float64{1}, 0},
		{"quiet from hour 10 on", append(repeated(3.5, 10), 1), 10},
		{"a rough hour at 6, quiet from then on", append(repeated(1, 6), 3.5, 1), 7},
		{"a rough hour at 27, when the tools are out", append(repeated(1, 27), 3.5, 1), 0},
		{"rough for ever", []float64{3.5}, 72},
	}
	for _, test := range tests {
		s := stormy(t, test.heights...)
		s.Voyage.Forecast.Skill = 1
		s.awaitForecast(3, 8*simtest.Hours)
		if got := s.Spent[activity.WaitOnWeather]; !simtest.Near(got, test.waits*simtest.Hours) {
			t.Errorf("%s: waited %.1f h, by hand %g", test.name, got/simtest.Hours, test.waits)
		}
	}
}
