package rates

import (
	"math"
	"time"

	"coredays/model/activity"
	"coredays/model/riglog"
)

// work is one piece of work: the lines of a log that belong to it, with what came between taken out.
type work struct {
	kind           activity.Kind
	also           []activity.Kind // of a line that lumps, the others
	from, to       time.Time
	seconds        float64 // worked
	site, hole     string
	bitFrom, bitTo float64 // m below the sea surface, not a number where they are not stated
	stands         float64
	depth          float64 // of the hole, m below the sea floor
	lines          []*riglog.Line
	open           bool // it was in hand when the log ended
}

// each are kinds of which two lines in a row are two pieces of work even with a storm between them.
var each = map[activity.Kind]bool{activity.Connection: true, activity.ShootPiston: true, activity.CutCore: true, activity.HandleCorer: true, activity.HandleBarrel: true,
	activity.RunBarrel: true, activity.FetchCorer: true, activity.DropBarrel: true, activity.FetchBarrel: true, activity.PullPiston: true,
	activity.TemperatureStop: true, activity.OrientationWait: true, activity.Sweep: true, activity.FailedStart: true, activity.WaterCore: true, activity.Breakdown: true}

// worksOf puts the lines of a log together into pieces of work. Lines without a meaning, and the hours of lines that
// repeat others, belong to none.
func worksOf(lines []riglog.Line) (works []work) {
	last := -1 // the work that may go on after weather or repairs
	var between bool
	for i := range lines {
		l := &lines[i]
		if !l.Mapped {
			last = -1
			continue
		}
		if idle(l) {
			between = true
			if l.Doing[0] == activity.Breakdown || l.Doing[0] != activity.WaitOnWeather {
				works = append(works, begun(l))
			}
			continue
		}
		if last >= 0 && between && goesOn(&works[last], l) {
			works[last].goOn(l)
			between = false
			continue
		}
		works = append(works, begun(l))
		last, between = len(works)-1, false
	}
	if last >= 0 && len(lines) > 0 && works[last].lines[len(works[last].lines)-1] == &lines[len(lines)-1] {
		works[last].open = true
	}
	return works
}

// idle tells whether a line is waiting or trouble alone.
func idle(l *riglog.Line) bool {
	for _, k := range l.Doing {
		if c := k.Of().Class; c != activity.Waiting && c != activity.Repair {
			return false
		}
	}
	return true
}

func begun(l *riglog.Line) work {
	return work{kind: l.Doing[0], also: l.Doing[1:], from: l.From, to: l.To, seconds: l.To.Sub(l.From).Seconds(), site: l.Site, hole: l.Hole,
		bitFrom: float64(l.BitFrom), bitTo: float64(l.BitTo), stands: l.Stands, depth: float64(l.Depth), lines: []*riglog.Line{l}}
}

// goesOn tells whether a line goes on with a piece of work that weather or repairs stopped.
func goesOn(w *work, l *riglog.Line) bool {
	return len(w.also) == 0 && len(l.Doing) == 1 && w.kind == l.Doing[0] && !each[w.kind] && w.site == l.Site && w.hole == l.Hole
}

func (w *work) goOn(l *riglog.Line) {
	w.to = l.To
	w.seconds += l.To.Sub(l.From).Seconds()
	if !math.IsNaN(float64(l.BitTo)) {
		w.bitTo = float64(l.BitTo)
	}
	if !math.IsNaN(l.Stands) {
		w.stands += l.Stands
	}
	w.lines = append(w.lines, l)
}

// hours of a piece of work.
func (w *work) hours() float64 { return w.seconds / 3600 }

// resolutions are those to which people write times, s, the coarsest first.
var resolutions = []int64{3600, 1800, 900, 360, 300, 60}

// mostExact is the share of the times that must lie on a resolution for it to be the one of the log [judgement].
const mostExact = 0.9

// rounding is the standard deviation of a duration from two times written to the log's resolution, s: each is off by a
// uniform error, of variance w²/12.
func rounding(lines []riglog.Line) float64 {
	for _, r := range resolutions {
		on := 0
		for i := range lines {
			if lines[i].From.Unix()%r == 0 {
				on++
			}
		}
		if len(lines) > 0 && float64(on) >= mostExact*float64(len(lines)) {
			return float64(r) * math.Sqrt(2.0/12)
		}
	}
	return math.Sqrt(2.0 / 12)
}
