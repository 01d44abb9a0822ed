package sim

import (
	"math"
	"slices"
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// The storm ladder looks at where the bit is while it moves, not at where it was.

// A joint of 10 m takes 15 min to drill and 6 min to connect. Those begun before the sea is above
// the 8 m of the sea floor are finished, then the bit leaves the hole.
func TestAStormDrivesTheBitOutOfAHoleThatIsBeingDrilled(t *testing.T) {
	s := inPort(t, simtest.OneSite(simtest.DrilledHole("D", 600)))
	goOnUntil(t, s, func() bool { return s.Hole.Open })
	began, storm := s.Clock, (math.Floor(s.Clock/simtest.Hours)+10)*simtest.Hours
	seaAhead(s, slices.Concat(repeated(1, 9), repeated(9, 48), []float64{1})...)
	goOn(s)
	if want := 10 * math.Ceil((storm-began)/(21*simtest.Minutes)); math.Abs(s.Hole.Depth-want) > 1e-6 {
		t.Errorf("drilled to %g m, by hand %g m", s.Hole.Depth, want)
	}
	if s.InHole() || s.Spent[activity.WaitOnWeather] > 0 {
		t.Errorf("the bit is at %g m after %.1f h of waiting", s.Bit, s.Spent[activity.WaitOnWeather]/simtest.Hours)
	}
}

// 4 h at 20 stands of 30 m an hour are 2,400 m of pipe, and 4 h back.
func TestAStormTurnsPipeBackThatIsBeingRun(t *testing.T) {
	s := sailedTo(t, simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 5000, simtest.PistonHole("A", 100))))
	s.BHA = coring.PistonBHA
	seaAhead(s, slices.Concat(repeated(1, 3), repeated(12, 48))...)
	s.runPipe()
	if s.Ended != ship.StormPipe || !simtest.Near(s.Bit, 2400) || !simtest.Near(s.Clock, 4*simtest.Hours) {
		t.Fatalf("at %.2f h the bit is at %g m, ending %d", s.Clock/simtest.Hours, s.Bit, s.Ended)
	}
	s.MakeSafe()
	if got := s.Spent[activity.PullPipe]; s.Bit != 0 || !simtest.Near(got, 4*simtest.Hours) {
		t.Errorf("pulled for %.2f h, the bit is at %g m", got/simtest.Hours, s.Bit)
	}
}
