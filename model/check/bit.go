package check

import (
	"coredays/model/coring"
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

// rotaryHours is the time that rotary cores are cut, at even rates.
func (i *inspector) rotaryHours(s *voyage.Site, h *plan.Hole) (hours float64) {
	from := float64(h.DrillAheadTo)
	for _, stage := range h.Stages {
		if stage.With != coring.RCB {
			from = max(from, float64(stage.To))
			continue
		}
		for _, layer := range s.Site.Layers {
			if bottom := min(float64(layer.Bottom), float64(stage.To)); bottom > from {
				hours += (bottom - from) / layer.Lithology.Rate.Median() / 3600
				from = bottom
			}
		}
	}
	return hours
}
