package rates

import (
	"math"
	"testing"
	"time"

	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/scenario"
)

// runsOfTheLine is a recording of so many round trips of the line to 3000 m at 4 m/s, of which each begins on the hour.
func runsOfTheLine(trips int) riglog.Recording {
	r := riglog.Recording{File: "rig.csv", Start: time.Date(2027, 3, 1, 0, 0, 0, 0, time.UTC)}
	for s := range trips * 3600 {
		out := 0.0
		switch t := float64(s % 3600); {
		case t >= 300 && t < 1050:
			out = 4 * (t - 300)
		case t >= 1050 && t < 1500:
			out = 3000
		case t >= 1500 && t < 2250:
			out = 3000 - 4*(t-1500)
		}
		load := 5e5
		r.Time, r.Block, r.Hook, r.Wire = append(r.Time, float64(s)), append(r.Block, 10), append(r.Hook, load), append(r.Wire, out)
	}
	return r
}

// The core table says which tool was on the line; each round is two runs. The speed timed on the line goes before the one that
// depths of water tell, and what no core explains is left out.
func TestTheLinesSpeedIsThatOfTheToolOnIt(t *testing.T) {
	var cores []riglog.Core
	for i, letter := range []string{"H", "H", "X", "X", "X", "X", "X", "X", "X", "X"} {
		cores = append(cores, riglog.Core{Site: "S", Hole: "A", Number: i + 1, Type: letter, Cored: 9.5, Water: 3000,
			OnDeck: time.Date(2027, 3, 1, i, 45, 0, 0, time.UTC)})
	}
	r := Learn(scenario.BuiltInRates(), &riglog.Papers{Cores: cores, Recordings: []riglog.Recording{runsOfTheLine(11)}}, nil)
	piston, extended := found(t, r, rig.PistonWire), found(t, r, rig.ExtendedWire)
	if piston.N != 4 || extended.N != 16 {
		t.Errorf("%d runs with piston corers, %d with the extended barrel; want 4 and 16", piston.N, extended.N)
	}
	near(t, "m/min", extended.Log[1]*60, 240, 4)
	ship := scenario.BuiltInRates()[rig.ExtendedWire].Median() * 60
	if use := extended.Use[1] * 60; math.Abs(use-240) > 0.2*math.Abs(ship-240) {
		t.Errorf("%.0f m/min to use; 16 runs at 240 move it nearly all the way from the ship's %.0f", use, ship)
	}
	lost := 0
	for _, n := range r.LeftOut {
		if n.Why == "2 runs of the line of which no core table tells the tool" {
			lost++
		}
	}
	if lost != 1 {
		t.Errorf("left out %v, want the last round, after which no core came", r.LeftOut)
	}
}
