package desk

import (
	"context"
	"errors"
	"fmt"
	"net/http"
	"sync/atomic"
	"time"

	"coredays/model/result"
	"coredays/output/words"
	"coredays/sim"
	"coredays/sim/choice"
)

// searchReplications keep a search of orders below a minute for a dozen sites.
const searchReplications = 200

// sought is a search that is ready to be sailed.
type sought struct {
	sail func(ctx context.Context, run sim.Run) *result.Comparison
	of   int                  // replications in all; 0 where nobody knows
	take func(i int) []change // what takes the alternative over
}

// soughtBy is the search that a question asks for.
func (d *Desk) soughtBy(q question, now *reading) (sought, error) {
	switch q.Search {
	case "orders":
		return sought{sail: func(ctx context.Context, run sim.Run) *result.Comparison {
			return choice.BestOrder(ctx, now.voyage, run)
		}}, nil
	case "cuts":
		trial, err := choice.Cuts(now.voyage)
		if err != nil {
			return sought{}, err
		}
		cuts := now.voyage.Plan.Cuts()
		return sought{trial.Sail, len(trial.Alternatives) * searchReplications, func(i int) []change { return withoutIt(now.voyage.Plan, cuts[i]) }}, nil
	case "departures":
		dates, err := d.Dates(q.Dates, now.voyage.Plan.Sails)
		if err != nil {
			return sought{}, err
		}
		var alternatives []choice.Alternative
		for _, at := range dates {
			alternatives = append(alternatives, choice.Alternative{Name: words.Date(at), Voyage: now.voyage.Sailing(at)})
		}
		return sought{choice.Departures(alternatives).Sail, len(dates) * searchReplications, func(i int) []change {
			return []change{{"sails", dates[i].UTC().Format("2006-01-02T15:04Z")}}
		}}, nil
	}
	return sought{}, fmt.Errorf("%q: orders, cuts or departures", q.Search)
}

// search looks for the best order, for what each thing costs, or for a date to sail, and says how far
// it is. The page stops it by hanging up; an edit stops it too.
func (d *Desk) search(w http.ResponseWriter, r *http.Request) {
	q, ok := asked(w, r)
	if !ok {
		return
	}
	now := d.readingOf(q.Text)
	if !now.sails() {
		http.Error(w, "a plan without faults that the check does not stop", http.StatusUnprocessableEntity)
		return
	}
	wanted, err := d.soughtBy(q, &now)
	if err != nil {
		http.Error(w, err.Error(), http.StatusUnprocessableEntity)
		return
	}
	ctx, done, err := d.turn.take(r.Context(), &q)
	if err != nil {
		return
	}
	defer done()
	s := newStream(w)
	if c := wanted.sailed(ctx, s); errors.Is(context.Cause(ctx), errSuperseded) {
		_ = s.send("superseded", nil)
	} else if !c.StoppedEarly && len(c.Alternatives) > 0 { // else the page hung up
		_ = s.send("found", foundIn(c, wanted.take))
	}
}

// sailed sails a search and sends its progress.
func (w sought) sailed(ctx context.Context, s stream) *result.Comparison {
	var count atomic.Int64
	answer := make(chan *result.Comparison, 1)
	go func() {
		answer <- w.sail(ctx, sim.Run{Seed: seed, Replications: searchReplications, Progress: func(n int) { count.Store(int64(n)) }})
	}()
	began, tick := time.Now(), time.NewTicker(300*time.Millisecond)
	defer tick.Stop()
	for {
		select {
		case <-tick.C:
			_ = s.send("progress", progressOf(int(count.Load()), w.of, time.Since(began)))
		case c := <-answer:
			return c
		}
	}
}

// progressSaid is how far a search is.
type progressSaid struct {
	Done int     `json:"done"`
	Of   int     `json:"of"`   // 0 where nobody knows
	Left float64 `json:"left"` // s; 0 where nobody knows
}

func progressOf(done, of int, took time.Duration) progressSaid {
	p := progressSaid{Done: done, Of: of}
	if done > 0 && of > done {
		p.Left = took.Seconds() * float64(of-done) / float64(done)
	}
	return p
}
