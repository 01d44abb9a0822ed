package desk

import (
	"bytes"
	"context"
	"errors"
	"net/http"
	"path/filepath"

	"coredays/cmd/coredays/lookahead"
	"coredays/output/chart"
	"coredays/output/text/mornings"
	"coredays/sim"
)

// restReplications are those of coredays lookahead.
const restReplications = 1000

// paper is a file that was dropped on the page: it comes with its bytes, never by its path.
type paper struct {
	Name string `json:"name"`
	Data []byte `json:"data"`
}

func (p *paper) file() *lookahead.File {
	if p == nil {
		return nil
	}
	return &lookahead.File{Name: filepath.Base(p.Name), Data: p.Data}
}

// papers are what a ship has of a morning; only the log must be there.
type papers struct {
	Log      *paper `json:"log"`
	Cores    *paper `json:"cores"`
	State    *paper `json:"state"`
	Forecast *paper `json:"forecast"`
}

// replications are few for a first answer.
func (q *question) replications() int {
	if q.Rough {
		return roughly
	}
	return restReplications
}

// morning makes the look-ahead from the plan on the page and the ship's log. The page stops it by hanging up.
func (d *Desk) morning(w http.ResponseWriter, r *http.Request) {
	q, ok := asked(w, r)
	if !ok {
		return
	}
	now := d.readingOf(q.Text)
	if now.voyage == nil || q.Papers.Log == nil {
		http.Error(w, "a plan without faults and an operations log", http.StatusUnprocessableEntity)
		return
	}
	ctx, done, err := d.turn.take(r.Context(), &q)
	if err != nil {
		return
	}
	defer done()
	p := q.Papers
	page, err := lookahead.Page(ctx, now.voyage, lookahead.Papers{Log: *p.Log.file(), Cores: p.Cores.file(), State: p.State.file(), Forecast: p.Forecast.file()},
		sim.Run{Seed: seed, Replications: q.replications()})
	if errors.Is(context.Cause(ctx), errSuperseded) {
		http.Error(w, "Ended: the plan was changed, or another window asked.", http.StatusConflict)
		return
	}
	var whole bytes.Buffer
	if err == nil {
		err = mornings.Print(&whole, page)
	}
	var charts []chartSaid
	if err == nil {
		charts, err = allSaid(chart.Morning(page))
	}
	if err != nil {
		http.Error(w, err.Error(), http.StatusUnprocessableEntity)
		return
	}
	say(w, http.StatusOK, map[string]any{"text": whole.String(), "charts": charts})
}
