package choice

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"gonum.org/v1/gonum/stat"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/simtest"
)

// scattered is an expedition to so many sites about the sea, each with a task of a fixed time; all
// is certain and calm.
func scattered(n int, random *rand.Rand) *plan.Plan {
	var sites []plan.Site
	for i := range n {
		at := geo.Position{Latitude: random.Float64()*40 - 20, Longitude: random.Float64() * 60}
		sites = append(sites, simtest.Site(fmt.Sprint("S", i), at, 1500,
			plan.Item{Name: "task", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just((5 + 20*random.Float64()) * simtest.Hours)}}}}))
	}
	p := simtest.Expedition(sites...)
	p.To.Position = geo.Position{Latitude: 10, Longitude: 40}
	p.SeaDays = 120 * unit.Day
	return p
}

// shortestByHand tries every order, worked out here from nothing but positions and rules.
func shortestByHand(p *plan.Plan) (least float64, orders int) {
	least = math.Inf(1)
	var try func(at geo.Position, way float64, visited []int)
	try = func(at geo.Position, way float64, visited []int) {
		if len(visited) == len(p.Sites) {
			orders++
			least = min(least, way+float64(geo.Distance(at, p.To.Position)))
			return
		}
		for n := range p.Sites {
			blocked := slices.Contains(visited, n)
			for _, rule := range p.Before {
				blocked = blocked || rule.Then == n && !slices.Contains(visited, rule.First)
			}
			if !blocked {
				try(p.Sites[n].Position, way+float64(geo.Distance(at, p.Sites[n].Position)), append(slices.Clone(visited), n))
			}
		}
	}
	try(p.From.Position, 0, nil)
	return least, orders
}

func TestTheBestOrderOfACertainPlanIsTheShortestOfAll(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 7))
	for _, n := range []int{2, 3, 4, 5, 6, 7, 7, 7} {
		p := scattered(n, random)
		if n > 3 {
			p.Before = []plan.Precedence{{First: n - 1, Then: 0}, {First: 1, Then: 2}}
		}
		least, orders := shortestByHand(p)
		quick := usual
		quick.bookSize = 2 // all alike
		c := quick.bestOrder(context.Background(), simtest.Compiled(t, p), sim.Run{Seed: 1, Replications: 2})
		best := &c.Alternatives[c.Best]
		if math.Abs(float64(best.Distance)-least) > 1 {
			t.Errorf("%d sites: best is %s with %.0f km, by hand %.0f km", n, best.Name, float64(best.Distance)/1000, least/1000)
		}
		if c.Search.Allowed != orders {
			t.Errorf("%d sites: %d orders allowed, by hand %d", n, c.Search.Allowed, orders)
		}
		if got := c.Alternatives[c.Planned].Order; len(got) != n || got[0] != "S0" || got[n-1] != fmt.Sprint("S", n-1) {
			t.Errorf("%d sites: the order of the scenario is told to be %v", n, got)
		}
		if c.Reference != c.Best {
			t.Errorf("%d sites: the shortest track is that of %s", n, c.Alternatives[c.Reference].Name)
		}
	}
}

// Where the days are too few for all, the best order is found as by sailing every order.
func TestTheBestOrderWithTooFewDaysIsThatOfSailingAll(t *testing.T) {
	random := rand.New(rand.NewPCG(11, 3))
	for range 4 {
		p := scattered(5, random)
		p.SeaDays = unit.Duration(21+6*random.Float64()) * unit.Day
		for i := range p.Sites {
			p.Sites[i].Items = append(p.Sites[i].Items, plan.Item{Name: "extra", Rank: 2, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just((10 + 60*random.Float64()) * simtest.Hours)}}}})
		}
		v := simtest.Compiled(t, p)
		orders, _ := orderRulesOf(v).allOrders(1000)
		list := make([]merits, len(orders))
		for i, order := range orders {
			c := candidate{v: v.InOrder(order)}
			c.sail(context.Background(), 1, 0, 1)
			list[i] = meritsOf(c.outcomes)
		}
		want := list[ranked(list)[0]]
		narrow := usual
		narrow.few = 20 // so that the visit book picks
		narrow.kept = 40
		for _, s := range []search{usual, narrow} {
			c := s.bestOrder(context.Background(), v, sim.Run{Seed: 1, Replications: 2})
			best := c.Alternatives[c.Best].Summary
			if best.Allotted.ChancePrimary != want.first || math.Abs(best.Needed.Total.Mean-want.days) > 60 {
				t.Errorf("found chance %g in %.3f d, by sailing all %g in %.3f d", best.Allotted.ChancePrimary, best.Needed.Total.Mean/day, want.first, want.days/day)
			}
		}
	}
}

