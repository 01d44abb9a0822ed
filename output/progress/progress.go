package progress

import (
	"fmt"
	"io"
	"os"
	"strings"
	"sync"
	"time"

	"golang.org/x/term"

	"coredays/output/words"
)

// Line tells on a terminal how far a simulation is, on one line that it rewrites and in the
// end wipes out. On anything else than a terminal it says nothing. It uses no colour, so that there
// is none to turn off. Its methods may be called from several goroutines, and on nil.
type Line struct {
	out   io.Writer // nil: silent
	total int       // 0: not known beforehand
	width int
	now   func() time.Time // of the person who waits, not of the simulation

	mutex   sync.Mutex
	start   time.Time
	done    int
	next    int // count at which the line is rewritten
	longest int // of the lines so far, to wipe them out
}

// New begins to tell the progress towards a total of replications on a terminal; zero
// stands for a total that is not known.
func New(w *os.File, total int) *Line {
	if w == nil || !term.IsTerminal(int(w.Fd())) {
		return &Line{}
	}
	width, _, err := term.GetSize(int(w.Fd()))
	if err != nil || width < 1 {
		width = 80
	}
	return newProgress(w, total, width, time.Now)
}

func newProgress(out io.Writer, total, width int, now func() time.Time) *Line {
	return &Line{out: out, total: total, width: width, now: now, start: now()}
}

// Done says that n replications are done so far, all in all. A smaller count than an earlier one,
// as goroutines may report in any order, changes nothing.
func (p *Line) Done(n int) {
	if p == nil || p.out == nil {
		return
	}
	p.mutex.Lock()
	defer p.mutex.Unlock()
	if n <= p.done {
		return
	}
	p.done = n
	if n >= p.next {
		p.next = n + p.step()
		p.show(p.line(p.now().Sub(p.start)))
	}
}

// Close wipes the line out, for the answer to stand alone.
func (p *Line) Close() {
	if p == nil || p.out == nil {
		return
	}
	p.mutex.Lock()
	defer p.mutex.Unlock()
	p.show("")
	fmt.Fprint(p.out, "\r")
}

// step is a hundredth of the work, or of what is done where the total is not known.
func (p *Line) step() int { return max(p.total, p.done)/100 + 1 }

// line is what is told after a time of waiting.
func (p *Line) line(waited time.Duration) string {
	text := fmt.Sprintf("%d replications", p.done)
	if p.total > 0 {
		text = fmt.Sprintf("%d of %d replications", p.done, p.total)
	}
	rate := float64(p.done) / waited.Seconds()
	if !words.Defined(rate) {
		return text
	}
	text += ", " + words.Figures(rate) + "/s"
	if left := float64(p.total-p.done) / rate; p.total > p.done {
		text += ", " + wait(left) + " left"
	}
	return text
}

// wait tells a time of waiting in whole seconds, minutes or hours.
func wait(seconds float64) string {
	switch {
	case seconds < 90:
		return words.Fixed(seconds, 0) + " s"
	case seconds < 90*60:
		return words.Fixed(seconds/60, 0) + " min"
	}
	return words.Fixed(seconds/3600, 0) + " h"
}

// show puts a line over the one before; one as wide as the terminal would begin a second.
func (p *Line) show(line string) {
	if len(line) >= p.width {
		line = line[:p.width-1] // all ASCII
	}
	fmt.Fprint(p.out, "\r"+line+strings.Repeat(" ", max(0, p.longest-len(line))))
	p.longest = max(p.longest, len(line))
}
