package desk

import (
	"context"
	"embed"
	"encoding/json"
	"errors"
	"io"
	"io/fs"
	"net"
	"net/http"
	"time"

	"coredays/model/voyage"
	"coredays/scenario/edit"
	"coredays/sim/statistics"
)

//go:embed page
var files embed.FS

// Write writes what a simulation comes to as a report or a workbook.
type Write func(ctx context.Context, to io.Writer, v *voyage.Voyage, r *statistics.Results, warnings []string, invented bool) error

// Desk is one plan on the desk.
type Desk struct {
	Report, Workbook Write
	secret           string
	turn             turn
	shelf
}

// New lays the scenario in a file on the desk, or the demonstration where the name is empty.
func New(file string) *Desk {
	return &Desk{secret: newSecret(), turn: newTurn(), shelf: shelf{file: file}}
}

// Path is that of the page, with the secret.
func (d *Desk) Path() string { return "/" + d.secret + "/" }

// Handler answers the page.
func (d *Desk) Handler() http.Handler {
	mux := http.NewServeMux()
	page, err := fs.Sub(files, "page")
	if err != nil {
		panic(err) // it is built in
	}
	mux.Handle("GET /", http.FileServerFS(page))
	mux.HandleFunc("POST /open", d.open)
	mux.HandleFunc("POST /read", d.read)
	mux.HandleFunc("POST /edit", d.edit)
	mux.HandleFunc("POST /save", d.save)
	mux.HandleFunc("POST /answer", d.answer)
	mux.HandleFunc("POST /search", d.search)
	mux.HandleFunc("POST /report", d.written(func() Write { return d.Report }, "text/html; charset=utf-8"))
	mux.HandleFunc("POST /workbook", d.written(func() Write { return d.Workbook }, "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"))
	return guard{d.secret, make(chan struct{}, mostCalls), mux}
}

// Serve answers on a listener of the loopback until the context ends.
func (d *Desk) Serve(ctx context.Context, l net.Listener) error {
	s := &http.Server{
		Handler: d.Handler(), ReadHeaderTimeout: 5 * time.Second, ReadTimeout: 30 * time.Second, IdleTimeout: 2 * time.Minute,
		MaxHeaderBytes: 64 << 10, BaseContext: func(net.Listener) context.Context { return ctx },
	}
	defer context.AfterFunc(ctx, func() { s.Close() })()
	if err := s.Serve(l); !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}

// question is what the page sends.
type question struct {
	Text   string `json:"text"`   // of the plan on the page
	Pinned string `json:"pinned"` // text of the plan to tell the difference to; empty for none
	Path   string `json:"path"`   // to edit
	Value  string `json:"value"`
	Digest string `json:"digest"` // of the file as the page last knew it
	Name   string `json:"name"`   // to save under, beside the scenario; empty for its own
	Search string `json:"search"` // orders or cuts
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

func (d *Desk) edit(w http.ResponseWriter, r *http.Request) {
	q, ok := asked(w, r)
	if !ok {
		return
	}
	changed, err := edit.Set([]byte(q.Text), q.Path, q.Value)
	if err != nil {
		say(w, http.StatusUnprocessableEntity, map[string]string{"error": err.Error()})
		return
	}
	say(w, http.StatusOK, map[string]string{"text": string(changed)})
}
