package choice

import (
	"context"
	"time"

	"coredays/model/geo"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/statistics"
)

// Alternative is a voyage with the name by which it is given from others.
type Alternative struct {
	Name   string
	Voyage *voyage.Voyage
}

// Compare sails alternatives again and again, replication for replication with the same random numbers, in
// seas that are the same on the same date. When the context ends, those that are done are compared.
func Compare(ctx context.Context, alternatives []Alternative, run sim.Run) *result.Comparison {
	return Plans(alternatives).Sail(ctx, run)
}

// inOneSea has the sea begin for all when the first of them sails.
func inOneSea(alternatives []Alternative) []Alternative {
	var first time.Time
	for _, a := range alternatives {
		if sails := a.Voyage.Plan.Sails; first.IsZero() || sails.Before(first) {
			first = sails
		}
	}
	together := make([]Alternative, len(alternatives))
	for i, a := range alternatives {
		together[i] = Alternative{a.Name, a.Voyage.ByTheSeaFrom(first)}
	}
	return together
}

// sailedAlternative is an alternative with its results.
type sailedAlternative struct {
	Alternative
	summary  *result.Summary
	outcomes []outcome
}

// sailAll does all replications of one alternative after another, since the rows of all together
// would take much room.
func sailAll(ctx context.Context, alternatives []Alternative, run sim.Run) (sailed []sailedAlternative, stopped bool) {
	progress := run.Progress
	for i, a := range alternatives {
		if progress != nil {
			run.Progress = func(done int) { progress(i*run.Replications + done) }
		}
		r := sim.Replicate(ctx, a.Voyage, run)
		if r.Stopped {
			return sailed, true
		}
		sailed = append(sailed, sailedAlternative{a, r.Summary(), outcomesIn(r)})
	}
	return sailed, false
}

// outcomesIn are the figures of all replications to compare by.
func outcomesIn(r *statistics.Results) []outcome {
	list := make([]outcome, len(r.Done))
	for n := range list {
		list[n] = outcomeOf(r.Layout, r.Row(r.Unconstrained, n), r.Row(r.Constrained, n))
	}
	return list
}

// compared ranks alternatives that were sailed and says them apart, all statements about the best
// together with a chance of so much to miss.
func compared(sailed []sailedAlternative, run sim.Run, stopped bool, miss float64) *result.Comparison {
	c := &result.Comparison{Seed: run.Seed, StoppedEarly: stopped, Confidence: confidence, SameChance: sameChance, Reference: -1, Planned: -1}
	if len(sailed) == 0 {
		return c
	}
	c.Replications = len(sailed[0].outcomes)
	all := outcomesOf(sailed)
	list := allMerits(all)
	c.Best = ranked(list)[0]
	able, front := notRuledOut(all, miss), nondominated(list)
	beyond := tailOfAllPairs(len(sailed), miss)
	t, bounds := upperT(c.Replications, beyond), newExactBounds(c.Replications, beyond)
	for i := range sailed {
		a := alternativeOf(&sailed[i])
		a.Alike, a.Unbeaten = able[i], front[i]
		a.Behind = pair(all[i], all[c.Best], daysNeeded).interval(t)
		a.Less = bounds.interval(discord(all[c.Best], all[i], rankOneDone))
		c.Alternatives = append(c.Alternatives, a)
		for j := range i {
			d := difference(all[j], all[i])
			d.A, d.B = j, i
			c.Differences = append(c.Differences, d)
		}
	}
	return c
}

func outcomesOf(sailed []sailedAlternative) [][]outcome {
	var all [][]outcome
	for i := range sailed {
		all = append(all, sailed[i].outcomes)
	}
	return all
}

// alternativeOf describes an alternative without comparing it.
func alternativeOf(s *sailedAlternative) result.Alternative {
	v := s.Voyage
	p := v.Plan
	a := result.Alternative{Name: s.Name, Summary: s.summary, Ports: [2]string{p.From.Name, p.To.Name}, Distance: unit.Length(trackLength(v, p.Order))}
	a.Track = []geo.Position{p.From.Position}
	a.Marks = []result.Mark{{Name: p.From.Name, At: p.From.Position, Port: true}, {Name: p.To.Name, At: p.To.Position, Port: true}}
	for _, n := range p.Order {
		site := &p.Sites[n]
		a.Marks = append(a.Marks, result.Mark{Name: site.Name, At: site.Position, Alternate: site.Alternate})
		if !site.Alternate {
			a.Track = append(append(a.Track, site.Way()...), site.Position)
		}
	}
	a.Track = append(append(a.Track, p.To.Via...), p.To.Position)
	for _, n := range v.Visits() {
		a.Order = append(a.Order, p.Sites[n].Name)
		a.Caps = append(a.Caps, p.Sites[n].Cap)
	}
	return a
}

// trackLength is the way of the whole programme from port to port, m.
func trackLength(v *voyage.Voyage, order []int) (sum float64) {
	at := voyage.FromPort
	for _, n := range order {
		if !v.Sites[n].Alternate {
			sum += v.Leg(at, voyage.SitePlace(n)).Distance
			at = voyage.SitePlace(n)
		}
	}
	return sum + v.Leg(at, voyage.ToPort).Distance
}
