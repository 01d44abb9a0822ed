package drillstring

import (
	"math"

	"coredays/model/unit"
)

// GuideHornRadius is the usual radius of a guide horn below the rig floor, 350 ft (from memory; at it a
// fibre of 5-1/2 in pipe bears 19,600 psi, just below the fatigue limit of 20,000 psi by which US patent
// 3618679 says a horn is shaped).
const GuideHornRadius = 350 * unit.Foot

// Roll is a lean of the ship against a string that hangs plumb. It adds no weight worth counting (the
// string hangs near the middle of the ship, and heave is counted apart) but bends the pipe at the top.
type Roll struct {
	Angle float64     // radians
	Horn  unit.Length // radius of the guide horn; zero means none, the pipe held fast at the floor
}

// Curvature is that of the pipe at the top under a tension, in 1/m. Without a horn it is that of a long
// beam under tension, clamped at a lean: angle x sqrt(T/EI) (textbook; Lubinski's form, from memory).
// A horn allows no more than its own.
func (r Roll) Curvature(t Tube, tension unit.Force) float64 {
	free := math.Abs(r.Angle) * math.Sqrt(math.Max(0, float64(tension))/(young*t.secondMoment()))
	if r.Horn > 0 {
		return math.Min(free, 1/float64(r.Horn))
	}
	return free
}

// Bending is the stress that a curvature in 1/m puts on the outermost fibre: E D/2 x curvature
// (textbook).
func Bending(t Tube, curvature float64) unit.Pressure {
	return unit.Pressure(young * float64(t.Outside) / 2 * curvature)
}

// Bent is the length of pipe below the floor that lies against the horn.
func (r Roll) Bent() unit.Length { return unit.Length(math.Abs(r.Angle)) * r.Horn }

// Carries is the tension at which the outermost fibre of leaning pipe reaches the allowed share of the
// rating: tension + area x bending stress = allowed. Stress adds up linearly; fatigue is not counted.
func (r Roll) Carries(s Section, allowed unit.Force) unit.Force {
	fibre := float64(s.Body.Area()) * young * float64(s.Body.Outside) / 2
	c := fibre * math.Abs(r.Angle) / math.Sqrt(young*s.Body.secondMoment())
	root := (math.Sqrt(c*c+4*float64(allowed)) - c) / 2 // of u^2 + c u = allowed, u^2 the tension
	free := unit.Force(root * root)
	if r.Horn > 0 {
		return max(free, allowed-unit.Force(fibre/float64(r.Horn)))
	}
	return free
}
