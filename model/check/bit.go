package check

import (
	"fmt"

	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// bitLife looks at the rotating hours of a rotary hole. Without a funnel the hole is lost when its bit
// is worn: a second bit needs re-entry.
func (i *inspector) bitLife(s *voyage.Site, item *voyage.Item) {
	hours := i.rotaryHours(s, item.Hole, 0.5)
	if hours == 0 {
		return
	}
	life := i.plan.Ship.Rates[rig.BitLife]
	f := Finding{Site: s.Name, Hole: item.Name, What: "rotating hours on one bit, no funnel to come back with another",
		Value: hours, Limit: life.Median() / 3600, Unit: "h", Source: "bit life: " + life.Source}
	if low := life.Shape.Quantile(0.1) / 3600; hours > low && hours <= f.Limit {
		f.Limit, f.Source = low, "one bit in ten lasts no longer: "+life.Source
	}
	if is := item.Hole.Reentry; is == plan.Funnel || is == plan.Cone {
		f.What = fmt.Sprintf("rotating hours, where a bit lasts %.0f h: a %s is there to come back with another", f.Limit, map[bool]string{true: "cone", false: "funnel"}[is == plan.Cone])
		f.Kind, f.Limit = "rotating hours, with a way back for another bit", none
	} else if hours > life.Shape.Quantile(0.1)/3600 {
		chance := i.bitLasts(s, item.Hole)
		f.Verdict, f.Chance, f.Cure, f.Path = Caution, &chance, "reentry: free-fall funnel, or a shallower target", "reentry"
	}
	i.note(f)
}

// bitLasts is the chance that one bit does a hole: its life and the rates of drilling, which hold for the
// whole hole here, are independent.
func (i *inspector) bitLasts(s *voyage.Site, h *plan.Hole) (chance float64) {
	const parts = 100
	life := i.plan.Ship.Rates[rig.BitLife].Shape
	for n := range parts {
		p := (float64(n) + 0.5) / parts
		chance += above(life, 3600*i.rotaryHours(s, h, p)) / parts
	}
	return chance
}

// above is the chance that a spread gives more than a value.
func above(shape spread.Shape, value float64) float64 {
	const end = 1e-6
	low, high := end, 1-end
	if shape.Quantile(low) >= value {
		return 1
	}
	if shape.Quantile(high) < value {
		return 0
	}
	for high-low > 1e-5 {
		if middle := (low + high) / 2; shape.Quantile(middle) < value {
			low = middle
		} else {
			high = middle
		}
	}
	return 1 - low
}

// rotaryHours is the time that the rotary bit turns, drilling ahead and cutting cores, at rates that a share
// of all is slower than, in hours of hard rock.
func (i *inspector) rotaryHours(s *voyage.Site, h *plan.Hole, slower float64) (hours float64) {
	if len(h.Stages) > 0 && !h.Stages[0].With.Assembly().Of().Bit {
		return 0
	}
	ahead := float64(h.DrillAheadTo)
	drilled := func(l ground.Lithology, metres float64) {
		hours += metres / l.Ahead.Shape.Quantile(slower) / 3600 * l.Wear.Median()
	}
	through(s, float64(max(h.Existing, h.CasedTo())), ahead, drilled) // a bit of its own drills for casing
	at := ahead
	for _, stage := range h.Stages {
		from := max(at, float64(stage.From))
		through(s, at, from, drilled)
		through(s, from, float64(stage.To), func(l ground.Lithology, metres float64) {
			hours += metres / l.Rate.Shape.Quantile(slower) / 3600 * l.Wear.Median()
		})
		at = float64(stage.To)
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
