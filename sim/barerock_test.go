package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// rockSite has a rotary hole of 60 m in basalt, as fast to cut as the mud of the other tests, beneath so much mud.
func rockSite(mud unit.Depth, items ...plan.Item) *plan.Plan {
	p := simtest.OneSite(append(items, simtest.RotaryHole("A", 60))...)
	rock := p.Sites[0].Layers[0]
	rock.Lithology.Name = "basalt"
	if mud > 0 {
		soft := p.Sites[0].Layers[0]
		soft.Bottom = mud
		p.Sites[0].Layers = append(p.Sites[0].Layers[:0:0], soft, rock)
	} else {
		p.Sites[0].Layers = append(p.Sites[0].Layers[:0:0], rock)
	}
	return p
}

// Six cores of 9.5 m and one of 3 m at 30 m/h. On rock those that begin at 0 and 9.5 m are cut at 30 %, the next ones at 38,
// 57, 76 and 95 %, with the depth over 50 m.
func TestRockIsCutSlowlyUntilTheCollarsStandInIt(t *testing.T) {
	s := inPort(t, rockSite(0))
	goHome(t, s)
	want := (9.5/0.3 + 9.5/0.3 + 9.5/0.38 + 9.5/0.57 + 9.5/0.76 + 9.5/0.95 + 3) / 30 * simtest.Hours
	if got := s.Spent[activity.CutCore]; !simtest.Near(got, want) {
		t.Errorf("cut for %.3f h, by hand %.3f h", got/simtest.Hours, want/simtest.Hours)
	}
	stated := rockSite(0)
	stated.Sites[0].Layers[0].Stated = true
	s = inPort(t, stated)
	goHome(t, s)
	if got, want := s.Spent[activity.CutCore], 60/30.0*simtest.Hours; !simtest.Near(got, want) {
		t.Errorf("a rate that is stated gives %.3f h, by hand %.3f h", got/simtest.Hours, want/simtest.Hours)
	}
}

// A place on rock is looked for first, unless a task did so; beneath 5 m of sediment it is not.
func TestBareRockIsSurveyedOnce(t *testing.T) {
	survey := plan.Item{Name: "survey", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(3 * simtest.Hours), Pipe: plan.PipeAtTheFloor}}}}
	for name, c := range map[string]struct {
		plan *plan.Plan
		want float64
	}{
		"bare":            {rockSite(0), 8},
		"4 m of sediment": {rockSite(4), 8},
		"5 m of sediment": {rockSite(5), 0},
		"after a task":    {rockSite(0, survey), 0},
		"a second hole":   {rockSite(0, simtest.RotaryHole("before", 20)), 8},
	} {
		s := inPort(t, c.plan)
		goHome(t, s)
		if got := s.Spent[activity.Survey] / simtest.Hours; !simtest.Near(got, c.want) {
			t.Errorf("%s: %.2f h of survey, by hand %g h", name, got, c.want)
		}
	}
}

// Of starts on rock that fail for sure eight are made, of 3 h each, where sediment lets every one succeed.
func TestStartsFailOnBareRockByTheirOwnChance(t *testing.T) {
	for mud, want := range map[unit.Depth]float64{0: mostFailedStarts * 3, 30: 0} {
		p := rockSite(mud)
		p.Ship.Rates[rig.BareStart] = simtest.Just(1)
		s := inPort(t, p)
		goHome(t, s)
		if got := s.Spent[activity.FailedStart] / simtest.Hours; !simtest.Near(got, want) {
			t.Errorf("%g m of sediment: %.1f h of starts given up, by hand %g h", float64(mud), got, want)
		}
	}
}

// Half an hour of drilling ahead in ground that wears a bit at a fifth takes 0.1 h of its life, an hour of coring in ground that wears
// twice as fast two hours.
func TestABitWearsByTheGroundItTurnsIn(t *testing.T) {
	s := inOpenHole(t, 100, 1)
	s.Voyage.Quantities[s.Here.Layers[0].Wear] = simtest.Just(0.2).Compile()
	s.Hole.Aim = 120 // 20 m at 40 m/h
	s.drillDown()
	if got := s.Rotating / simtest.Hours; !simtest.Near(got, 0.1) {
		t.Errorf("drilling ahead takes %.3f h of the bit's life, by hand 0.1 h", got)
	}
	s.Voyage.Quantities[s.Here.Layers[0].Wear] = simtest.Just(2).Compile()
	s.cut(1 * simtest.Hours)
	if got := s.Rotating / simtest.Hours; !simtest.Near(got, 2.1) {
		t.Errorf("with a core %.3f h, by hand 2.1 h", got)
	}
}
