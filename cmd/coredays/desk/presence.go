package desk

import (
	"net/http"
	"sync"
	"time"
)

// forgottenAfter is how long a window that says nothing counts as open: browsers let the timers of
// hidden windows run once a minute.
const forgottenAfter = 3 * time.Minute

// presence is who sits at the desk: windows of the page, and whether each has something unsaved.
type presence struct {
	mu      sync.Mutex
	windows map[string]window
	ending  bool // Ctrl-C came, and something is unsaved
}

type window struct {
	unsaved bool
	seen    time.Time
}

// mostWindows are remembered, by names of so many bytes.
const (
	mostWindows = 100
	longestName = 64
)

// note remembers what a window says of itself.
func (p *presence) note(name string, unsaved, gone bool, at time.Time) (ending bool) {
	p.mu.Lock()
	defer p.mu.Unlock()
	for other, w := range p.windows {
		if at.Sub(w.seen) > forgottenAfter {
			delete(p.windows, other)
		}
	}
	if gone {
		delete(p.windows, name)
	} else if _, known := p.windows[name]; known || len(p.windows) < mostWindows {
		p.windows[name] = window{unsaved, at}
	}
	return p.ending
}

// unsaved reports whether a window has something that is in no file.
func (p *presence) unsaved(at time.Time) bool {
	p.mu.Lock()
	defer p.mu.Unlock()
	for _, w := range p.windows {
		if w.unsaved && at.Sub(w.seen) <= forgottenAfter {
			return true
		}
	}
	return false
}

// asksFirst has the windows told that the desk would end.
func (p *presence) asksFirst() {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.ending = true
}

// here takes what a window says of itself, and says whether its file is still the one that it knows.
func (d *Desk) here(w http.ResponseWriter, r *http.Request) {
	q, ok := asked(w, r)
	if !ok {
		return
	}
	if len(q.Window) > longestName {
		http.Error(w, "a window with a short name", http.StatusUnprocessableEntity)
		return
	}
	answer := struct {
		Digest string `json:"digest"` // of the file; empty where it can't be read
		File   string `json:"file"`
		Ending bool   `json:"ending"`
	}{Ending: d.presence.note(q.Window, q.Unsaved, q.Gone, time.Now())}
	if data, err := d.text(); err == nil {
		answer.Digest = digestOf(data)
	}
	if !d.invented() {
		answer.File = d.name()
	}
	say(w, http.StatusOK, answer)
}
