package sim

import (
	"context"
	"sync/atomic"

	"coredays/model/activity"
	"coredays/model/chance"
	"coredays/model/voyage"
)

// A hindcast sails one visit to one site at a time: it begins with the ship over the first hole and
// ends when the bit clears the rig floor after the last, as days on hole are counted on record.

// Visits are the results of a hindcast.
type Visits struct {
	Days      [][]float64 // by voyage, by replication: s on site
	Lost      [][]float64 // of these: s waiting on weather and repairing breakdowns
	Recovered [][]float64 // by voyage, by replication: m of core
	Cores     [][]float64 // by voyage, by replication
	Stopped   bool        // the context ended the run; all else is then empty
}

// Hindcast sails the first site of each voyage again and again. The sites of a group, a leg, share
// what is drawn for an expedition. As with Replicate, the results are the same for any number of
// workers.
func Hindcast(ctx context.Context, voyages []*voyage.Voyage, groups []string, run Run) *Visits {
	all := newVisits(len(voyages))
	var finished atomic.Int64
	sharedOut(ctx, run.Workers, 0, len(voyages), func() func(int) {
		return func(n int) {
			one := visits(ctx, voyages[n], seedOf(run.Seed, groups[n]), max(1, run.Replications))
			all.Days[n], all.Lost[n], all.Recovered[n], all.Cores[n] = one.days, one.lost, one.recovered, one.cores
			if f := int(finished.Add(1)); run.Progress != nil {
				run.Progress(f)
			}
		}
	})
	if ctx.Err() != nil {
		return &Visits{Stopped: true}
	}
	return all
}

func newVisits(voyages int) *Visits {
	return &Visits{Days: make([][]float64, voyages), Lost: make([][]float64, voyages), Recovered: make([][]float64, voyages), Cores: make([][]float64, voyages)}
}

// seedOf gives each group a luck of its own.
func seedOf(seed uint64, group string) uint64 { return seed ^ uint64(chance.KeyOf("group", group)) }

// visit is what came of the replications of one visit, in the units of Visits.
type visit struct{ days, lost, recovered, cores []float64 }

func visits(ctx context.Context, v *voyage.Voyage, seed uint64, replications int) visit {
	s := newShip(v).until(ctx)
	one := visit{make([]float64, replications), make([]float64, replications), make([]float64, replications), make([]float64, replications)}
	for n := range one.days {
		if ctx.Err() != nil {
			break
		}
		s.begins(seed, n)
		s.visits()
		one.days[n] = s.clock
		one.lost[n] = s.spent[activity.WaitOnWeather] + s.spent[activity.Breakdown]
		site := &s.sites[v.Plan.Order[0]]
		one.recovered[n], one.cores[n] = site.recovered, float64(site.cores)
	}
	return one
}

// visits does all there is to do at the first site, from the moment the ship is over it until all
// pipe is on deck.
func (s *ship) visits() {
	s.arrivesAt(voyage.SitePlace(s.v.Plan.Order[0]))
	s.worksHere()
}

// worksHere does all there is to do at the site where the ship is, until all pipe is on deck wherever she goes then.
func (s *ship) worksHere() {
	for range mostSteps {
		s.choose()
		s.towards = voyage.ToPort
		if s.item == nil && s.bit == 0 && !s.otherWorkDue() || s.clock > s.longest() {
			return
		}
		s.next().do(s)
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