// fiveSites is an uncertain expedition whose sites are unlike each other, in a sea that gets rougher.
func fiveSites() *plan.Plan {
	p := simtest.Uncertain()
	fifth := p.Sites[0]
	fifth.Name, fifth.Position = "E", geo.Position{Latitude: 9, Longitude: 7}
	p.Sites = append(p.Sites, fifth)
	p.Order = []int{0, 1, 2, 3, 4}
	for i := range p.Sites {
		p.Sites[i].Alternate = false
		p.Sites[i].Items = p.Sites[i].Items[:2+i%2]
		c := &p.Sites[i].Climate
		for m := range c.Mean {
			c.Mean[m] = unit.Length(1.2 + 0.35*float64(i) + 0.5*float64(m%6))
		}
	}
	p.SeaDays = 34 * unit.Day
	return p
}

func TestASearchOfFewOrdersAgreesWithSailingAll(t *testing.T) {
	v := simtest.Compiled(t, fiveSites())
	run := sim.Run{Seed: 5, Replications: 40}
	full := usual
	full.least, full.perStage, full.finalists = run.Replications, 1_000_000, 1000 // every order, all replications
	whole := full.bestOrder(context.Background(), v, run)
	if len(whole.Alternatives) != 120 {
		t.Fatalf("%d of 120 orders were sailed", len(whole.Alternatives))
	}
	narrow := usual
	narrow.few, narrow.kept, narrow.bookSize = 20, 30, 50
	found := narrow.bestOrder(context.Background(), v, run)
	if found.Search.Estimated != 120 || found.Search.Stages[0].Orders != 30 {
		t.Fatalf("the search was %+v", found.Search)
	}
	name := found.Alternatives[found.Best].Name
	for i := range whole.Alternatives {
		if a := &whole.Alternatives[i]; a.Name == name {
			if !a.Alike {
				t.Errorf("the search found %s, which sailing all rules out: behind by %+v d", name, a.Behind)
			}
			return
		}
	}
	t.Errorf("the search found %s, which is no order", name)
}

// filledBook is the visit book of the seed 1.
func filledBook(v *voyage.Voyage, replications, processors int) *visitBook {
	b := newVisitBook(v, replications)
	b.fill(context.Background(), 1, processors, 0, replications)
	b.bounds()
	return b
}

// What the visit book estimates is what the ship sails where all is certain.
func TestTheVisitBookReckonsWhatIsSailed(t *testing.T) {
	p := scattered(4, rand.New(rand.NewPCG(1, 2)))
	v := simtest.Compiled(t, p)
	book := filledBook(v, 2, 1)
	estimated, dropped := book.estimateOrders(context.Background(), orderRulesOf(v), 1000, 0)
	if len(estimated) != 24 || dropped {
		t.Fatalf("%d orders, dropped %v", len(estimated), dropped)
	}
	for _, r := range estimated {
		c := candidate{v: v.InOrder(r.order)}
		c.sail(context.Background(), 1, 0, 1)
		if got := c.outcomes[0][daysNeeded]; math.Abs(got-r.days) > 0.02*day {
			t.Errorf("%v: estimated %.3f d, sailed %.3f d", r.order, r.days/day, got/day)
		}
	}
}

