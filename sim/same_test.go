package sim

import (
	"context"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// replicated sails an expedition many times.
func replicated(t testing.TB, p *plan.Plan, replications, workers int) *statistics.Results {
	return Replicate(context.Background(), simtest.Compiled(t, p), Run{Seed: 3, Replications: replications, Workers: workers})
}

func TestClassesAddUpToTheTotalInEveryReplication(t *testing.T) {
	r := replicated(t, simtest.Uncertain(), 300, 2)
	for _, rows := range [][]float64{r.Unconstrained, r.Constrained} {
		for n := range r.Done {
			row := rows[n*r.Layout.Width : (n+1)*r.Layout.Width]
			var classes, causes float64
			for _, x := range row[statistics.ColClass:statistics.ColCause] {
				classes += x
			}
			for _, x := range row[statistics.ColCause:statistics.ColTool] {
				causes += x
			}
			if math.Abs(classes-row[statistics.ColDays]) > 1e-3 || math.Abs(causes-row[statistics.ColDays]) > 1e-3 {
				t.Fatalf("replication %d: classes add up to %f s, causes to %f s, the total is %f s", n, classes, causes, row[statistics.ColDays])
			}
		}
	}
}

func TestAnyNumberOfWorkersGivesTheSameSummary(t *testing.T) {
	one := replicated(t, simtest.Uncertain(), 200, 1).Summary()
	for _, workers := range []int{2, 7} {
		if diff := cmp.Diff(one, replicated(t, simtest.Uncertain(), 200, workers).Summary(), cmpopts.EquateNaNs()); diff != "" {
			t.Errorf("%d workers (-one +many):\n%s", workers, diff)
		}
	}
}

// What the crew finds at a site is the same in whatever order they come there; the sea differs, as
// the dates do, so there is none here.
func TestASiteMeetsTheSameGroundInAnotherOrder(t *testing.T) {
	calm := func(order ...int) *statistics.Results {
		p := simtest.Uncertain(order...)
		for i := range p.Sites {
			p.Sites[i].Climate = simtest.Flat()
		}
		p.Ship.Rates[rig.BreakdownEvery] = simtest.Just(0)
		return replicated(t, p, 100, 2)
	}
	there, back := calm(0, 1, 2, 3), calm(2, 1, 0, 3)
	for n := range there.Done {
		for site := range 3 {
			for _, column := range []int{statistics.SiteCored, statistics.SiteRecovered, statistics.SiteCores, statistics.SiteCovered} {
				c := there.Layout.Site(site, column) + n*there.Layout.Width
				if a, b := there.Unconstrained[c], back.Unconstrained[c]; a != b {
					t.Fatalf("replication %d, site %d, column %d: %g in one order, %g in the other", n, site, column, a, b)
				}
			}
		}
	}
}

// So do ice and breakdowns, counted from when the ship comes there: each site takes the same days, whether
// it is the first or the third, and closes and breaks down as often. An hour is left for the times of
// aDay at which forecasts come, by which the crew hangs off.
func TestASiteClosesAndTheRigBreaksDownThereAlikeInAnotherOrder(t *testing.T) {
	visit := func(order ...int) *expedition {
		p := simtest.Uncertain(order...)
		for i := range p.Sites {
			p.Sites[i].Climate = simtest.Flat()
			p.Sites[i].Items = p.Sites[i].Items[:2] // daylight for the seismic string hangs on the date
			p.Sites[i].Unusable = plan.Unusable{Because: "ice", Every: simtest.Wide(60*simtest.Hours, 1.5), Lasts: simtest.Wide(20*simtest.Hours, 1.5)}
		}
		breaking(p, 3*24, 8)
		p.Ship.Rates[rig.RepairTime] = simtest.Wide(8*simtest.Hours, 2)
		s := newExpedition(simtest.Compiled(t, p))
		return s
	}
	there, back := visit(0, 1, 2, 3), visit(2, 1, 0, 3)
	for n := range 20 {
		for _, s := range []*expedition{there, back} {
			s.begins(9, n)
			s.sails()
		}
		for i := range 3 {
			a, b := &there.Sites[i], &back.Sites[i]
			if days, other := a.Left-a.Arrived, b.Left-b.Arrived; math.Abs(days-other) > simtest.Hours || a.Closings != b.Closings || a.Breakdowns != b.Breakdowns {
				t.Errorf("replication %d, site %d: %.3f d, %d closings, %d breakdowns; in another order %.3f d, %d, %d", n, i,
					days/simtest.Day, a.Closings, a.Breakdowns, other/simtest.Day, b.Closings, b.Breakdowns)
			}
		}
	}
}

// A fork is an optimisation: the free ship sails as if she had sailed alone from the start.
func TestAForkedShipSailsAsOneThatWasNeverBound(t *testing.T) {
	p := simtest.Uncertain()
	r := replicated(t, p, 100, 2)
	v := simtest.Compiled(t, p)
	forked := 0
	for n := range r.Done {
		alone := newExpedition(v)
		alone.begins(3, n)
		alone.sails()
		if got := r.Unconstrained[n*r.Layout.Width+statistics.ColDays]; got != alone.Clock {
			t.Fatalf("replication %d: %g s forked, %g s alone", n, got, alone.Clock)
		}
		if r.Constrained[n*r.Layout.Width+statistics.ColDays] != alone.Clock {
			forked++
		}
	}
	if forked < 10 {
		t.Errorf("only %d of 100 expeditions met a rule; the test shows little", forked)
	}
}

func TestExpeditionsWithoutWeatherAndTroubleReachPortInTime(t *testing.T) {
	p := simtest.Uncertain()
	p.SeaDays = 18 * unit.Day
	for i := range p.Sites {
		p.Sites[i].Climate = simtest.Flat()
	}
	for _, r := range []rig.Rate{rig.BreakdownEvery, rig.PistonTrouble, rig.RotaryTrouble, rig.StuckChance, rig.Bridge} {
		p.Ship.Rates[r] = simtest.Just(0)
	}
	s := replicated(t, p, 300, 2).Summary()
	if s.Allotted.Late > 0 {
		t.Errorf("%.3f of the expeditions are late", s.Allotted.Late)
	}
	if s.Allotted.ChanceAll > 0.9 {
		t.Errorf("%.3f of the expeditions do everything: too few meet the end of their days", s.Allotted.ChanceAll)
	}
}

func BenchmarkReplication(b *testing.B) {
	worker := NewSailor(b.Context(), simtest.Compiled(b, simtest.Uncertain()))
	n := 0
	b.ReportAllocs()
	for b.Loop() {
		worker.Sail(uint64(n), 0)
		n++
	}
}
