package hindcast_test

import (
	"context"
	"slices"
	"testing"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/hindcast"
	"coredays/sim/simtest"
)

// oneVisit is a plan of one piston hole of 33 m in 1500 m of water.
func oneVisit() *plan.Plan {
	return simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 33)))
}

func TestAVisitThatIsStoppedIsDropped(t *testing.T) {
	v := simtest.Compiled(t, simtest.Endless()["waiting"])
	voyages, legs, run := []*voyage.Voyage{v, v}, []string{"a", "b"}, sim.Run{Replications: 40, Workers: 2}
	simtest.EndsSoon(t, "a hindcast", func(ctx context.Context) {
		if !hindcast.Sail(ctx, voyages, legs, run).Stopped {
			t.Error("what was stopped is taken for whole")
		}
	})
	simtest.EndsSoon(t, "cores", func(ctx context.Context) {
		if hindcast.SailCores(ctx, voyages, legs, run) != nil {
			t.Error("what was stopped is taken for whole")
		}
	})
}

func TestAHindcastIsTheSameForAnyNumberOfWorkers(t *testing.T) {
	p := oneVisit()
	p.Ship.Rates[rig.Tripping] = spread.Quantity{Shape: spread.Table{P: []float64{0.1, 0.9}, Value: []float64{18 / simtest.Hours, 24 / simtest.Hours}}, Shares: spread.All(spread.Expedition)}
	voyages := []*voyage.Voyage{simtest.Compiled(t, p), simtest.Compiled(t, p), simtest.Compiled(t, p)}
	groups := []string{"a", "b", "a"}
	one := hindcast.Sail(context.Background(), voyages, groups, sim.Run{Seed: 7, Replications: 50, Workers: 1})
	for _, workers := range []int{2, 7} {
		many := hindcast.Sail(context.Background(), voyages, groups, sim.Run{Seed: 7, Replications: 50, Workers: workers})
		for i := range voyages {
			if !slices.Equal(one.OnSite[i], many.OnSite[i]) {
				t.Errorf("voyage %d differs for %d workers", i, workers)
			}
		}
	}
	if !slices.Equal(one.OnSite[0], one.OnSite[2]) || slices.Equal(one.OnSite[0], one.OnSite[1]) {
		t.Error("sites of one leg share their random stream, those of another have their own")
	}
}

func TestAHindcastThatIsStoppedSaysSo(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	if v := hindcast.Sail(ctx, []*voyage.Voyage{simtest.Compiled(t, oneVisit())}, []string{"a"}, sim.Run{}); !v.Stopped || v.OnSite != nil {
		t.Errorf("%+v", v)
	}
}

func TestCoresOfAHindcastAreThoseThatCameUp(t *testing.T) {
	cores := hindcast.SailCores(context.Background(), []*voyage.Voyage{simtest.Compiled(t, oneVisit())}, []string{"a"}, sim.Run{Replications: 2})
	if len(cores) != 1 || len(cores[0]) != 2 || len(cores[0][0]) != 4 {
		t.Fatalf("%v", cores)
	}
	var cored, last float64
	for _, c := range cores[0][0] {
		if c.OnDeck <= last || c.Hole != "A" || c.Tool != coring.APC {
			t.Errorf("core %+v after %g s", c, last)
		}
		cored, last = cored+c.Cored, c.OnDeck
	}
	if !simtest.Near(cored, 33) {
		t.Errorf("%g m cored, want 33", cored)
	}
}

// Metres and cores of a visit of 33 m of mud, of which all is recovered: four cores by hand, 33 m.
func TestAVisitCountsItsMetresAndCores(t *testing.T) {
	visits := hindcast.Sail(t.Context(), []*voyage.Voyage{simtest.Compiled(t, oneVisit())}, []string{"a"}, sim.Run{Replications: 3})
	for n := range 3 {
		if got := visits.Cores[0][n]; got != 4 {
			t.Errorf("%g cores, want 4", got)
		}
		if got := visits.Recovered[0][n]; !simtest.Near(got, 33) {
			t.Errorf("%g m recovered, want 33", got)
		}
	}
}

// recoveringAt is a visit to a site of a name whose recovery is drawn at a level.
func recoveringAt(t *testing.T, name string, level spread.Level) *voyage.Voyage {
	t.Helper()
	p := simtest.Expedition(simtest.Site(name, geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 33)))
	p.Sites[0].Layers[0].Lithology.Recovery[coring.APC] = spread.Quantity{Shape: spread.Table{P: []float64{0.1, 0.9}, Value: []float64{0.4, 0.9}}, Shares: spread.All(level)}
	return simtest.Compiled(t, p)
}

// Two sites of a leg share what is drawn for the expedition and nothing that is drawn for a site; those of
// two legs share neither.
func TestSitesOfALegShareTheExpeditionAlone(t *testing.T) {
	recovered := func(level spread.Level) [][]float64 {
		voyages := []*voyage.Voyage{recoveringAt(t, "one", level), recoveringAt(t, "two", level), recoveringAt(t, "two", level)}
		return hindcast.Sail(t.Context(), voyages, []string{"a", "a", "b"}, sim.Run{Seed: 3, Replications: 20}).Recovered
	}
	common, apart := recovered(spread.Expedition), recovered(spread.Site)
	if !slices.Equal(common[0], common[1]) || slices.Equal(common[1], common[2]) {
		t.Error("a level drawn for the expedition is common to the sites of a leg, and to them alone")
	}
	for n := range apart[0] {
		if apart[0][n] == apart[1][n] {
			t.Errorf("replication %d: a level drawn for the site is %g m at both sites of a leg", n, apart[0][n])
		}
	}
}
