package sim

import (
	"testing"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/stat"

	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/unit"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// repeated is a height for so many hours.
func repeated(height float64, hours int) []float64 {
	all := make([]float64, hours)
	for i := range all {
		all[i] = height
	}
	return all
}

// inOpenHole is a ship with the bit at the bottom of a hole of a depth, in a sea given hour by hour.
func inOpenHole(t *testing.T, depth float64, heights ...float64) *expedition {
	t.Helper()
	s := stormy(t, heights...)
	s.Hole.Open, s.Hole.Depth, s.Bit, s.BHA = true, depth, 1500+depth, 1
	s.Item.Hole.Stages[0].To = unit.Depth(depth + 100)
	s.Voyage.Forecast = sea.Forecast{Horizon: 48 * unit.Hour, Skill: 1}
	return s
}

func TestWorkGoesOnOnlyInASeaWellBelowTheLimitThatStoppedIt(t *testing.T) {
	// Logging stops at 3 m and goes on below 90 % of it, 2.7 m.
	s := stormy(t, 3.5, 2.9, 2.9, 2.6)
	s.Voyage.Quantities[rig.ResumeAt] = simtest.Just(0.9).Compile()
	s.Do(activity.RigUpLogging, 1*simtest.Hours)
	if got := s.Spent[activity.WaitOnWeather]; !simtest.Near(got, 3*simtest.Hours) {
		t.Errorf("waited %.1f h, want 3", got/simtest.Hours)
	}
}

// From 500 m the bit goes up to 80 m while the sea is at 7 m, then clears the sea floor at 9 m, then all
// pipe is recovered at 11 m; she secures, rides it out, takes station and runs back to find her hole lost.
func TestEachRungOfTheLadderIsTakenAtItsCost(t *testing.T) {
	heights := append([]float64{1}, repeated(7, 30)...)
	heights = append(heights, repeated(9, 30)...)
	heights = append(heights, repeated(11, 30)...)
	s := inOpenHole(t, 500, append(heights, 1)...)
	s.Do(activity.ConditionHole, 2*simtest.Hours)
	hung := 420.0 / 300 * simtest.Hours
	if s.Ended != ship.StormClear || !simtest.Near(s.Spent[activity.PullPipe], hung) || s.Bit != 1580 {
		t.Fatalf("ending %d, %.2f h of pulling, bit at %g m; want the sea floor to be cleared, %.2f h, 1580 m", s.Ended, s.Spent[activity.PullPipe]/simtest.Hours, s.Bit, hung/simtest.Hours)
	}
	s.MakeSafe()
	cleared := hung + 80.0/300*simtest.Hours + 30.0/600*simtest.Hours
	if !simtest.Near(s.Spent[activity.PullPipe], cleared) || s.Bit != 1470 {
		t.Fatalf("%.2f h of pulling, bit at %g m; want %.2f h and 1470 m", s.Spent[activity.PullPipe]/simtest.Hours, s.Bit, cleared/simtest.Hours)
	}
	s.Do(activity.OffsetMove, 1*simtest.Hours)
	if s.Ended != ship.StormPipe {
		t.Fatalf("ending %d, want all pipe to be recovered", s.Ended)
	}
	s.MakeSafe()
	all := cleared + 1470.0/600*simtest.Hours
	if !simtest.Near(s.Spent[activity.PullPipe], all) || s.Bit != 0 || s.BHA != 0 || s.Positioned || !simtest.Near(s.Spent[activity.Secure], 0.5*simtest.Hours) {
		t.Fatalf("%.2f h of pulling, bit at %g m, on station %v; want %.2f h, 0 m, riding it out", s.Spent[activity.PullPipe]/simtest.Hours, s.Bit, s.Positioned, all/simtest.Hours)
	}
	var names []string
	for range 8 {
		r := s.nextStep()
		names = append(names, r.name)
		r.do(s)
	}
	want := []string{"take station", "make up the BHA", "run pipe to the sea floor", "find the hole again", "give up a lost hole", "spud", "drill down"}
	for i := range want {
		if names[i] != want[i] {
			t.Fatalf("the way back was %q, want %q", names, want)
		}
	}
	if s.Hole.Depth < 500 {
		t.Errorf("back at %g m, want 500 m", s.Hole.Depth)
	}
}

func TestAFunnelIsDroppedBeforeAStormThatTheForecastHas(t *testing.T) {
	storm := append([]float64{1, 7, 7, 7, 7, 7, 7}, repeated(9, 12)...)
	s := inOpenHole(t, 500, append(storm, 1)...)
	s.Item.Hole.Reentry = plan.Funnel
	s.Do(activity.ConditionHole, 2*simtest.Hours)
	if !s.Hole.Funnel || !simtest.Near(s.Spent[activity.DropFunnel], 2*simtest.Hours) {
		t.Errorf("funnel %v after %.1f h, want one after 2 h", s.Hole.Funnel, s.Spent[activity.DropFunnel]/simtest.Hours)
	}
	shallow := inOpenHole(t, 20, append(storm, 1)...)
	shallow.Item.Hole.Reentry = plan.Funnel
	shallow.Do(activity.ConditionHole, 2*simtest.Hours)
	if shallow.Hole.Funnel {
		t.Error("a funnel was dropped for a hole that is drilled down again in half an hour")
	}
}

// warned is an expedition in a sea that often asks for the bit to leave its hole, which has a funnel when
// the crew is warned.
func warned(skill float64) *plan.Plan {
	p := simtest.Uncertain()
	for i := range p.Sites {
		for m := range p.Sites[i].Climate.Mean {
			p.Sites[i].Climate.Mean[m], p.Sites[i].Climate.Variation[m] = 3.6, 0.5
		}
		for j := range p.Sites[i].Items {
			p.Sites[i].Items[j].Hole.Reentry = plan.Funnel
		}
	}
	p.NoTrouble = true
	p.Ship.Rates[rig.ForecastSkill] = simtest.Just(skill)
	return p
}

func TestABetterForecastNeverLosesMoreHolesOnAverage(t *testing.T) {
	const n = 400
	lost := func(skill float64) []float64 {
		v := simtest.Compiled(t, warned(skill))
		var all []float64
		s := newExpedition(v)
		for i := range n {
			s.begins(8, i)
			s.sails()
			sum := 0
			for _, item := range s.Items {
				sum += item.Attempts
			}
			all = append(all, float64(sum))
		}
		return all
	}
	none, good := lost(0), lost(0.95)
	difference := floats.SubTo(make([]float64, len(none)), none, good)
	mean, sd := stat.MeanStdDev(difference, nil)
	se := stat.StdErr(sd, n)
	t.Logf("holes lost: %.2f without a forecast, %.2f with a good one; difference %.2f ± %.2f", stat.Mean(none, nil), stat.Mean(good, nil), mean, se)
	if mean < -2*se {
		t.Errorf("a good forecast loses %.2f ± %.2f more holes", -mean, se)
	}
	if stat.Mean(none, nil) < 0.2 {
		t.Error("hardly a hole is lost: the test shows nothing")
	}
}

func TestASiteThatClosesIsLeftAloneUntilItOpens(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", simtest.TwoSites().Sites[0].Position, 1500, simtest.PistonHole("A", 300)))
	p.Sites[0].Unusable = plan.Unusable{Because: "ice", Every: simtest.Just(10 * simtest.Hours), Lasts: simtest.Just(20 * simtest.Hours)}
	v := simtest.Compiled(t, p)
	closed := 0
	for n := range 50 {
		s := newExpedition(v)
		s.begins(2, n)
		s.sails()
		if s.Stuck {
			t.Fatalf("replication %d never ended", n)
		}
		if s.Sites[0].Closings > 1 {
			closed++
			if s.Spent[activity.WaitOnWeather] < 1*simtest.Hours {
				t.Errorf("replication %d: closed %d times and waited %.1f h", n, s.Sites[0].Closings-1, s.Spent[activity.WaitOnWeather]/simtest.Hours)
			}
		}
	}
	if closed < 40 {
		t.Errorf("closed in %d of 50 expeditions", closed)
	}
}

// The sea of 7 m that stops the work for three hours makes the crew look 24 h ahead, in steps of 3 h: for 9 m,
// which would drive the bit out of the hole, they drop the funnel, but not for what comes later.
func TestAStormIsPreparedForADayAhead(t *testing.T) {
	for begins, drops := range map[int]bool{12: true, 24: true, 30: false, 45: false} {
		heights := append(repeated(7, 3), repeated(1, begins-3)...)
		s := inOpenHole(t, 500, append(heights, append(repeated(9, 6), 1)...)...)
		s.Item.Hole.Reentry = plan.Funnel
		s.Do(activity.ConditionHole, 1*simtest.Hours)
		if s.Hole.Funnel != drops {
			t.Errorf("a storm %d h ahead: funnel %v", begins, s.Hole.Funnel)
		}
	}
}
