// Package rates turns what a rig wrote down into her rates, each with an honest spread.
//
// Work is put together from the lines of a log, with weather and repairs between its parts taken out. Cycles come from
// the times on deck of a core table. What was in hand when the log ended counts as lasting at least so long. A line
// that lumps several things says of each what is left when the others take their usual time, with their spread as its
// error. Few data leave the ship's figures where they are, many move them: by the levels at which each spread lives,
// through model/learn. Trouble is counted over its exposure instead of slowing the pace.
package rates

import (
	"time"

	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
)

// Triple is a low, an even and a high value: 1 in 10, 5 in 10, 9 in 10. SI.
type Triple [3]float64

// Rate is what was learned of one of the ship's rates.
type Rate struct {
	Of         rig.Rate
	N          int     // observations
	Bounds     int     // of which only a bound is known
	Exposure   float64 // how much work they are
	Unit       string  // of the exposure: stands, cores, h
	Ship       Triple
	Log        Triple
	Use        Triple
	Shares     spread.Shares // of the variance of Use, by level
	Persists   float64       // correlation of one run with the next
	Identified bool          // the log tells this rate apart from others
	Why        string        // why it is not identified, or hardly moves; empty otherwise
	From, To   time.Time     // of what it was learned from
	Points     []Point
	Along      string // what the X of the points is
}

// Point is an observation, for a chart.
type Point struct {
	X, Y  float64 // Y in SI
	Bound bool    // only a bound is known
}

// Moved is how far the median moved from the ship's, as a share of it.
func (r *Rate) Moved() float64 {
	if r.Ship[1] == 0 {
		return 0
	}
	return r.Use[1]/r.Ship[1] - 1
}

// Event is something that happens now and then, counted over its exposure.
type Event struct {
	Kind     string
	Count    int
	Exposure float64
	Unit     string     // of the exposure
	Interval [2]float64 // of the rate for each unit, 95 %
}

// PerUnit is how often it happened for each unit of exposure.
func (e *Event) PerUnit() float64 { return float64(e.Count) / e.Exposure }

// Result is all that was learned from the papers of a rig.
type Result struct {
	Rates    []Rate
	Cycles   []Cycles
	Events   []Event
	Total    float64 // h of the log
	Used     float64 // h from which something was learned
	LeftOut  []riglog.Note
	Days     []riglog.Day
	Unmapped []riglog.Words
	Files    []string
	Cores    int
	From, To time.Time
}

// Find is what was learned of a rate.
func (r *Result) Find(of rig.Rate) (*Rate, bool) {
	for i := range r.Rates {
		if r.Rates[i].Of == of {
			return &r.Rates[i], true
		}
	}
	return nil, false
}
