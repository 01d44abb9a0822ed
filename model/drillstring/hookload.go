package drillstring

import "coredays/model/unit"

// AllowedShare is the share of the rating that is used: 90 % (Lapeyrouse 2nd ed. as reproduced at
// www.drillingformulas.com/margin-of-overpull-in-drillstring/).
const AllowedShare unit.Share = 0.9

// Conditions are what a string hangs in and from. The zero value is a calm day, in air, with no limit
// of the hoist.
type Conditions struct {
	Fluid      Density
	Heave      Heave
	Hanging    Hanging
	Roll       Roll
	Overpull   unit.Force // pulled at the bit, on top of the weight
	Travelling unit.Mass  // blocks, hook, top drive
	Hoist      unit.Force // what derrick and hoist carry, travelling gear included; zero: not limited
	Allowed    unit.Share // of the rating; zero: AllowedShare
}

func (c Conditions) allowed(rating unit.Force) unit.Force {
	if c.Allowed == 0 {
		return rating * unit.Force(AllowedShare)
	}
	return rating * unit.Force(c.Allowed)
}

// travelling is the pull of the travelling gear with its heave.
func (c Conditions) travelling() unit.Force {
	return unit.Force(float64(c.Travelling) * (gravity + c.Heave.Acceleration()))
}

// HookLoad is what hangs from the crown, in parts. Overpull is not in it.
type HookLoad struct {
	Assembly   unit.Force // buoyed
	Pipe       unit.Force // buoyed
	Travelling unit.Force // blocks, hook and top drive at rest
	Heave      unit.Force // inertia of string and travelling gear
}

// Static is the load at rest.
func (h HookLoad) Static() unit.Force { return h.Assembly + h.Pipe + h.Travelling }

// Total is the largest load in the heave.
func (h HookLoad) Total() unit.Force { return h.Static() + h.Heave }

// HookLoad is the load of the string and of the travelling gear.
func (s String) HookLoad(c Conditions) HookLoad {
	load := HookLoad{Assembly: s.Assembly.Buoyed(c.Fluid), Pipe: buoyed(massOf(s.Pipe), c.Fluid), Travelling: weight(c.Travelling)}
	load.Heave = unit.Force(float64(s.Mass())*s.inertia(c) + float64(c.Travelling)*c.Heave.Acceleration())
	return load
}
