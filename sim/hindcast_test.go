package sim

import (
	"context"
	"math"
	"slices"
	"testing"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// visited sails one visit of a plan's first site and gives the ship.
func visited(t *testing.T, p *plan.Plan) *ship {
	t.Helper()
	s := newShip(compiled(t, p))
	s.begins(1, 0)
	s.visits()
	return s
}

// oneVisit is a plan of one piston hole of 33 m in 1500 m of water.
func oneVisit() *plan.Plan {
	return expedition(site("S", geo.Position{Longitude: 1}, 1500, pistonHole("A", 33)))
}

func TestAVisitBeginsOverTheHoleAndEndsWithThePipeOnDeck(t *testing.T) {
	p := oneVisit()
	whole, visit := sailed(t, p, false), visited(t, p)
	leg := float64(geo.Distance(geo.Position{}, geo.Position{Longitude: 1})) / 5
	outside := 2*(2*hours+leg) + 30*minutes // pilotage and passage there and back, securing for sea
	if !near(visit.clock, whole.clock-outside) {
		t.Errorf("the visit took %.3f h, the expedition %.3f h, of which %.3f h are not at the site", visit.clock/hours, whole.clock/hours, outside/hours)
	}
}

func TestAStartGivenUpCostsItsTime(t *testing.T) {
	p := oneVisit()
	even := visited(t, p).clock
	p.Ship.Rates[rig.FailedStart], p.Ship.Rates[rig.FailedStartTime] = spread.Just(1), spread.Just(3*hours)
	if got := visited(t, p).clock - even; !near(got, mostFailedStarts*3*hours) {
		t.Errorf("starts that always fail cost %.3f h, want %d times 3 h", got/hours, mostFailedStarts)
	}
}

// A start fails so often as it is said: of 4000 holes, within three standard errors.
func TestStartsFailAsOftenAsIsSaid(t *testing.T) {
	p := oneVisit()
	p.Ship.Rates[rig.FailedStart], p.Ship.Rates[rig.FailedStartTime] = spread.Just(0.13), spread.Just(3*hours)
	visits := Hindcast(context.Background(), []*voyage.Voyage{compiled(t, p)}, []string{"leg"}, Run{Replications: 4000})
	even := visited(t, oneVisit()).clock
	var failed float64
	for _, d := range visits.Days[0] {
		failed += (d - even) / (3 * hours)
	}
	want, spread := 0.13/0.87, math.Sqrt(0.13)/0.87 // mean and deviation of a geometric count
	if got := failed / 4000; math.Abs(got-want) > 3*spread/math.Sqrt(4000) {
		t.Errorf("%.4f starts fail for each hole, want %.4f", got, want)
	}
}

func TestAKnownLengthOfCoresMakesTheirNumber(t *testing.T) {
	p := oneVisit()
	p.Sites[0].Items[0].Hole.Stages[0].Advance = 3.3
	if got := visited(t, p).tools[coring.APC].cores; got != 10 {
		t.Errorf("%d cores of 3.3 m in 33 m, want 10", got)
	}
}

func TestAHindcastIsTheSameForAnyNumberOfWorkers(t *testing.T) {
	p := oneVisit()
	p.Ship.Rates[rig.Tripping] = spread.Quantity{Shape: spread.Table{P: []float64{0.1, 0.9}, Value: []float64{18 / hours, 24 / hours}}, Shares: spread.All(spread.Expedition)}
	voyages := []*voyage.Voyage{compiled(t, p), compiled(t, p), compiled(t, p)}
	groups := []string{"a", "b", "a"}
	one := Hindcast(context.Background(), voyages, groups, Run{Seed: 7, Replications: 50, Workers: 1})
	for _, workers := range []int{2, 7} {
		many := Hindcast(context.Background(), voyages, groups, Run{Seed: 7, Replications: 50, Workers: workers})
		for i := range voyages {
			if !slices.Equal(one.Days[i], many.Days[i]) {
				t.Errorf("voyage %d differs for %d workers", i, workers)
			}
		}
	}
	if !slices.Equal(one.Days[0], one.Days[2]) || slices.Equal(one.Days[0], one.Days[1]) {
		t.Error("sites of one leg share its luck, those of another have their own")
	}
}

func TestAHindcastThatIsStoppedSaysSo(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	if v := Hindcast(ctx, []*voyage.Voyage{compiled(t, oneVisit())}, []string{"a"}, Run{}); !v.Stopped || v.Days != nil {
		t.Errorf("%+v", v)
	}
}

func TestCoresOfAHindcastAreThoseThatCameUp(t *testing.T) {
	cores := HindcastCores(context.Background(), []*voyage.Voyage{compiled(t, oneVisit())}, []string{"a"}, Run{Replications: 2})
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
	if !near(cored, 33) {
		t.Errorf("%g m cored, want 33", cored)
	}
}

// Metres and cores of a visit of 33 m of mud, of which all comes up: four cores by hand, 33 m.
func TestAVisitCountsItsMetresAndCores(t *testing.T) {
	visits := Hindcast(context.Background(), []*voyage.Voyage{compiled(t, oneVisit())}, []string{"a"}, Run{Replications: 3})
	for n := range 3 {
		if got := visits.Cores[0][n]; got != 4 {
			t.Errorf("%g cores, want 4", got)
		}
		if got := visits.Recovered[0][n]; !near(got, 33) {
			t.Errorf("%g m recovered, want 33", got)
		}
	}
}

// recoveringAt is a visit to a site of a name whose recovery is drawn at a level.
func recoveringAt(t *testing.T, name string, level spread.Level) *voyage.Voyage {
	t.Helper()
	ground := mud()
	ground.Recovery[coring.APC] = spread.Quantity{Shape: spread.Table{P: []float64{0.1, 0.9}, Value: []float64{0.4, 0.9}}, Shares: spread.All(level)}
	p := expedition(site(name, geo.Position{Longitude: 1}, 1500, pistonHole("A", 33)))
	p.Sites[0].Layers[0].Lithology = ground
	return compiled(t, p)
}

// Two sites of a leg share what is drawn for the expedition and nothing that is drawn for a site; those of
// two legs share neither.
func TestSitesOfALegShareTheExpeditionAlone(t *testing.T) {
	recovered := func(level spread.Level) [][]float64 {
		voyages := []*voyage.Voyage{recoveringAt(t, "one", level), recoveringAt(t, "two", level), recoveringAt(t, "two", level)}
		return Hindcast(context.Background(), voyages, []string{"a", "a", "b"}, Run{Seed: 3, Replications: 20}).Recovered
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
