package sim

import (
	"context"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/voyage"
	"coredays/sim/ship"
)

// Visitor does single visits to single sites.
type Visitor struct {
	ship        *expedition
	seed        uint64
	n           int
	seas, spare []sea.Series
}

// NewVisitor readies a ship for visits; one that is under way when the context ends is dropped (see package workers).
func NewVisitor(ctx context.Context, v *voyage.Voyage) *Visitor {
	return &Visitor{ship: newExpedition(v).until(ctx)}
}

// Meets goes over to a replication. All its visits meet the same sea, which is worked out once.
func (x *Visitor) Meets(seed uint64, n int) {
	x.seed, x.n = seed, n
	x.ship.begins(seed, n)
	x.seas, x.spare = x.ship.Sea.Series, make([]sea.Series, len(x.ship.Sea.Series))
}

// Visit does a whole visit from so many seconds after sailing on: what it takes, s, and what of it is of the
// first rank.
func (x *Visitor) Visit(site int, at float64) (whole, first float64) {
	s := x.ship
	s.Sea.Series = x.spare
	s.begins(x.seed, x.n)
	s.Sea.Series = x.seas
	s.Clock, s.TriedOut = at, true // that comes once in any order
	s.SeaChanges()
	s.arrivesAt(voyage.SitePlace(site))
	s.worksHere()
	whole = s.Clock - at + s.RateMedian(rig.Securing)
	first = whole
	for i := range s.Here.Items {
		if item := &s.Here.Items[i]; item.Rank > 1 {
			first -= s.Items[item.Number].Took
		}
	}
	return whole, first
}

// Passages are the times between all places at the median speed in the median sea of the date of
// sailing, s; with pipe hanging, less what is saved at both ends.
func Passages(v *voyage.Voyage) [][]float64 {
	s := newExpedition(v)
	s.begins(0, 0)
	times := make([][]float64, len(v.Legs))
	for from := range v.Legs {
		for to := range v.Legs[from] {
			leg := &v.Legs[from][to]
			t := leg.Distance / s.RateMedian(rig.SailingSpeed)
			if leg.Waves != nil {
				s.Sea.Waves = leg.Waves
				t /= v.InWaves(s.Sea.At(0, 0))
			}
			times[from] = append(times[from], s.WithPipe(voyage.Place(from), voyage.Place(to), t))
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
	site := &s.Sites[s.Voyage.Plan.Order[0]]
	return Visited{s.Clock, s.Spent[activity.WaitOnWeather] + s.Spent[activity.Breakdown], site.Recovered, float64(site.Cores)}
}

// FirstCores are the cores of a visit to the first site, one by one.
func (x *Visitor) FirstCores(seed uint64, n int) []ship.Core {
	s := x.ship
	s.begins(seed, n)
	s.Cores = &ship.CoreLog{}
	s.visits()
	return s.Cores.Cores
}

// visits does all there is to do at the first site, from the moment the ship is over it until all
// pipe is on deck.
func (s *expedition) visits() {
	s.arrivesAt(voyage.SitePlace(s.Voyage.Plan.Order[0]))
	if s.BHA = s.Voyage.Plan.Reached; s.BHA != coring.NoBHA {
		s.Bit = s.Clear()
		s.Drifted = max(s.Drifted, s.Bit)
		s.BitLife = s.Rate(rig.BitLife)
	}
	s.worksHere()
}

// worksHere does all there is to do at the site where the ship is, until all pipe is on deck wherever she goes then.
func (s *expedition) worksHere() {
	for range mostSteps {
		s.nextItem()
		s.Towards = voyage.ToPort
		if s.Item == nil && (s.Bit == 0 || s.Voyage.Plan.LeavesHanging) && !s.otherWorkDue() || s.Clock > s.Longest() {
			return
		}
		s.nextStep().do(s)
		if s.Ended != ship.GoingOn {
			s.MakeSafe()
		}
	}
}

// arrivesAt puts a ship that has just begun over a site, with all pipe on deck.
func (s *expedition) arrivesAt(site voyage.Place) {
	s.At = site
	s.reachSite()
}
