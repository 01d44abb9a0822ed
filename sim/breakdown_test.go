package sim

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// aTask is an expedition to one site for a task.
func aTask(task plan.Task) *plan.Plan {
	return simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, plan.Item{Name: "task", Rank: 1, Task: &task}))
}

// breaking is a plan whose rig breaks down after so many hours on station on average, for so many.
func breaking(p *plan.Plan, every, repair float64) *plan.Plan {
	p.Ship.Rates[rig.BreakdownEvery], p.Ship.Rates[rig.RepairTime] = simtest.Just(every*simtest.Hours), simtest.Just(repair*simtest.Hours)
	return p
}

// The estimate of a plan is the sum that a hand does, however often the rig breaks down (see
// TestDaysOfOneHoleAreTheSumDoneByHand).
func TestTheCrewReckonsWithoutBreakdowns(t *testing.T) {
	want := sailed(t, simtest.OneSite(simtest.PistonHole("A", 33)), false).Clock
	for every := range 60 {
		v := simtest.Compiled(t, breaking(simtest.OneSite(simtest.PistonHole("A", 33)), float64(every), 8))
		if got := float64(Estimate(v).Total); !simtest.Near(got, want) {
			t.Errorf("a breakdown every %d h: the estimate is %.2f h, by hand %.2f h", every, got/simtest.Hours, want/simtest.Hours)
		}
		if item := EstimateByCrew(v).Item[0] / ship.Contingency; item > want {
			t.Errorf("a breakdown every %d h: the crew estimates %.2f h for the hole", every, item/simtest.Hours)
		}
	}
}

// A hundred days of work with a breakdown every four: their number is that of a Poisson process, of mean and
// variance 25 (and 0.26, an hour of positioning and securing and 24 more for 4 h between them). It
// does not hang on how long the repairs are.
func TestBreakdownsComeByTheHoursThatTheRigWorks(t *testing.T) {
	const n = 400
	repairs := func(repair float64) (numbers []float64) {
		v := simtest.Compiled(t, breaking(aTask(plan.Task{Steps: []plan.Step{{Takes: simtest.Just(100 * 24 * simtest.Hours), Interruptible: true}}}), 4*24, repair))
		s := newExpedition(v)
		for i := range n {
			s.begins(6, i)
			s.sails()
			numbers = append(numbers, math.Round(s.Spent[activity.Breakdown]/(repair*simtest.Hours)))
		}
		return numbers
	}
	short, long := repairs(1), repairs(200)
	for i := range short {
		if short[i] != long[i] {
			t.Fatalf("replication %d: %g breakdowns with repairs of 1 h, %g with repairs of 200 h", i, short[i], long[i])
		}
	}
	want := (100*24 + 1) / (4 * 24.0)
	mean, variance := stat.MeanVariance(short, nil)
	if se := math.Sqrt(want / n); math.Abs(mean-want) > 4*se {
		t.Errorf("%.2f breakdowns on average, closed form %.2f, standard error %.2f", mean, want, se)
	}
	if se := want * math.Sqrt(2.0/n); math.Abs(variance-want) > 4*se { // of a variance of n normal numbers
		t.Errorf("variance %.1f, closed form %.1f, standard error %.1f", variance, want, se)
	}
}

// Each hour of work is followed by a repair of fifteen days: the programme is given up at 20 times its
// days, and the ship that must be home goes home.
func TestRepairsLongerThanTheTimeBetweenThemEnd(t *testing.T) {
	hole := simtest.RotaryHole("A", 400)
	hole.Hole.Logging = []int{0}
	p := breaking(simtest.OneSite(hole), 1, 15*24)
	free, bound := sailed(t, p, false), sailed(t, p, true)
	if late := free.Clock - free.Longest(); !free.Stuck || late < 0 || late > 16*simtest.Day {
		t.Errorf("given up %v, %.1f d after 20 times the days", free.Stuck, late/simtest.Day)
	}
	if !bound.Home || bound.Items[0].Depth > 0 {
		t.Errorf("home %v after %.1f d from a hole of %g m", bound.Home, bound.Clock/simtest.Day, bound.Items[0].Depth)
	}
}

// Sixteen hours without a breakdown are e^16 times less likely than not where one comes each hour on
// average: what begins again after each would take a thousand years.
func TestWorkThatBeginsAgainAfterEachBreakdownIsGivenUp(t *testing.T) {
	p := breaking(aTask(plan.Task{Steps: []plan.Step{{Takes: simtest.Just(16 * simtest.Hours), Ruined: true}}}), 1, 1)
	p.SeaDays = 60 * unit.Day
	free, bound := sailed(t, p, false), sailed(t, p, true)
	if late := free.Clock - free.Longest(); !free.Stuck || late < 0 || late > simtest.Day {
		t.Errorf("given up %v, %.1f d after 20 times the days", free.Stuck, late/simtest.Day)
	}
	if !bound.Home || bound.Clock > bound.Voyage.Deadline+6*simtest.Hours || !bound.Items[0].Incomplete {
		t.Errorf("home %v after %.1f d, task incomplete %v", bound.Home, bound.Clock/simtest.Day, bound.Items[0].Incomplete)
	}
}