// Where much is uncertain the visit book still puts the orders as sailing puts them.
func TestTheVisitBookPutsOrdersAsSailingDoes(t *testing.T) {
	v := simtest.Compiled(t, fiveSites())
	estimated, _ := filledBook(v, 50, 0).estimateOrders(context.Background(), orderRulesOf(v), 1000, 0)
	var byBook, bySailing []float64
	for i := 0; i < len(estimated); i += 6 {
		c := candidate{v: v.InOrder(estimated[i].order)}
		c.sail(context.Background(), 1, 0, 50)
		byBook, bySailing = append(byBook, estimated[i].days), append(bySailing, meritsOf(c.outcomes).days)
	}
	if r := stat.Correlation(byBook, bySailing, nil); r*r < 0.5 { // most of the variance between orders is given
		t.Errorf("estimated and sailed days of %d orders are correlated by %.3f", len(byBook), r)
	}
}

// eightSites is an uncertain expedition with 40,320 orders.
func eightSites() *plan.Plan {
	p := fiveSites()
	for i := range 3 {
		more := p.Sites[i]
		more.Name = string(rune('F' + i))
		more.Position = geo.Position{Latitude: float64(3 * i), Longitude: 11 - 2*float64(i)}
		p.Sites = append(p.Sites, more)
		p.Order = append(p.Order, 5+i)
	}
	p.SeaDays = 56 * unit.Day
	return p
}

func TestEightSitesAreAllReckoned(t *testing.T) {
	quick := usual
	quick.bookSize = 8
	c := quick.bestOrder(context.Background(), simtest.Compiled(t, eightSites()), sim.Run{Seed: 1, Replications: 4})
	if s := c.Search; s.Allowed != 40_320 || s.Uncounted || s.Stages[0].Orders != usual.kept || s.NextDays.Mean <= 0 && s.NextFirst <= 0 {
		t.Errorf("the search was %+v", s)
	}
}

// BenchmarkEightSites answers the question of the order of eight sites with the replications of the
// command: within a minute on two processors.
func BenchmarkEightSites(b *testing.B) {
	v := simtest.Compiled(b, eightSites())
	for b.Loop() {
		BestOrder(context.Background(), v, sim.Run{Seed: 1, Replications: 2000})
	}
}

// twelveSites has some 479 million orders, of which a beam follows the best.
func twelveSites() *plan.Plan {
	p := eightSites()
	for i := range 4 {
		more := p.Sites[i]
		more.Name = string(rune('I' + i))
		more.Position.Latitude += 1.5
		more.Position.Longitude -= 2
		p.Sites = append(p.Sites, more)
		p.Order = append(p.Order, 8+i)
	}
	p.SeaDays = 84 * unit.Day
	return p
}

func TestReckonedOrdersAreTheSameForAnyWorkers(t *testing.T) {
	v := simtest.Compiled(t, twelveSites())
	rules := orderRulesOf(v)
	one, dropped := filledBook(v, 2, 1).estimateOrders(context.Background(), rules, 500, 1)
	three, _ := filledBook(v, 2, 3).estimateOrders(context.Background(), rules, 500, 3)
	if !dropped || len(one) != 500 || !reflect.DeepEqual(one, three) {
		t.Errorf("%d and %d orders, some dropped: %v, that are not the same", len(one), len(three), dropped)
	}
}

func BenchmarkTwelveSites(b *testing.B) {
	v := simtest.Compiled(b, twelveSites())
	for b.Loop() {
		BestOrder(context.Background(), v, sim.Run{Seed: 1, Replications: 2000})
	}
}

// With more beginnings of orders than are followed up the search says so, and still finds a way that
// is short.
func TestASearchThatDropsBeginningsTellsSo(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 5))
	narrow := usual
	narrow.few, narrow.kept, narrow.bookSize, narrow.beam = 20, 20, 2, 60
	for range 3 {
		p := scattered(6, random)
		least, _ := shortestByHand(p)
		c := narrow.bestOrder(context.Background(), simtest.Compiled(t, p), sim.Run{Seed: 1, Replications: 2})
		if !c.Search.Uncounted || c.Search.Estimated > 60*6 {
			t.Errorf("the search was %+v", c.Search)
		}
		if got := float64(c.Alternatives[c.Best].Distance); got > 1.1*least {
			t.Errorf("the way found is %.0f km, the shortest %.0f km", got/1000, least/1000)
		}
	}
}
