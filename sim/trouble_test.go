package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// forced is a site with one hole in which some rates are certain, sailed once with its diary.
func forced(t *testing.T, hole plan.Hole, rates map[rig.Rate]float64) *expedition {
	t.Helper()
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, plan.Item{Name: "A", Rank: 1, Hole: &hole}))
	for r, value := range rates {
		p.Ship.Rates[r] = simtest.Just(value)
	}
	return sailed(t, p, false)
}

var (
	fourPistonCores = plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: 33}}}
	threeXCBCores   = plan.Hole{DrillAheadTo: 100, Stages: []plan.Stage{{With: coring.XCB, To: 128.5}}}
	threeRCBCores   = plan.Hole{DrillAheadTo: 100, Stages: []plan.Stage{{With: coring.RCB, To: 128.5}}}
)

func TestEachTroubleCostsWhatAHandWorksOut(t *testing.T) {
	tests := []struct {
		name  string
		hole  plan.Hole
		rates map[rig.Rate]float64
		kind  activity.Kind
		cost  float64 // s
	}{
		{"every piston barrel fetched twice", fourPistonCores, map[rig.Rate]float64{rig.PistonTrouble: 1}, activity.FailedRetrieval, 4 * 2 * simtest.Hours},
		{"every liner bursts", fourPistonCores, map[rig.Rate]float64{rig.PistonTrouble: 1, rig.BlownLiner: 1}, activity.BlownLiner, 4 * 2 * simtest.Hours},
		{"every extended barrel fetched twice", threeXCBCores, map[rig.Rate]float64{rig.ExtendedTrouble: 1}, activity.FailedRetrieval, 3 * 2 * simtest.Hours},
		{"every rotary barrel fetched twice", threeRCBCores, map[rig.Rate]float64{rig.RotaryTrouble: 1}, activity.FailedRetrieval, 3 * 4 * simtest.Hours},
		{"pipe sticks at each of ten joints drilled and three cores", threeXCBCores, map[rig.Rate]float64{rig.StuckChance: 1e6}, activity.StuckPipe, 13 * 3 * simtest.Hours},
		{"pipe sticks at every piston core", fourPistonCores, map[rig.Rate]float64{rig.StuckChance: 1e6}, activity.StuckPipe, 4 * 3 * simtest.Hours},
		{"water in the first twelve shots", fourPistonCores, map[rig.Rate]float64{rig.WaterCore: 1}, activity.MudlineReset, 12 * 0.5 * simtest.Hours},
		{"a mudline missed as often", fourPistonCores, map[rig.Rate]float64{rig.MissedMudline: 1}, activity.MudlineReset, 12 * 0.5 * simtest.Hours},
	}
	for _, test := range tests {
		calm, troubled := forced(t, test.hole, nil), forced(t, test.hole, test.rates)
		if got := troubled.Spent[test.kind]; !simtest.Near(got, test.cost) {
			t.Errorf("%s: %.3f h of %v, by hand %.3f h", test.name, got/simtest.Hours, test.kind, test.cost/simtest.Hours)
		}
		extra := test.cost + troubled.Spent[activity.WaterCore]
		if got := troubled.Clock - calm.Clock; !simtest.Near(got, extra) {
			t.Errorf("%s: %.3f h longer in all, by hand %.3f h", test.name, got/simtest.Hours, extra/simtest.Hours)
		}
	}
}

func TestABurstLinerLosesItsCore(t *testing.T) {
	s := forced(t, fourPistonCores, map[rig.Rate]float64{rig.PistonTrouble: 1, rig.BlownLiner: 1})
	if s.Sites[0].Recovered != 0 || s.Sites[0].Cored != 33 {
		t.Errorf("%.1f m of %.1f m came up, want none of 33", s.Sites[0].Recovered, s.Sites[0].Cored)
	}
}

func TestTheLongestTenthOfBarrelTroubleIsAPartedLine(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 300)))
	p.Ship.Rates[rig.PistonTrouble] = simtest.Just(1)
	p.Ship.Rates[rig.PistonTroubleTime] = spread.Quantity{Shape: spread.Table{P: []float64{0.1, 0.5, 0.9, 0.99}, Value: []float64{simtest.Hours, 2 * simtest.Hours, 3 * simtest.Hours, 9 * simtest.Hours}}, Shares: spread.All(spread.Run)}
	parted, again := 0, 0
	v := simtest.Compiled(t, p)
	for n := range 40 {
		for _, e := range Diary(t.Context(), v, 4, n, false).Entries {
			switch e.Kind {
			case activity.PartedLine:
				parted++
				if e.To.Sub(e.From).Hours() < 3-1e-3 {
					t.Fatalf("a parted line cost %v", e.To.Sub(e.From))
				}
			case activity.FailedRetrieval:
				again++
			}
		}
	}
	if share := float64(parted) / float64(parted+again); share < 0.08 || share > 0.12 {
		t.Errorf("%.3f of %d troubles are parted lines", share, parted+again)
	}
}

// The share of burst liners is one of all troubles, the longest too.
func TestEveryLinerBurstsWhereAllDo(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 300)))
	p.Ship.Rates[rig.PistonTrouble], p.Ship.Rates[rig.BlownLiner] = simtest.Just(1), simtest.Just(1)
	p.Ship.Rates[rig.PistonTroubleTime] = simtest.Wide(2*simtest.Hours, 2)
	for n := range 5 {
		s := newExpedition(simtest.Compiled(t, p))
		s.begins(4, n)
		s.sails()
		if s.Spent[activity.PartedLine] > 0 || s.Spent[activity.FailedRetrieval] > 0 || s.Sites[0].Recovered > 0 {
			t.Errorf("replication %d: %.1f h of parted lines, %.1f h of fetching again, %.1f m recovered", n,
				s.Spent[activity.PartedLine]/simtest.Hours, s.Spent[activity.FailedRetrieval]/simtest.Hours, s.Sites[0].Recovered)
		}
	}
}

