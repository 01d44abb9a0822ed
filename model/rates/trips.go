package rates

import (
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
)

// trips knows how deep pipe has been: above that it is strapped and drifted.
type trips struct {
	drifted float64 // m below the sea surface
}

func newTrips() *trips { return &trips{} }

func isTrip(k activity.Kind) bool {
	return k == activity.RunPipe || k == activity.PullPipe || k == activity.RunInHole || k == activity.PullFromHole
}

func tripRate(k activity.Kind) rig.Rate {
	if k == activity.RunInHole || k == activity.PullFromHole {
		return rig.TrippingInHole
	}
	return rig.Tripping
}

// standsOf is how many stands a piece of work moved: as counted, or by the depths of the bit.
func (t *trips) standsOf(w *work, g *gatherer) float64 {
	if !math.IsNaN(w.stands) {
		return w.stands
	}
	return math.Abs(w.bitTo-w.bitFrom) / g.median(rig.StandLength)
}

// extra is what a trip down takes beside the running of its stands: filling, and strapping what goes down for the
// first time. Where the depths are not known nobody can tell what was strapped before.
func (t *trips) extra(w *work, k activity.Kind, stands float64, g *gatherer) (seconds, sd float64) {
	down := k == activity.RunPipe || k == activity.RunInHole
	if !down {
		return 0, 0
	}
	fills := math.Floor(stands / g.median(rig.StandsBetweenFills))
	fresh := 0.0
	if !math.IsNaN(w.bitTo) {
		fresh = math.Max(0, w.bitTo-math.Max(t.drifted, w.bitFrom)) / g.median(rig.StandLength)
	} else if t.drifted == 0 {
		fresh = stands
	}
	seconds = fills*g.median(rig.Filling) + fresh*g.median(rig.Strapping)
	return seconds, math.Hypot(fills*g.sd(rig.Filling), fresh*g.sd(rig.Strapping))
}

// sample turns the time of a trip into its rate. What is not the running of stands is taken off; its spread is an
// error of the rate.
func (t *trips) sample(w *work, g *gatherer, p part, s sample) sample {
	stands := t.standsOf(w, g)
	kind := w.kind
	for _, k := range append([]activity.Kind{w.kind}, w.also...) {
		if isTrip(k) && tripRate(k) == p.rate {
			kind = k
		}
	}
	extra, sd := t.extra(w, kind, stands, g)
	running := s.value - extra
	if running <= 0 {
		s.value = 0
		return s
	}
	s.err = math.Hypot(s.err, sd) * stands / (running * running) // derivative of stands over time
	s.value, s.exposure = stands/running, stands
	s.along = math.Max(w.bitFrom, w.bitTo)
	return s
}

// moved notes how deep the pipe was.
func (t *trips) moved(w *work) {
	for _, depth := range []float64{w.bitFrom, w.bitTo} {
		if !math.IsNaN(depth) {
			t.drifted = math.Max(t.drifted, depth)
		}
	}
}
