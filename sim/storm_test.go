package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// stormy is a ship on a site in 1500 m of water whose sea is given hour by hour: heights[i] from
// hour i on, the last for ever. She starts on station at time 0.
func stormy(t *testing.T, heights ...float64) *expedition {
	t.Helper()
	s := sailedTo(t, simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 100))))
	forceSea(s, heights)
	return s
}

// sailedTo puts a ship on her first site at time 0, her first item in hand, pipe on deck.
func sailedTo(t *testing.T, p *plan.Plan) *expedition {
	t.Helper()
	v := simtest.Compiled(t, p)
	s := newExpedition(v)
	s.Crew = EstimateByCrew(v)
	s.begins(1, 0)
	s.nextItem()
	s.At = s.Towards
	s.reachSite()
	s.Positioned = true
	s.nextItem()
	return s
}

// forceSea makes the heights come true: the score of each hour is the one that has the height at
// the site.
func forceSea(s *expedition, heights []float64) {
	s.Sea.Forced = heights
	s.MeetSea()
}

func TestStormInMidActivityDoesWhatItsStoppingRuleSays(t *testing.T) {
	// The storm is above every limit but no rung of the ladder from hour 2 to hour 5.
	storm := []float64{1, 1, 7, 7, 7, 1}
	tests := []struct {
		kind         activity.Kind
		unit         float64
		worked, ends float64 // h
		waited       float64
	}{
		// Three hours of work begun at hour 0.
		{activity.MakeUpBHA, 0.75, 3, 5.75, 2.75}, // next unit: the third collar is done at 2.25 h, waits to 5 h
		{activity.RigUpLogging, 0, 3, 6, 3},       // pause: 2 h done, 3 h wait, 1 h
		{activity.FetchBarrel, 0, 3, 3, 0},        // finish first: any sea
		{activity.OffsetMove, 0, 3, 6, 3},         // pause
		{activity.TemperatureStop, 0, 2, 2, 0},    // forfeit: the last hour is given up
		{activity.RunString, 0, 3, 8, 3},          // restart: 2 h lost, wait, 3 h anew
		{activity.TopDrive, 0, 3, 3, 0},           // finish first
	}
	for _, test := range tests {
		s := stormy(t, storm...)
		worked := s.DoInUnits(test.kind, 3*simtest.Hours, test.unit*simtest.Hours)
		if !simtest.Near(worked, test.worked*simtest.Hours) || !simtest.Near(s.Clock, test.ends*simtest.Hours) || !simtest.Near(s.Spent[activity.WaitOnWeather], test.waited*simtest.Hours) {
			t.Errorf("%v (%v): worked %.2f h, ended at %.2f h, waited %.2f h; want %.2f, %.2f, %.2f", test.kind, test.kind.Of().Stop,
				worked/simtest.Hours, s.Clock/simtest.Hours, s.Spent[activity.WaitOnWeather]/simtest.Hours, test.worked, test.ends, test.waited)
		}
		if s.Ended != ship.GoingOn {
			t.Errorf("%v: the script ended", test.kind)
		}
	}
}

func TestWorkDoesNotBeginInASeaAboveItsLimit(t *testing.T) {
	s := stormy(t, 7, 7, 1)
	s.Do(activity.RunBarrel, 1*simtest.Hours)
	if !simtest.Near(s.Clock, 3*simtest.Hours) || !simtest.Near(s.Spent[activity.WaitOnWeather], 2*simtest.Hours) {
		t.Errorf("ended at %.2f h after waiting %.2f h, want 3 and 2", s.Clock/simtest.Hours, s.Spent[activity.WaitOnWeather]/simtest.Hours)
	}
}

func TestAHighSeaEndsTheScriptAndTheRestFallsThrough(t *testing.T) {
	s := stormy(t, 1, 9, 9, 1)
	s.Hole.Open, s.Hole.Depth, s.Bit = true, 50, 1550
	s.BHA = 1
	s.Do(activity.RunString, 3*simtest.Hours) // stopped at hour 1: 9 m asks for the bit to be clear of the sea floor
	if s.Ended != ship.StormClear {
		t.Fatalf("ending %d, want %d", s.Ended, ship.StormClear)
	}
	clock := s.Clock
	if s.Do(activity.RunBarrel, simtest.Hours) != 0 || s.Clock != clock {
		t.Error("time passed in an abandoned script")
	}
	s.MakeSafe()
	// 50 m in the hole at 300 m/h and 30 m above it at 600 m/h.
	if want := clock + 50.0/300*simtest.Hours + 30.0/600*simtest.Hours; !simtest.Near(s.Clock, want) || s.Bit != 1470 {
		t.Errorf("clear of the sea floor at %.3f h with the bit at %g m, want %.3f h and 1470 m", s.Clock/simtest.Hours, s.Bit, want/simtest.Hours)
	}
	if s.nextStep().name != "find the hole again" {
		t.Errorf("next is to %s", s.nextStep().name)
	}
}

func TestALostHoleIsDrilledDownAgainToWhereItWas(t *testing.T) {
	s := stormy(t, 1)
	s.Hole.Open, s.Hole.Depth, s.Bit, s.BHA = true, 50, 1470, 1
	var done []string
	for range 4 {
		r := s.nextStep()
		done = append(done, r.name)
		r.do(s)
	}
	want := []string{"find the hole again", "give up a lost hole", "spud", "drill down"}
	for i := range want {
		if done[i] != want[i] {
			t.Fatalf("did %q, want %q", done, want)
		}
	}
	if s.Hole.Depth != 50 || s.Items[0].Holes != 1 || s.Items[0].Attempts != 1 {
		t.Errorf("at %g m after %d spuds, want 50 m after one", s.Hole.Depth, s.Items[0].Holes)
	}
}

func TestPipeIsHungOffOnlyForALongWait(t *testing.T) {
	long := []float64{1, 7}
	for range 40 {
		long = append(long, 7)
	}
	long = append(long, 1)
	tests := []struct {
		name    string
		heights []float64
		trips   float64 // h
	}{
		{"an hour", []float64{1, 7, 1}, 0},
		{"forty-one hours", long, 2 * 420.0 / 300}, // from 500 to 80 m and back at 300 m/h
	}
	for _, test := range tests {
		s := stormy(t, test.heights...)
		s.Hole.Open, s.Hole.Depth, s.Bit, s.BHA = true, 500, 2000, 1
		s.Voyage.Forecast.Skill = 1
		s.Do(activity.ConditionHole, 2*simtest.Hours)
		trips := s.Spent[activity.PullPipe] + s.Spent[activity.RunInHole]
		if !simtest.Near(trips, test.trips*simtest.Hours) || s.Bit != 2000 {
			t.Errorf("%s: %.3f h of trips, want %.3f; bit at %g", test.name, trips/simtest.Hours, test.trips, s.Bit)
		}
	}
}
