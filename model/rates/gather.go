package rates

import (
	"fmt"
	"math"
	"time"

	"coredays/model/activity"
	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
)

// sample is one observation of a rate.
type sample struct {
	site, hole string
	from, to   time.Time
	value      float64
	bound      learn.Bound
	err        float64
	run        int
	exposure   float64
	along      float64 // for the chart: depth, or the number of the observation
}

// gatherer collects observations of all rates.
type gatherer struct {
	ship    [rig.Rates]spread.Quantity
	samples [rig.Rates][]sample
	unit    [rig.Rates]string
	axis    [rig.Rates]string
	why     [rig.Rates]string // why something could not be learned
	off     float64           // standard deviation of a logged duration, s
	left    []riglog.Note
	used    map[*riglog.Line]bool
}

// median and sd of the ship's figure.
func (g *gatherer) median(r rig.Rate) float64 { return g.ship[r].Median() }

func (g *gatherer) sd(r rig.Rate) float64 { return deviation(&g.ship[r]) }

// deviation is the standard deviation of a quantity as far as its low and high values tell, which are 2.563 of them
// apart in a normal spread.
func deviation(q *spread.Quantity) float64 {
	if q.IsFixed() {
		return 0
	}
	return (q.Shape.Quantile(0.9) - q.Shape.Quantile(0.1)) / (2 * spread.Score(0.9))
}

// add notes an observation.
func (g *gatherer) add(r rig.Rate, s sample, unit string) {
	if !(s.value > 0) || math.IsInf(s.value, 0) {
		return
	}
	g.unit[r] = unit
	g.samples[r] = append(g.samples[r], s)
}

// uses marks the lines of a piece of work as used.
func (g *gatherer) uses(w *work) {
	for _, l := range w.lines {
		g.used[l] = true
	}
}

// leave notes why a piece of work says nothing.
func (g *gatherer) leave(w *work, why string) {
	l := w.lines[0]
	g.left = append(g.left, riglog.Note{File: l.File, Row: l.Row, Why: why})
}

// takes are the rates that are simply how long something takes.
var takes = map[activity.Kind]rig.Rate{
	activity.Pilotage: rig.Pilotage, activity.Position: rig.Positioning, activity.Secure: rig.Securing, activity.LayDownBHA: rig.LayDown,
	activity.TopDrive: rig.TopDrive, activity.SlipAndCut: rig.SlipAndCut, activity.RigService: rig.RigService, activity.OffsetMove: rig.OffsetMove,
	activity.MudlineReset: rig.MudlineReset, activity.OrientationWait: rig.OrientationWait, activity.TemperatureStop: rig.TemperatureStop,
	activity.Connection: rig.Connection, activity.DrillOver: rig.DrillOver, activity.Sweep: rig.Sweep, activity.ConditionHole: rig.HoleConditioning,
	activity.ReleaseBit: rig.BitRelease, activity.RigUpLogging: rig.LoggingRigUp, activity.RigDownLogging: rig.LoggingRigDown,
	activity.ChangeString: rig.StringChange, activity.DropFunnel: rig.FunnelDrop, activity.HeavyMud: rig.HeavyMud, activity.CementPlug: rig.CementPlug,
	activity.FailedStart: rig.FailedStartTime, activity.Breakdown: rig.RepairTime, activity.StuckPipe: rig.StuckTime, activity.SeverPipe: rig.Severing,
}

// duration is the rate whose value is how long a kind of work takes; assemblies hang on the tool.
func (g *gatherer) duration(w *work, k activity.Kind, stabbed map[[2]string]bool, rotary func(*work) (bool, bool)) (r rig.Rate, known bool) {
	switch k {
	case activity.MakeUpBHA:
		turning, known := rotary(w)
		if !known {
			return 0, false
		}
		if turning {
			return rig.RotaryMakeUp, true
		}
		return rig.PistonMakeUp, true
	case activity.Stab:
		if place := [2]string{w.site, w.hole}; !stabbed[place] {
			stabbed[place] = true
			return rig.FirstStab, true
		}
		return rig.NextStab, true
	}
	r, known = takes[k]
	return r, known
}

// part is what one of the things that a line lumps usually takes: mean and variance, s.
type part struct {
	rate     rig.Rate
	trip     bool
	mean, va float64
}

// parts are all things that a line does; not known where one of them, which is told, has no usual time.
func (g *gatherer) parts(w *work, stabbed map[[2]string]bool, rotary func(*work) (bool, bool), t *trips) (list []part, missing activity.Kind, known bool) {
	for _, k := range append([]activity.Kind{w.kind}, w.also...) {
		if isTrip(k) {
			stands := t.standsOf(w, g)
			r := tripRate(k)
			if math.IsNaN(stands) || stands <= 0 {
				return nil, k, false
			}
			extra, sd := t.extra(w, k, stands, g)
			rate := g.median(r)
			spreads := stands * g.sd(r) / (rate * rate)
			list = append(list, part{r, true, stands/rate + extra, spreads*spreads + sd*sd})
			continue
		}
		r, known := g.duration(w, k, stabbed, rotary)
		if !known {
			return nil, k, false
		}
		sd := g.sd(r)
		list = append(list, part{r, false, g.median(r), sd * sd})
	}
	return list, w.kind, true
}

// read takes in the works of a log.
func (g *gatherer) read(works []work, rotary func(*work) (bool, bool)) {
	stabbed, t := map[[2]string]bool{}, newTrips()
	for i := range works {
		w := &works[i]
		list, missing, known := g.parts(w, stabbed, rotary, t)
		if !known {
			if (w.kind == activity.MakeUpBHA || isTrip(w.kind)) || len(w.also) > 0 {
				g.leave(w, whyUnknown(w, missing))
			}
			t.moved(w)
			continue
		}
		g.observe(w, list, t)
		t.moved(w)
	}
}

func whyUnknown(w *work, missing activity.Kind) string {
	switch {
	case isTrip(missing):
		return "a trip without stands, and without the bit's depths (bit_from_m, bit_to_m)"
	case len(w.also) > 0:
		return fmt.Sprintf("it lumps work together, of which %v has no usual time", missing)
	}
	return "the log does not tell which assembly was made up"
}

// observe says of each thing that a line does what is left when the others take their usual time.
func (g *gatherer) observe(w *work, list []part, t *trips) {
	bound := learn.Exactly
	if w.open {
		bound = learn.AtLeast
	}
	for i, p := range list {
		others, variance := 0.0, g.off*g.off*float64(len(w.lines))
		for j, q := range list {
			if j != i {
				others, variance = others+q.mean, variance+q.va
			}
		}
		seconds := w.seconds - others
		if seconds <= 0 {
			continue
		}
		if w.open && len(list) > 1 {
			continue // which of them is in hand nobody can tell
		}
		s := sample{site: w.site, hole: w.hole, from: w.from, to: w.to, value: seconds, bound: bound, err: math.Sqrt(variance), exposure: 1}
		unit := "times"
		if p.trip { // of a trip in hand its stands so far are known
			s.bound = learn.Exactly
			s, unit = t.sample(w, g, p, s), "stands"
		}
		g.add(p.rate, s, unit)
		g.uses(w)
	}
}
