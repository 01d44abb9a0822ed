package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// forced is a site with one hole in which some rates are certain, sailed once with its diary.
func forced(t *testing.T, hole plan.Hole, rates map[rig.Rate]float64) *ship {
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
		{"pipe sticks at every rotated core", threeXCBCores, map[rig.Rate]float64{rig.StuckChance: 1}, activity.StuckPipe, 3 * 3 * simtest.Hours},
		{"water in the first twelve shots", fourPistonCores, map[rig.Rate]float64{rig.WaterCore: 1}, activity.MudlineReset, 12 * 0.5 * simtest.Hours},
		{"a mudline missed as often", fourPistonCores, map[rig.Rate]float64{rig.MissedMudline: 1}, activity.MudlineReset, 12 * 0.5 * simtest.Hours},
	}
	for _, test := range tests {
		calm, troubled := forced(t, test.hole, nil), forced(t, test.hole, test.rates)
		if got := troubled.spent[test.kind]; !simtest.Near(got, test.cost) {
			t.Errorf("%s: %.3f h of %v, by hand %.3f h", test.name, got/simtest.Hours, test.kind, test.cost/simtest.Hours)
		}
		extra := test.cost + troubled.spent[activity.WaterCore]
		if got := troubled.clock - calm.clock; !simtest.Near(got, extra) {
			t.Errorf("%s: %.3f h longer in all, by hand %.3f h", test.name, got/simtest.Hours, extra/simtest.Hours)
		}
	}
}

func TestABurstLinerLosesItsCore(t *testing.T) {
	s := forced(t, fourPistonCores, map[rig.Rate]float64{rig.PistonTrouble: 1, rig.BlownLiner: 1})
	if s.sites[0].recovered != 0 || s.sites[0].cored != 33 {
		t.Errorf("%.1f m of %.1f m came up, want none of 33", s.sites[0].recovered, s.sites[0].cored)
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
		s := newShip(simtest.Compiled(t, p))
		s.begins(4, n)
		s.sails()
		if s.spent[activity.PartedLine] > 0 || s.spent[activity.FailedRetrieval] > 0 || s.sites[0].recovered > 0 {
			t.Errorf("replication %d: %.1f h of parted lines, %.1f h of fetching again, %.1f m recovered", n,
				s.spent[activity.PartedLine]/simtest.Hours, s.spent[activity.FailedRetrieval]/simtest.Hours, s.sites[0].recovered)
		}
	}
}

// The string is severed at each of the three cores: 3 h stuck, 6 h severing, all pipe out, and a new
// hole drilled down to where the last one ended, except after the third, when nothing is left to do.
func TestALostStringMeansANewHoleDrilledDown(t *testing.T) {
	s := forced(t, threeXCBCores, map[rig.Rate]float64{rig.StuckChance: 1, rig.LostBHA: 1})
	if got, want := s.spent[activity.SeverPipe], 3*6*simtest.Hours; !simtest.Near(got, want) {
		t.Errorf("severed for %.1f h, by hand %.1f h", got/simtest.Hours, want/simtest.Hours)
	}
	log := s.items[0]
	if log.holes != 3 || log.incomplete {
		t.Errorf("%d holes, incomplete %v", log.holes, log.incomplete)
	}
	if s.consumed[statistics.Assemblies] != 3 {
		t.Errorf("%d assemblies lost", s.consumed[statistics.Assemblies])
	}
}

func TestABridgeShortensTheLoggingRun(t *testing.T) {
	logged := plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: 280}}, Logging: []int{0}}
	free, bridged := forced(t, logged, nil), forced(t, logged, map[rig.Rate]float64{rig.Bridge: 1})
	// Half of the 200 m of open hole: 100 m less at 1 m/s down and at 300 m/h up.
	want := 100.0 + 100.0/300*simtest.Hours
	if got := free.spent[activity.RunString] - bridged.spent[activity.RunString]; !simtest.Near(got, want) {
		t.Errorf("the run is %.3f h shorter, by hand %.3f h", got/simtest.Hours, want/simtest.Hours)
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
