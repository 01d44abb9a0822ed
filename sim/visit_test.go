package sim

import (
	"math"
	"testing"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/sim/simtest"
)

// visited sails one visit of a plan's first site and gives the ship.
func visited(t *testing.T, p *plan.Plan) *expedition {
	t.Helper()
	s := newExpedition(simtest.Compiled(t, p))
	s.begins(1, 0)
	s.visits()
	return s
}

// oneVisit is a plan of one piston hole of 33 m in 1500 m of water.
func oneVisit() *plan.Plan {
	return simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 33)))
}

func TestAVisitBeginsOverTheHoleAndEndsWithThePipeOnDeck(t *testing.T) {
	p := oneVisit()
	whole, visit := sailed(t, p, false), visited(t, p)
	leg := float64(geo.Distance(geo.Position{}, geo.Position{Longitude: 1})) / 5
	outside := 2*(2*simtest.Hours+leg) + 30*simtest.Minutes // pilotage and passage there and back, securing for sea
	if !simtest.Near(visit.Clock, whole.Clock-outside) {
		t.Errorf("the visit took %.3f h, the expedition %.3f h, of which %.3f h are not at the site", visit.Clock/simtest.Hours, whole.Clock/simtest.Hours, outside/simtest.Hours)
	}
}

// A start that is given up costs its time and gives a core: of a piston corer with what the layer gives, of a rotated
// barrel with a fifth of it.
func TestAStartGivenUpCostsItsTimeAndGivesACore(t *testing.T) {
	for _, tool := range []coring.Tool{coring.APC, coring.RCB} {
		p := oneVisit()
		p.Sites[0].Items = []plan.Item{{Name: "A", Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: tool, To: 40}}}}}
		share := p.Sites[0].Layers[0].Lithology.Recovery[coring.APC].Median()
		if tool == coring.RCB {
			share = 0.2
		}
		even := visited(t, p)
		p.Ship.Rates[rig.FailedStart], p.Ship.Rates[rig.FailedStartTime] = spread.Just(1), spread.Just(3*simtest.Hours)
		failed := visited(t, p)
		if got := failed.Clock - even.Clock; !simtest.Near(got, mostFailedStarts*3*simtest.Hours) {
			t.Errorf("%v: starts that always fail cost %.3f h, want %d times 3 h", tool, got/simtest.Hours, mostFailedStarts)
		}
		cores, recovered := failed.Sites[0].Cores-even.Sites[0].Cores, failed.Sites[0].Recovered-even.Sites[0].Recovered
		if cores != mostFailedStarts || !simtest.Near(recovered, mostFailedStarts*9.5*share) {
			t.Errorf("%v: starts that always fail give %d cores and %.3f m, want %d of %.2f m", tool, cores, recovered, mostFailedStarts, 9.5*share)
		}
	}
}

// A start fails so often as it is said: of 4000 holes, within three standard errors.
func TestStartsFailAsOftenAsIsSaid(t *testing.T) {
	p := oneVisit()
	p.Ship.Rates[rig.FailedStart], p.Ship.Rates[rig.FailedStartTime] = spread.Just(0.13), spread.Just(3*simtest.Hours)
	visitor := NewVisitor(t.Context(), simtest.Compiled(t, p))
	even := visited(t, oneVisit()).Clock
	var failed float64
	for n := range 4000 {
		d := visitor.First(1, n).Takes
		failed += (d - even) / (3 * simtest.Hours)
	}
	want, spread := 0.13/0.87, math.Sqrt(0.13)/0.87 // mean and deviation of a geometric count
	if got := failed / 4000; math.Abs(got-want) > 3*spread/math.Sqrt(4000) {
		t.Errorf("%.4f starts fail for each hole, want %.4f", got, want)
	}
}

func TestAKnownLengthOfCoresMakesTheirNumber(t *testing.T) {
	p := oneVisit()
	p.Sites[0].Items[0].Hole.Stages[0].Advance = 3.3
	if got := visited(t, p).Tools[coring.APC].Cores; got != 10 {
		t.Errorf("%d cores of 3.3 m in 33 m, want 10", got)
	}
}
