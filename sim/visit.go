package sim

import (
	"context"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/voyage"
)

// Visitor does single visits to single sites.
type Visitor struct {
	ship        *ship
	seed        uint64
	n           int
	seas, spare []sea.Series
}

// NewVisitor readies a ship for visits; one that is under way when the context ends is dropped (see package workers).
func NewVisitor(ctx context.Context, v *voyage.Voyage) *Visitor {
	return &Visitor{ship: newShip(v).until(ctx)}
}

// Meets goes over to a replication. All its visits meet the same sea, which is worked out once.
func (x *Visitor) Meets(seed uint64, n int) {
	x.seed, x.n = seed, n
	x.ship.begins(seed, n)
	x.seas, x.spare = x.ship.sea.series, make([]sea.Series, len(x.ship.sea.series))
}

// Visit does a whole visit from so many seconds after sailing on: what it takes, s, and what of it is of the
// first rank.
func (x *Visitor) Visit(site int, at float64) (whole, first float64) {
	s := x.ship
	s.sea.series = x.spare
	s.begins(x.seed, x.n)
	s.sea.series = x.seas
	s.clock, s.triedOut = at, true // that comes once in any order
	s.seaChanges()
	s.arrivesAt(voyage.SitePlace(site))
	s.worksHere()
	whole = s.clock - at + s.rateMedian(rig.Securing)
	first = whole
	for i := range s.here.Items {
		if item := &s.here.Items[i]; item.Rank > 1 {
			first -= s.items[item.Number].took
		}
	}
	return whole, first
}

// Passages are the times between all places at the median speed in the median sea of the date of
// sailing, s; with pipe hanging, less what is saved at both ends.
func Passages(v *voyage.Voyage) [][]float64 {
	s := newShip(v)
	s.begins(0, 0)
	times := make([][]float64, len(v.Legs))
	for from := range v.Legs {
		for to := range v.Legs[from] {
			leg := &v.Legs[from][to]
			t := leg.Distance / s.rateMedian(rig.SailingSpeed)
			if leg.Waves != nil {
				s.sea.waves = leg.Waves
				t /= v.InWaves(s.sea.at(0, 0))
			}
			times[from] = append(times[from], s.withPipe(voyage.Place(from), voyage.Place(to), t))
		}
	}
	return times
}

// Visited is what came of a visit.
type Visited struct {
	Takes, Lost float64 // s, and what of these was lost to weather and breakdowns
	Recovered   float64 // m of core
	Cores       float64
}

// First does all there is to do at the first site of the programme, from the moment the ship is over it.
func (x *Visitor) First(seed uint64, n int) Visited {
	s := x.ship
	s.begins(seed, n)
	s.visits()
	site := &s.sites[s.v.Plan.Order[0]]
	return Visited{s.clock, s.spent[activity.WaitOnWeather] + s.spent[activity.Breakdown], site.recovered, float64(site.cores)}
}

// FirstCores are the cores of a visit to the first site, one by one.
func (x *Visitor) FirstCores(seed uint64, n int) []Core {
	s := x.ship
	s.begins(seed, n)
	s.cores = &coreLog{}
	s.visits()
	return s.cores.cores
}

// visits does all there is to do at the first site, from the moment the ship is over it until all
// pipe is on deck.
func (s *ship) visits() {
	s.arrivesAt(voyage.SitePlace(s.v.Plan.Order[0]))
	if s.bha = s.v.Plan.Reached; s.bha != coring.NoBHA {
		s.bit = s.clear()
		s.drifted = max(s.drifted, s.bit)
		s.bitLife = s.Rate(rig.BitLife)
	}
	s.worksHere()
}

// worksHere does all there is to do at the site where the ship is, until all pipe is on deck wherever she goes then.
func (s *ship) worksHere() {
	for range mostSteps {
		s.nextItem()
		s.towards = voyage.ToPort
		if s.item == nil && (s.bit == 0 || s.v.Plan.LeavesHanging) && !s.otherWorkDue() || s.clock > s.longest() {
			return
		}
		s.nextStep().do(s)
		if s.ended != goingOn {
			s.makeSafe()
		}
	}
}

// arrivesAt puts a ship that has just begun over a site, with all pipe on deck.
func (s *ship) arrivesAt(site voyage.Place) {
	s.at = site
	s.reachSite()
}
