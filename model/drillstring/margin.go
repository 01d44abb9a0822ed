package drillstring

import (
	"math"

	"coredays/model/unit"
)

// Margin is what may still be pulled on top of a hanging string.
type Margin struct {
	Pipe  unit.Force // until a section reaches what it may bear
	Hoist unit.Force // until derrick or hoist does; +Inf without a limit
}

// Overpull is the lesser of the two: it may be negative, when the string is too heavy as it hangs.
func (m Margin) Overpull() unit.Force { return min(m.Pipe, m.Hoist) }

// OverpullMargin is the margin of a string that hangs with a tension at the top, from what pipe may bear
// and what the hoist carries (Air and Gas Drilling Field Guide 3rd ed., p. 92).
func OverpullMargin(allowed, hanging, hoist unit.Force) Margin {
	return Margin{Pipe: allowed - hanging, Hoist: hoist - hanging}
}

// Margin is that of the string beyond the overpull already among the conditions. The pipe-limited part
// is the least over all sections, so that of a tapered string may be set far below the floor.
func (s String) Margin(c Conditions) Margin {
	margin := Margin{Pipe: unit.Force(math.Inf(1)), Hoist: unit.Force(math.Inf(1))}
	for _, load := range s.Loads(c) {
		margin.Pipe = min(margin.Pipe, load.Carries-load.Tension)
	}
	if c.Hoist > 0 {
		margin.Hoist = c.Hoist - s.HookLoad(c).Total() - c.Overpull
	}
	return margin
}

// SafetyFactor is allowed over hanging.
func SafetyFactor(allowed, hanging unit.Force) float64 { return float64(allowed / hanging) }
