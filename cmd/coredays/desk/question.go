package desk

import (
	"encoding/json"
	"errors"
	"net/http"

	"coredays/scenario/edit"
)

// question is what the page sends.
type question struct {
	Text    string   `json:"text"`   // of the plan on the page
	Pinned  string   `json:"pinned"` // text of the plan to tell the difference to; empty for none
	Edits   []change `json:"edits"`  // to make, one after the other
	Digest  string   `json:"digest"` // of the file as the page last knew it
	Name    string   `json:"name"`   // to save under, beside the scenario; empty for its own
	Search  string   `json:"search"` // orders, cuts or departures
	Dates   string   `json:"dates"`  // of sailing, to try
	Window  string   `json:"window"` // by which the page tells itself from others
	Number  int      `json:"number"` // of the questions of the window, counted up
	Unsaved bool     `json:"unsaved"`
	Gone    bool     `json:"gone"`   // the window closes
	Papers  papers   `json:"papers"` // of the ship
	Rough   bool     `json:"rough"`  // a first answer, of few replications
}

// asked reads a question; where it can't be, that is answered.
func asked(w http.ResponseWriter, r *http.Request) (q question, ok bool) {
	err := json.NewDecoder(r.Body).Decode(&q)
	if _, large := errors.AsType[*http.MaxBytesError](err); large {
		http.Error(w, "a plan of at most 4 MiB", http.StatusRequestEntityTooLarge)
		return q, false
	}
	if err != nil {
		http.Error(w, "no question in JSON", http.StatusBadRequest)
		return q, false
	}
	return q, true
}

// say answers with JSON.
func say(w http.ResponseWriter, code int, what any) {
	w.Header().Set("Content-Type", "application/json")
	w.WriteHeader(code)
	_ = json.NewEncoder(w).Encode(what) // to whom is gone there is nothing to say
}

// mostEdits are made at a time: taking over a cut makes some, putting an order together one.
const mostEdits = 200

// edit makes edits in a text, all or none.
func (d *Desk) edit(w http.ResponseWriter, r *http.Request) {
	q, ok := asked(w, r)
	if !ok {
		return
	}
	text := []byte(q.Text)
	for i, e := range q.Edits {
		changed, err := edit.Set(text, e.Path, e.Value)
		if err == nil && i == mostEdits {
			err = errors.New("too many edits at a time")
		}
		if err != nil {
			say(w, http.StatusUnprocessableEntity, map[string]string{"error": err.Error()})
			return
		}
		text = changed
	}
	say(w, http.StatusOK, map[string]string{"text": string(text)})
}