// The string sticks at the first joint of 10 m and is severed: 6 h, all pipe out, a new hole drilled down from the sea floor.
func TestALostStringMeansANewHoleDrilledDown(t *testing.T) {
	hole := threeXCBCores
	p := simtest.OneSite(plan.Item{Name: "A", Rank: 1, Hole: &hole})
	p.Ship.Rates[rig.StuckChance], p.Ship.Rates[rig.LostBHA] = simtest.Just(1e6), simtest.Just(1)
	s := inPort(t, p)
	goOnUntil(t, s, func() bool { return s.Consumed[statistics.Assemblies] > 0 })
	never := simtest.Just(0)
	s.Voyage.Quantities[rig.StuckChance] = never.Compile()
	goHome(t, s)
	if got := s.Spent[activity.SeverPipe] / simtest.Hours; !simtest.Near(got, 6) {
		t.Errorf("severed for %.1f h, by hand 6 h", got)
	}
	if log := s.Items[0]; log.Holes != 2 || log.Incomplete || s.Consumed[statistics.Assemblies] != 1 {
		t.Errorf("%d holes, incomplete %v, %d assemblies lost", log.Holes, log.Incomplete, s.Consumed[statistics.Assemblies])
	}
	if drilled := s.Spent[activity.DrillAhead] / simtest.Hours; !simtest.Near(drilled, 110.0/40) {
		t.Errorf("%.3f h of drilling ahead, by hand 10 m and 100 m at 40 m/h", drilled)
	}
}

// By hand: 300 m of open hole are twice the usual, four days the square of twice the usual day, and sand that hangs above the
// ooze at the bottom is what counts, at six times mud: 6 x 2 x 2. A layer that is not yet drilled does not count.
func TestLooseGroundOpenMetresAndHoursMakePipeStick(t *testing.T) {
	layers := []ground.Layer{{Bottom: 100}, {Bottom: 350}, {Bottom: 400}}
	p := simtest.OneSite(simtest.RotaryHole("A", 400))
	for i, sticking := range []float64{6, 0.5, 20} {
		layers[i].Lithology = simtest.Mud()
		layers[i].Lithology.Sticking = simtest.Just(sticking)
	}
	p.Sites[0].Layers = layers
	s := sailedTo(t, p)
	s.Hole.Depth, s.Hole.OpenedAt = 300, s.Clock-4*simtest.Day
	if got := s.Stickiness(); !simtest.Near(got, 24) {
		t.Errorf("%.3f times the usual chance, by hand 24", got)
	}
	s.Hole.Depth = 375
	if got := s.Stickiness(); !simtest.Near(got, 20*2.5*2) {
		t.Errorf("%.3f times the usual chance in the third layer, by hand 100", got)
	}
	s.Hole.OpenedAt = s.Clock
	if got := s.Stickiness(); got != 0 {
		t.Errorf("%.3f times the usual chance in a hole just opened", got)
	}
}

// The first bridge is cleaned out: the tools go down 1,580 m of pipe and half of the open hole and back at 1 m/s, 1 h to rig down, pipe to the
// bottom at 280 m and back to 80 m at 10 stands of 30 m an hour, 2 h of cleaning, 2 h to rig up again. Where bridges are certain the
// next one leaves half of the 200 m of open hole out of reach: 100 m less at 1 m/s down and at 300 m/h up.
func TestABridgeIsCleanedOutAndTheNextShortensTheRun(t *testing.T) {
	logged := plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: 280}}, Logging: []int{0}}
	free, bridged := forced(t, logged, nil), forced(t, logged, map[rig.Rate]float64{rig.Bridge: 1})
	tools := 2 * (1580 + 100.0)
	shorter := 100.0 + 100.0/300*simtest.Hours
	if got := bridged.Spent[activity.RunString] - free.Spent[activity.RunString]; !simtest.Near(got, tools-shorter) {
		t.Errorf("tools are in the hole for %.3f h more, by hand %.3f h", got/simtest.Hours, (tools-shorter)/simtest.Hours)
	}
	cleaning := tools - shorter + 1*simtest.Hours + 2*200.0/30/10*simtest.Hours + 2*simtest.Hours + 2*simtest.Hours
	if got := bridged.Clock - free.Clock; !simtest.Near(got, cleaning) {
		t.Errorf("a bridge costs %.3f h, by hand %.3f h", got/simtest.Hours, cleaning/simtest.Hours)
	}
}

// Nothing falls in where the ground does not: the chance of a bridge is that in mud times the worst layer's.
func TestGroundThatStandsHasNoBridges(t *testing.T) {
	p := simtest.OneSite(plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: 280}}, Logging: []int{0}}})
	p.Ship.Rates[rig.Bridge] = simtest.Just(1)
	p.Sites[0].Layers[0].Lithology.Sticking = simtest.Just(0)
	if s := sailed(t, p, false); s.Spent[activity.ConditionHole] != 2*simtest.Hours {
		t.Errorf("%.1f h of cleaning, want the 2 h before logging", s.Spent[activity.ConditionHole]/simtest.Hours)
	}
}

func TestWithTroubleOffNothingGoesWrong(t *testing.T) {
	p := simtest.Uncertain()
	p.NoTrouble = true
	r := replicated(t, p, 50, 2)
	for _, kind := range []activity.Cause{activity.OfTrouble, activity.OfBreakdowns} {
		for _, x := range r.Column(r.Unconstrained, statistics.ColCause+int(kind)) {
			if x != 0 {
				t.Fatalf("%.1f h of %v", x/simtest.Hours, kind)
			}
		}
	}
}
