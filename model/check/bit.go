package check

import (
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// bitLife looks at the rotating hours of a rotary hole. Without a funnel the hole is lost when its bit
// is worn: a second bit needs re-entry.
func (i *inspector) bitLife(s *voyage.Site, item *voyage.Item) {
	hours := i.rotaryHours(s, item.Hole)
	if hours == 0 {
		return
	}
	life := i.plan.Ship.Rates[rig.BitLife]
	even, low := life.Median()/3600, life.Shape.Quantile(0.1)/3600
	f := Finding{Site: s.Name, Hole: item.Name, What: "rotating hours on one bit, no funnel to come back with another", Verdict: between(hours, low, even),
		Value: hours, Limit: even, Unit: "h", Source: "bit life: " + life.Source}
	if f.Verdict == Caution {
		f.Limit, f.Source = low, "one bit in ten lasts no longer: "+life.Source
	}
	if item.Hole.Reentry == plan.Funnel {
		f.What, f.Verdict = "rotating hours against a bit's life; a funnel is planned", Pass
	}
	i.note(f)
}

// rotaryHours is the time that the rotary bit turns, drilling ahead and cutting cores, at even rates.
func (i *inspector) rotaryHours(s *voyage.Site, h *plan.Hole) (hours float64) {
	if len(h.Stages) > 0 && h.Stages[0].With.Assembly() != coring.RotaryBHA {
		return 0
	}
	ahead := float64(h.DrillAheadTo)
	through(s, 0, ahead, func(l ground.Lithology, metres float64) { hours += metres / l.Ahead.Median() / 3600 })
	if n := len(h.Stages); n > 0 {
		through(s, ahead, float64(h.Stages[n-1].To), func(l ground.Lithology, metres float64) { hours += metres / l.Rate.Median() / 3600 })
	}
	return hours
}

// through calls for each layer between two depths below the sea floor; the last goes on for ever.
func through(s *voyage.Site, from, to float64, call func(l ground.Lithology, metres float64)) {
	for n, layer := range s.Site.Layers {
		bottom := min(float64(layer.Bottom), to)
		if n == len(s.Site.Layers)-1 {
			bottom = to
		}
		if bottom > from {
			call(layer.Lithology, bottom-from)
			from = bottom
		}
	}
}
