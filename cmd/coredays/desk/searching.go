package desk

import (
	"bytes"
	"context"
	"errors"
	"net/http"
	"sync/atomic"
	"time"

	"coredays/model/result"
	"coredays/output/text"
	"coredays/output/words"
	"coredays/sim"
	"coredays/sim/choice"
	"coredays/sim/statistics"
)

// searchReplications keep a search of orders below a minute for a dozen sites.
const searchReplications = 200

// proposal is an alternative that a search found.
type proposal struct {
	Name  string   `json:"name"`
	Order []string `json:"order"` // to take over; empty for a cut
	Words string   `json:"words"`
	Best  bool     `json:"best"`
	Alike bool     `json:"alike"`
}

// search looks for the best order, or for what each thing costs, and says how far it is. The page
// stops it by hanging up; an edit stops it too.
func (d *Desk) search(w http.ResponseWriter, r *http.Request) {
	q, ok := asked(w, r)
	if !ok {
		return
	}
	now := d.readingOf(q.Text)
	if !now.sails() || q.Search != "orders" && q.Search != "cuts" {
		http.Error(w, "a plan without faults, and orders or cuts to look for", http.StatusUnprocessableEntity)
		return
	}
	ctx, done, err := d.turn.take(r.Context())
	if err != nil {
		return
	}
	defer done()
	s := newStream(w)
	var count atomic.Int64
	answer := make(chan *result.Comparison, 1)
	failed := make(chan error, 1)
	go func() {
		run := sim.Run{Seed: seed, Replications: searchReplications, Progress: func(n int) { count.Store(int64(n)) }}
		if q.Search == "orders" {
			answer <- choice.BestOrder(ctx, now.voyage, run)
			return
		}
		trial, err := choice.Cuts(now.voyage)
		if err != nil {
			failed <- err
			return
		}
		answer <- trial.Sail(ctx, run)
	}()
	of := 0
	if q.Search == "cuts" {
		of = choice.CutAlternatives(now.voyage) * searchReplications
	}
	began, tick := time.Now(), time.NewTicker(300*time.Millisecond)
	defer tick.Stop()
	for {
		select {
		case <-tick.C:
			_ = s.send("progress", progressOf(int(count.Load()), of, time.Since(began)))
		case err := <-failed:
			_ = s.send("failed", err.Error())
			return
		case c := <-answer:
			d.found(ctx, s, c)
			return
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

// found says what a search came to.
func (d *Desk) found(ctx context.Context, s stream, c *result.Comparison) {
	switch {
	case errors.Is(context.Cause(ctx), errSuperseded):
		_ = s.send("superseded", nil)
		return
	case c.StoppedEarly || len(c.Alternatives) == 0:
		return // the page hung up
	}
	list := []proposal{}
	for _, i := range text.ByMerit(c) {
		a := &c.Alternatives[i]
		p := proposal{Name: a.Name, Best: i == c.Best, Alike: a.Alike, Words: text.Standing(c, i) + "; P50 " + words.Figures(words.InDays(a.Summary.Needed.Total).P50) +
			" d; rank 1 " + words.Often(a.Summary.Allotted.ChancePrimary, c.Replications)}
		if len(c.Cuts) == 0 {
			p.Order = a.Order
		}
		list = append(list, p)
	}
	_ = s.send("found", map[string]any{"proposals": list, "lines": append(text.FirstLines(c), text.StandingLines(c)...)})
}

// written answers with a file made of the plan on the page.
func (d *Desk) written(what func() Write, kind string) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		q, ok := asked(w, r)
		if !ok {
			return
		}
		now := d.readingOf(q.Text)
		if !now.sails() || what() == nil {
			http.Error(w, "a plan without faults that the check does not stop", http.StatusUnprocessableEntity)
			return
		}
		ctx, done, err := d.turn.take(r.Context())
		if err != nil {
			http.Error(w, err.Error(), http.StatusConflict)
			return
		}
		defer done()
		var whole bytes.Buffer
		results := sim.Replicate(ctx, now.voyage, sim.Run{Seed: seed, Replications: refined})
		if err := d.fill(ctx, &whole, what(), &now, results); err != nil {
			http.Error(w, err.Error(), http.StatusConflict)
			return
		}
		w.Header().Set("Content-Type", kind)
		_, _ = w.Write(whole.Bytes())
	}
}

func (d *Desk) fill(ctx context.Context, to *bytes.Buffer, write Write, now *reading, results *statistics.Results) error {
	if results.Stopped {
		return context.Cause(ctx)
	}
	return write(ctx, to, now.voyage, results, now.Warnings, d.invented())
}
