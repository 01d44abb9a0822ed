package progress

import (
	"io"
	"os"
	"sync"
	"time"

	"github.com/cheggaaa/pb/v3"
	"golang.org/x/term"
)

// Line shows on a terminal how far a simulation is, on one line that it draws anew and in the end wipes
// out. On anything else than a terminal it shows nothing. It uses no colour, so that there is none to
// turn off. Its methods may be called from several goroutines, and on nil.
type Line struct {
	bar *pb.ProgressBar // nil: silent

	mutex sync.Mutex
	done  int
}

// redrawn is how long a line stands at least.
const redrawn = time.Second / 10

// Shown is the count, a bar, the speed and the time that is left. The bar gives way on a narrow terminal.
const (
	shown        = `{{counters . "%s of %s replications"}} {{bar . }} {{speed . "%s/s" " "}} {{rtime . "%s left" " " " "}}`
	shownEndless = `{{counters . "" "%[1]s replications"}} {{bar . }} {{speed . "%s/s" " "}}`
)

// New begins to show the progress towards a total of replications on a terminal; zero stands for a
// total that is not known.
func New(w *os.File, total int) *Line {
	if w == nil || !term.IsTerminal(int(w.Fd())) {
		return &Line{}
	}
	width, _, err := term.GetSize(int(w.Fd()))
	if err != nil || width < 1 {
		width = 80
	}
	return begin(w, total, width)
}

// begin shows a line on a terminal of some width. One as wide as the terminal would begin a second.
func begin(w io.Writer, total, width int) *Line {
	template := shown
	if total <= 0 {
		template = shownEndless
	}
	bar := pb.New(total).SetTemplateString(template).SetRefreshRate(redrawn).SetWidth(max(1, width-1))
	bar.Set(pb.Terminal, true).Set(pb.Color, false).Set(pb.CleanOnFinish, true)
	return &Line{bar: bar.SetWriter(w).Start()}
}

// Done says that n replications are done so far, all in all. A smaller count than an earlier one,
// as goroutines may report in any order, changes nothing.
func (l *Line) Done(n int) {
	if l == nil || l.bar == nil {
		return
	}
	l.mutex.Lock()
	defer l.mutex.Unlock()
	if n > l.done {
		l.done = n
		l.bar.SetCurrent(int64(n))
	}
}

// Close wipes the line out, for the answer to stand alone.
func (l *Line) Close() {
	if l != nil && l.bar != nil {
		l.bar.Finish()
	}
}
