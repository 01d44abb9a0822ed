package drillstring

import (
	"math"

	"coredays/model/unit"
)

// taper fills a string from the bit up with kinds of pipe that are all used, the last at the top, where
// it leans with the ship.
type taper struct {
	assembly Assembly
	stock    []Stock
	Conditions
	most unit.Length // no longer than this
}

// settle finds the string whose heave, by its own travel time, is that for which it was filled. More
// heave makes a shorter string, so that there is one answer, found by halving.
func (t taper) settle() (Reach, bool) {
	if t.Heave.Acceleration() == 0 || t.Hanging == Rigid {
		return t.finished(0)
	}
	low, high := unit.Duration(0), t.Heave.Period/4 // from there on it resonates
	for range 60 {
		travel := (low + high) / 2
		if reach, ok := t.fill(travel); ok && reach.String.TravelTime() > travel {
			low = travel
		} else {
			high = travel
		}
	}
	return t.finished(high)
}

// finished checks a filled string once more, with the assembly, which fill takes as given.
func (t taper) finished(travel unit.Duration) (Reach, bool) {
	const rounding = 1e-9 // of a load
	reach, ok := t.fill(travel)
	if !ok || reach.String.Worst(t.Conditions).Used() > 1+rounding {
		return Reach{}, false
	}
	return reach, t.Hoist == 0 || reach.String.Margin(t.Conditions).Hoist >= -rounding*t.Hoist
}

// fill hangs as much of each kind as may hang when sound takes a time along the string.
func (t taper) fill(travel unit.Duration) (Reach, bool) {
	perMass := gravity*float64(Buoyancy(t.Fluid)) + inertia(t.Conditions, travel) // N/kg
	if math.IsInf(perMass, 1) {
		return Reach{}, false // it resonates
	}
	reach := Reach{String: String{Assembly: t.assembly}, Length: t.assembly.Length(), Limit: "pipe on board"}
	load := t.Overpull + unit.Force(float64(t.assembly.Mass())*perMass)
	for i, stock := range t.stock {
		section := stock.Pipe.Section(0, stock.Class)
		perMetre := unit.Force(float64(section.Mass) * perMass)
		room, limit := t.room(i, perMass)
		section.Length = unit.Length((room - load) / perMetre)
		if left := min(stock.Length, t.most-reach.Length-t.above(i)); section.Length > left {
			section.Length, limit = left, "pipe on board"
		}
		if section.Length < t.least(i) {
			return Reach{}, false
		}
		if section.Length <= 0 {
			continue
		}
		load += perMetre * unit.Force(section.Length)
		reach.String.Pipe = append(reach.String.Pipe, section)
		reach.Length, reach.Limit = reach.Length+section.Length, limit
	}
	return reach, true
}

// room is the tension that kind i may bear at its top, and what sets it: its own rating, or that the top
// kind must still lean above it.
func (t taper) room(i int, perMass float64) (room unit.Force, limit string) {
	last := len(t.stock) - 1
	top := t.stock[last].Pipe.Section(t.above(i), t.stock[last].Class)
	room, limit = t.Roll.Carries(top, t.allowed(top.Rating)), "tension at the top, "+top.Name
	if t.Hoist > 0 && t.Hoist-t.travelling() < room {
		room, limit = t.Hoist-t.travelling(), "the hoist"
	}
	room -= unit.Force(float64(top.mass()) * perMass)
	if own := t.stock[i].Pipe.Section(0, t.stock[i].Class); i < last {
		room = min(room, t.allowed(own.Rating))
	}
	return room, limit
}

// above is how much of the top kind must hang above kind i: what lies against the horn.
func (t taper) above(i int) unit.Length {
	if i == len(t.stock)-1 {
		return 0
	}
	return t.Roll.Bent()
}

// least is how much of kind i there must be.
func (t taper) least(i int) unit.Length {
	if i == 0 || i < len(t.stock)-1 {
		return 0
	}
	return t.Roll.Bent() - rounding
}
