package ship

import (
	"time"

	"coredays/model/chance"
	"coredays/model/sea"
	"coredays/model/voyage"
)

// Weather is the sea around the ship. It goes on by the calendar, whatever the place: the ship
// meets the same sea at the same place and date in whatever order she comes there.
type Weather struct {
	Series  []sea.Series // by course of the voyage
	Ahead   int          // steps between the beginning of the sea and sailing
	Course  int          // of the place
	Waves   *sea.Table   // of the place
	FirstAt float64      // s of the year at which step 0 begins
	Height  float64      // significant wave height now, m
	Calm    bool         // no sea at all: the crew's estimates
	Forced  []float64    // heights hour by hour in place of chance, the last for ever; nil for chance
	Known   *SeaKnown    // what is known of it; nil for nothing
}

// Begin begins the seas of a replication: at sailing, or at an earlier moment that several
// voyages share, so that they meet the same sea on the same date whenever they sail.
func (w *Weather) Begin(v *voyage.Voyage, stream chance.Source) {
	start := v.Plan.Sails
	w.Ahead = 0
	if !v.SeaFrom.IsZero() {
		w.Ahead = int(start.Sub(v.SeaFrom).Seconds() / SeaStep)
		start = start.Add(-time.Duration(w.Ahead) * time.Duration(SeaStep) * time.Second)
	}
	for i := range w.Series {
		w.Series[i].Begin(v.Courses[i], stream, start)
	}
}

// copyFrom makes the seas a copy of others that go on by themselves.
func (w *Weather) copyFrom(o *Weather) {
	for i := range w.Series {
		w.Series[i].CopyFrom(&o.Series[i])
	}
}

// Score is the standard normal score of a step where the ship is.
func (w *Weather) Score(step int) float64 {
	score := w.Series[w.Course].Score(step + w.Ahead)
	if w.Known != nil {
		score = w.Known.bent(step, score)
	}
	return score
}

// Now is the significant wave height at a step where the ship is, m.
func (w *Weather) Now(step int) float64 {
	if w.Calm || len(w.Forced) > 0 {
		return w.At(step, 0)
	}
	if w.Known != nil {
		return w.At(step, w.Score(step))
	}
	return w.Series[w.Course].Height(step+w.Ahead, w.Waves)
}

// At is the significant wave height at a step where the ship is if the score were as given, m.
func (w *Weather) At(step int, score float64) float64 {
	if w.Calm {
		return 0
	}
	if n := len(w.Forced); n > 0 {
		return w.Forced[min(step, n-1)]
	}
	return w.Waves.Height(w.Series[w.Course].Day(step+w.Ahead), score)
}
