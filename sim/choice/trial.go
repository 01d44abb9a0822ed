package choice

import (
	"context"

	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/statistics"
)

// Trial is a comparison that is ready to be sailed: its alternatives, and what is made of their results. It can
// be sailed here, or elsewhere and put together.
type Trial struct {
	Alternatives []Alternative
	conclude     func(sailed []sailedAlternative, run sim.Run, stopped bool) *result.Comparison
}

// Plans is the trial of alternatives, in seas that are the same on the same date.
func Plans(alternatives []Alternative) *Trial {
	return &Trial{inOneSea(alternatives), func(sailed []sailedAlternative, run sim.Run, stopped bool) *result.Comparison {
		return compared(sailed, run, stopped, 1-confidence)
	}}
}

// Departures is the trial of a voyage on several dates.
func Departures(alternatives []Alternative) *Trial {
	t := Plans(alternatives)
	plans := t.conclude
	t.conclude = func(sailed []sailedAlternative, run sim.Run, stopped bool) *result.Comparison {
		c := plans(sailed, run, stopped)
		c.Question = result.WhichDeparture
		return c
	}
	return t
}

// Voyages are those of the alternatives, in their order.
func (t *Trial) Voyages() (list []*voyage.Voyage) {
	for _, a := range t.Alternatives {
		list = append(list, a.Voyage)
	}
	return list
}

// Sail sails the alternatives here. When the context ends, those that are done are compared.
func (t *Trial) Sail(ctx context.Context, run sim.Run) *result.Comparison {
	sailed, stopped := sailAll(ctx, t.Alternatives, run)
	return t.conclude(sailed, run, stopped)
}

// Joined compares what was sailed elsewhere: of gives the results of each alternative in turn, and no two are
// held at once.
func (t *Trial) Joined(run sim.Run, of func(v *voyage.Voyage) (*statistics.Results, error)) (*result.Comparison, error) {
	var sailed []sailedAlternative
	for _, a := range t.Alternatives {
		r, err := of(a.Voyage)
		if err != nil {
			return nil, err
		}
		sailed = append(sailed, sailedAlternative{a, r.Summary(), outcomesIn(r)})
	}
	return t.conclude(sailed, run, false), nil
}
