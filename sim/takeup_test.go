package sim

import (
	"testing"
	"time"

	"coredays/model/coring"
	"coredays/model/state"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// A hole of 300 m of mud that has stood open for four days by the log sticks, by hand, twice as often for its metres and
// twice for its days; how long the ship has been at sea is no matter.
func TestAHoleTakenUpHasStoodOpenSinceTheLogHasItSpudded(t *testing.T) {
	v := simtest.Compiled(t, simtest.OneSite(simtest.RotaryHole("A", 400)))
	at := v.Plan.Sails.Add(20 * 24 * time.Hour)
	for name, opened := range map[string]time.Time{"spudded": at.Add(-4 * 24 * time.Hour), "not told when": {}} {
		st := &state.State{At: at, Sites: []state.Site{{State: state.InHand, Arrived: at.Add(-5 * 24 * time.Hour), FloorKnown: true}},
			Items: []state.Item{{State: state.InHand, Began: at.Add(-4 * 24 * time.Hour), Depth: 300, Spudded: 1}}}
		st.Now = state.Ship{Site: 0, Item: 0, LastSite: 0, OnStation: true, Bit: 1800, Assembly: coring.RotaryBHA, Longest: unit.Length(1800),
			TriedOut: true, LastService: at, Hole: state.Hole{Open: true, Opened: opened, Depth: 300}}
		x, s := TakeUp(v, st), newExpedition(v)
		s.begins(1, 0)
		s.takesUp(x)
		if got := s.Stickiness(); !simtest.Near(got, 4) {
			t.Errorf("%s: %.3f times the usual chance, by hand 4", name, got)
		}
	}
}
