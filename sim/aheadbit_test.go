package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/sim/ship"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// Drilling ahead turns the rotary bit as coring does. At 10 m/h a joint of 10 m takes an hour of the fifty
// that a bit lasts.

// drilledAt10 is a hole drilled ahead at 10 m/h, cored with the rotary barrel at 5 m/h from there on.
func drilledAt10(ahead, to float64, reentry plan.Reentry) *plan.Plan {
	item := plan.Item{Name: "D", Rank: 1, Hole: &plan.Hole{DrillAheadTo: unit.Depth(ahead), Reentry: reentry}}
	if to > ahead {
		item.Hole.Stages = []plan.Stage{{With: coring.RCB, To: unit.Depth(to)}}
	}
	p := simtest.OneSite(item)
	p.Sites[0].Layers[0].Lithology.Ahead, p.Sites[0].Layers[0].Lithology.Rate = simtest.Just(10/simtest.Hours), simtest.Just(5/simtest.Hours)
	return p
}

func TestDrillingAheadWearsTheBit(t *testing.T) {
	tests := []struct {
		name       string
		ahead, to  float64
		reentry    plan.Reentry
		depth      float64
		incomplete bool
		bits       int
		centre     int // times that the centre bit is pulled
	}{
		{"worn at 500 m, with no way back", 800, 0, plan.NoReentry, 500, true, 1, 0},
		{"the second bit drills the rest", 800, 0, plan.Funnel, 800, false, 2, 0},
		// 30 h to 300 m, then 1.9 h a core: the eleventh ends at 404.5 m after 50.9 h.
		{"the cores have what drilling left of it", 300, 500, plan.NoReentry, 404.5, true, 1, 1},
		{"worn where coring begins: the centre bit comes up with the string", 500, 509.5, plan.Funnel, 509.5, false, 2, 0},
	}
	for _, test := range tests {
		s := sailed(t, drilledAt10(test.ahead, test.to, test.reentry), false)
		if log := s.Items[0]; !simtest.Near(log.Depth, test.depth) || log.Incomplete != test.incomplete || s.Consumed[statistics.RotaryBits] != test.bits {
			t.Errorf("%s: to %g m, incomplete %v, %d bits; by hand to %g m, %v, %d", test.name, log.Depth, log.Incomplete, s.Consumed[statistics.RotaryBits],
				test.depth, test.incomplete, test.bits)
		}
		if got, want := s.Spent[activity.CentreBit] > 0, test.centre > 0; got != want {
			t.Errorf("%s: the centre bit was pulled for %.2f h", test.name, s.Spent[activity.CentreBit]/simtest.Hours)
		}
	}
}

// The bit waits a storm out at 80 m in a hole of 500 m, then leaves it at 9 m of sea: 420 m and 80 m at
// 300 m/h and 30 m above the sea floor at 600 m/h, 1.72 h in all. No metre is pulled twice.
func TestPipeThatWasHungOffIsPulledOnce(t *testing.T) {
	heights := append(repeated(7, 30), repeated(9, 30)...)
	s := inOpenHole(t, 500, append(heights, 1)...)
	s.Item.Hole.DrillAheadTo, s.Hole.Aim = 600, 600
	s.drillDown()
	if s.Ended != ship.StormClear || s.Bit != 1580 || s.Hole.Depth != 500 {
		t.Fatalf("ending %d with the bit at %g m and the hole at %g m, want the bit hung off at 1,580 m", s.Ended, s.Bit, s.Hole.Depth)
	}
	s.MakeSafe()
	if got, want := s.Spent[activity.PullPipe], 500.0/300*simtest.Hours+30.0/600*simtest.Hours; !simtest.Near(got, want) || s.Bit != 1470 {
		t.Errorf("pulled for %.2f h up to %g m, by hand %.2f h", got/simtest.Hours, s.Bit, want/simtest.Hours)
	}
}
