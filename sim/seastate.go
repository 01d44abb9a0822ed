package sim

import (
	"time"

	"coredays/model/chance"
	"coredays/model/sea"
	"coredays/model/voyage"
)

// weather is the sea around the ship. It goes on by the calendar, whatever the place: the ship
// meets the same sea at the same place and date in whatever order she comes there.
type weather struct {
	series  []sea.Series // by course of the voyage
	ahead   int          // steps between the beginning of the sea and sailing
	course  int          // of the place
	waves   *sea.Table   // of the place
	firstAt float64      // s of the year at which step 0 begins
	height  float64      // significant wave height now, m
	calm    bool         // no sea at all: the crew's estimates
	forced  []float64    // heights hour by hour in place of chance, the last for ever; nil for chance
	known   *seaKnown    // what is known of it; nil for nothing
}

// begin begins the seas of a replication: at sailing, or at an earlier moment that several
// voyages share, so that they meet the same sea on the same date whenever they sail.
func (w *weather) begin(v *voyage.Voyage, stream chance.Source) {
	start := v.Plan.Sails
	w.ahead = 0
	if !v.SeaFrom.IsZero() {
		w.ahead = int(start.Sub(v.SeaFrom).Seconds() / seaStep)
		start = start.Add(-time.Duration(w.ahead) * time.Duration(seaStep) * time.Second)
	}
	for i := range w.series {
		w.series[i].Begin(v.Courses[i], stream, start)
	}
}

// copyFrom makes the seas a copy of others that go on by themselves.
func (w *weather) copyFrom(o *weather) {
	for i := range w.series {
		w.series[i].CopyFrom(&o.series[i])
	}
}

// score is the standard normal score of a step where the ship is.
func (w *weather) score(step int) float64 {
	score := w.series[w.course].Score(step + w.ahead)
	if w.known != nil {
		score = w.known.bent(step, score)
	}
	return score
}

// now is the significant wave height at a step where the ship is, m.
func (w *weather) now(step int) float64 {
	if w.calm || len(w.forced) > 0 {
		return w.at(step, 0)
	}
	if w.known != nil {
		return w.at(step, w.score(step))
	}
	return w.series[w.course].Height(step+w.ahead, w.waves)
}

// at is the significant wave height at a step where the ship is if the score were as given, m.
func (w *weather) at(step int, score float64) float64 {
	if w.calm {
		return 0
	}
	if n := len(w.forced); n > 0 {
		return w.forced[min(step, n-1)]
	}
	return w.waves.Height(w.series[w.course].Day(step+w.ahead), score)
}
