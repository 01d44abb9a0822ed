package rigchannel

import (
	"math"

	"coredays/model/riglog"
)

// WireRun is a run of the coring line one way.
type WireRun struct {
	From, To float64 // s since the recording began
	Metres   float64 // line let out; below 0 where it was brought in
}

// Speed is that of the run as a whole, m/s.
func (w *WireRun) Speed() float64 { return math.Abs(w.Metres) / (w.To - w.From) }

// How the line is looked at [judgement]: slower than creeping it stands, a stop shorter than a breath is part of the run,
// and shorter runs than the shortest are work at the rig floor or at the bottom.
const (
	creeping    = 0.2   // m/s
	breath      = 30.0  // s
	shortestRun = 300.0 // m
	lineWindow  = 5.0   // s on either side over which the speed is taken
)

// WireRuns are the runs of the coring line in a recording that has its length out, none otherwise.
func WireRuns(r *riglog.Recording) (runs []WireRun) {
	if len(r.Wire) != len(r.Time) || len(r.Time) < 2 {
		return nil
	}
	at, out := stated(r.Time, r.Wire)
	if len(at) < 2 {
		return nil
	}
	out = medianOver(at, out, spike)
	var run WireRun
	var way, began float64 // direction of the run in hand, 0 for none, and line out when it began
	close := func() {
		if way != 0 && math.Abs(run.Metres) >= shortestRun {
			runs = append(runs, run)
		}
		way = 0
	}
	from, to := 0, 0
	for i := range at {
		for at[from] < at[i]-lineWindow {
			from++
		}
		for to < len(at)-1 && at[to+1] <= at[i]+lineWindow {
			to++
		}
		speed := 0.0
		if to > from {
			speed = (out[to] - out[from]) / (at[to] - at[from])
		}
		moving := math.Abs(speed) >= creeping
		if way != 0 && (moving && speed*way < 0 || at[i]-run.To > breath) {
			close()
		}
		if !moving {
			continue
		}
		if way == 0 {
			run, way, began = WireRun{From: at[i]}, speed, out[i]
		}
		run.To, run.Metres = at[i], out[i]-began
	}
	close()
	return runs
}

// stated leaves out the samples that the channel does not have.
func stated(time, channel []float64) (at, x []float64) {
	for i := range channel {
		if !math.IsNaN(channel[i]) {
			at, x = append(at, time[i]), append(x, channel[i])
		}
	}
	return at, x
}
