package drillstring

import "coredays/model/unit"

// Trip is a round trip as API RP 9B counts the work of the drilling line (form as at
// www.drillingformulas.com/round-trip-ton-miles-calculation/ and www.scribd.com/document/376571338).
type Trip struct {
	Depth      unit.Length
	Stand      unit.Length
	Pipe       unit.LinearMass // of uniform pipe, buoyed: mass in air times buoyancy factor
	Excess     unit.Mass       // of the assembly over as much pipe, buoyed
	Travelling unit.Mass       // blocks, hook, elevators, top drive
}

// Work is that of the drilling line for the round trip: [D (Ls + D) Wm + 4 D (M + C/2)], in trade units
// over 10,560,000 to make ton-miles.
func (t Trip) Work() unit.Energy {
	depth := float64(t.Depth)
	pipe := depth * (float64(t.Stand) + depth) * float64(t.Pipe)
	gear := 4 * depth * (float64(t.Travelling) + float64(t.Excess)/2)
	return unit.Energy(gravity * (pipe + gear))
}

// RoundTrip is the work of the drilling line for running a string from the floor and pulling it again.
// It is the same count for any taper: twice the sum of hanging weight over the way, a stand more of the
// pipe, and the travelling gear four times. For uniform pipe it is RP 9B but that an assembly weighs in
// only as far as it hangs, which is less by excess x length of assembly.
func (s String) RoundTrip(fluid Density, stand unit.Length, travelling unit.Mass) unit.Energy {
	var way, hanging float64 // N m, N
	for _, section := range s.Sections() {
		own := float64(buoyed(section.mass(), fluid))
		way += float64(section.Length) * (hanging + own/2)
		hanging += own
	}
	gear := 4 * float64(s.Length()) * float64(weight(travelling))
	return unit.Energy(2*way + hanging*float64(stand) + gear)
}
