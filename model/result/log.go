package result

import (
	"slices"
	"time"

	"coredays/model/unit"
)

// Log is what a ship really did, as her crew wrote it down.
type Log struct {
	File  string
	Lines []LogLine // in the order of time
	Notes []string  // what in it is worth a second look
}

// LogLine is one line of a log.
type LogLine struct {
	From       time.Time  // when it began
	Site, Hole string     // Hole is a hole or task, empty where none is in hand; both are empty under way
	Depth      unit.Depth // of the hole when the line began, below the sea floor; not-a-number where it is not stated
}

// Stay is the time of a ship at one site.
type Stay struct {
	Arrives, Until time.Time // Until is the last that the log gives it
	Away           float64   // s that the ship was elsewhere between
	Ways           []Way     // of the holes, in the order in which they were begun; that in hand to the end of the log
}

// Way is how a hole was deepened.
type Way struct {
	Hole   string
	Points []WayPoint // in the order of time; the depth never decreases
}

// WayPoint is how deep a hole was at some time.
type WayPoint struct {
	After float64 // s at the site since arriving there
	Depth unit.Depth
}

// At gathers what a log gives a site; false where it says nothing. The ship arrives with the first
// line of the site; while she is elsewhere its time stands still.
func (l *Log) At(site string) (stay Stay, visited bool) {
	var left time.Time
	for _, line := range l.Lines {
		switch {
		case line.Site != site:
			if visited && left.IsZero() {
				left = line.From
			}
			continue
		case !visited:
			stay.Arrives, visited = line.From, true
		case !left.IsZero():
			stay.Away += line.From.Sub(left).Seconds()
			left = time.Time{}
		}
		stay.Until = line.From
		if line.Hole != "" && line.Depth >= 0 {
			stay.deepen(line)
		}
	}
	for i := range stay.Ways {
		if last := l.Lines[len(l.Lines)-1]; last.Site != site || last.Hole != stay.Ways[i].Hole {
			stay.Ways[i].end()
		}
	}
	return stay, visited
}

// deepen adds a line to the way of its hole, which never gets shallower.
func (s *Stay) deepen(line LogLine) {
	n := slices.IndexFunc(s.Ways, func(w Way) bool { return w.Hole == line.Hole })
	if n < 0 {
		n, s.Ways = len(s.Ways), append(s.Ways, Way{Hole: line.Hole})
	}
	w := &s.Ways[n]
	point := WayPoint{line.From.Sub(s.Arrives).Seconds() - s.Away, max(line.Depth, w.Deepest())}
	if last := len(w.Points) - 1; last > 0 && w.Points[last].Depth == point.Depth && w.Points[last-1].Depth == point.Depth {
		w.Points[last] = point // it went on at the same depth
		return
	}
	w.Points = append(w.Points, point)
}

// end takes away what a hole that is done with lay at its depth.
func (w *Way) end() {
	if last := len(w.Points) - 1; last > 0 && w.Points[last-1].Depth == w.Points[last].Depth {
		w.Points = w.Points[:last]
	}
}

// Deepest is how deep the hole was at last; 0 before it was begun.
func (w *Way) Deepest() unit.Depth {
	if len(w.Points) == 0 {
		return 0
	}
	return w.Points[len(w.Points)-1].Depth
}

const (
	// nearly is how far above a depth a hole counts as having come to it, m: the shortest core worth a
	// cycle [common practice], as where it is simulated.
	nearly = 0.5
	// stepwise is by how much a hole gets deeper at once, m: a full core or a joint is 9.5 m, and a line may be
	// missing. What is logged at wider steps is taken to have gone evenly.
	stepwise = 20
)

// CameTo is when the hole was first so deep, s after arriving at the site; false where it never was.
func (w *Way) CameTo(depth unit.Depth) (after float64, came bool) {
	for i, p := range w.Points {
		if p.Depth < depth-nearly {
			continue
		}
		if i == 0 || p.Depth-w.Points[i-1].Depth <= stepwise || p.Depth < depth {
			return p.After, true
		}
		before := w.Points[i-1]
		return before.After + (p.After-before.After)*float64((depth-before.Depth)/(p.Depth-before.Depth)), true
	}
	return 0, false
}
