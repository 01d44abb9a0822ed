package desk

import (
	"context"
	"embed"
	"errors"
	"io/fs"
	"net"
	"net/http"
	"time"
)

//go:embed page
var files embed.FS

// Desk is one plan on the desk.
type Desk struct {
	Report, Workbook Write
	// Dates reads dates of sailing to try.
	Dates    func(text string, sails time.Time) ([]time.Time, error)
	secret   string
	turn     turn
	presence *presence
	shelf
}

// New lays the scenario in a file on the desk, or the demonstration where the name is empty.
func New(file string) *Desk {
	return &Desk{secret: newSecret(), turn: newTurn(), presence: &presence{windows: map[string]window{}}, shelf: shelf{file: file}}
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
	for what, answer := range map[string]http.HandlerFunc{
		"open": d.open, "read": d.read, "edit": d.edit, "save": d.save, "here": d.here,
		"answer": d.answer, "search": d.search, "morning": d.morning,
		"report":   d.written(func() Write { return d.Report }, "text/html; charset=utf-8"),
		"workbook": d.written(func() Write { return d.Workbook }, "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
	} {
		mux.HandleFunc("POST /"+what, answer)
	}
	return guard{d.secret, make(chan struct{}, mostCalls), mux}
}

// Serve answers on a listener of the loopback until the context ends. Where a window then has something
// unsaved, ask is called and the desk goes on until that is saved or its window closed.
func (d *Desk) Serve(ctx context.Context, l net.Listener, ask func()) error {
	work, stop := context.WithCancel(context.WithoutCancel(ctx))
	defer stop()
	s := &http.Server{
		Handler: d.Handler(), ReadHeaderTimeout: 5 * time.Second, ReadTimeout: 30 * time.Second, IdleTimeout: 2 * time.Minute,
		MaxHeaderBytes: 64 << 10, BaseContext: func(net.Listener) context.Context { return work },
	}
	defer context.AfterFunc(ctx, func() {
		d.untilSaved(ask)
		d.saving.Lock() // what is being saved is saved
		defer d.saving.Unlock()
		stop()
		s.Close()
	})()
	if err := s.Serve(l); !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}

// untilSaved asks where something is unsaved, and waits until nothing is.
func (d *Desk) untilSaved(ask func()) {
	if !d.presence.unsaved(time.Now()) {
		return
	}
	d.presence.asksFirst()
	ask()
	for d.presence.unsaved(time.Now()) {
		time.Sleep(100 * time.Millisecond)
	}
}
