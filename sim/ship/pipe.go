package ship

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/unit"
)

// Clear is the depth of a bit that is clear of the sea floor, below the sea surface, m.
func (s *Ship) Clear() float64 { return ClearOf(s.Here.Floor) }

// ClearOf is the depth of a bit that is clear of a sea floor, m.
func ClearOf(floor float64) float64 { return float64(rig.ClearOf(unit.Length(floor))) }

// InHole reports whether the bit is below the sea floor.
func (s *Ship) InHole() bool { return s.Here != nil && s.Bit > s.Here.Floor+1e-6 }

// Move runs or pulls pipe until the bit is at a depth below the sea surface, m. When it is
// stopped for good on the way, the bit is where it got to.
func (s *Ship) Move(k activity.Kind, to float64) {
	if s.Ended != GoingOn || to == s.Bit {
		return
	}
	from, length := s.Bit, math.Abs(to-s.Bit)
	stands := length / s.RateMedian(rig.StandLength)
	takes, unit := s.tripTime(k, stands, to)
	s.Bit = max(from, to) // while it is on its way the storm ladder takes it to be as deep as it will be or was
	share := s.DoInUnits(k, takes, unit) / takes
	s.Bit = from + (to-from)*share
	s.Drifted = max(s.Drifted, s.Bit)
	s.LineWork += s.LineWorkOf(from, s.Bit)
}

// tripTime is the time of a trip of so many stands, and of one stand of it, s.
func (s *Ship) tripTime(k activity.Kind, stands, to float64) (takes, stand float64) {
	r := rig.Tripping
	if k == activity.RunInHole || k == activity.PullFromHole {
		r = rig.TrippingInHole
	}
	takes = stands * s.StandTime(s.Rate(r), s.Bit, to)
	if to > s.Bit {
		takes += math.Floor(stands/s.RateMedian(rig.StandsBetweenFills)) * s.Rate(rig.Filling)
		if fresh := to - max(s.Drifted, s.Bit); fresh > 0 {
			takes += fresh / s.RateMedian(rig.StandLength) * s.Rate(rig.Strapping)
		}
	}
	return takes, takes / stands
}

// heavyLoad is that for which the speeds of the hoist are stated, N: 320 t, some 700 klbf.
const heavyLoad = 320e3 * gravity

// StandTime is the mean time of a stand on a trip of the bit between two depths, s: as the rate has it, but no less than the racker
// takes and the way at the speed that the hoist makes of its power, or its brake bears (P = F v). The load grows with the depth, so
// that the deep part of a trip may be slower than its rate, and the rest not.
func (s *Ship) StandTime(rate, from, to float64) float64 {
	speed := rig.HoistingSpeed
	if to > from {
		speed = rig.LoweringSpeed
	}
	low, high, usual := min(from, to), max(from, to), 1/rate
	way := s.RateMedian(rig.StandLength) / (s.RateMedian(speed) * heavyLoad)
	slowest := func(bit float64) float64 { return s.RateMedian(rig.Racker) + way*s.load(bit) }
	switch atLow, atHigh := slowest(low), slowest(high); {
	case atHigh <= usual:
		return usual
	case atLow >= usual:
		return (atLow + atHigh) / 2
	default:
		heavy := (atHigh - usual) / (atHigh - atLow) // the share of the way on which the hoist is the slower
		return usual*(1-heavy) + (usual+atHigh)/2*heavy
	}
}

// PullAnyhow pulls pipe to a depth below the sea surface in any sea: for safety nobody waits.
func (s *Ship) PullAnyhow(to float64) {
	if s.Bit <= to {
		return
	}
	floor := math.Inf(1)
	if s.Here != nil {
		floor = s.Here.Floor
	}
	stand := s.RateMedian(rig.StandLength)
	var seconds float64
	if top := max(to, floor); s.Bit > top {
		seconds = (s.Bit - top) / stand * s.StandTime(s.Rate(rig.TrippingInHole), s.Bit, top)
	}
	if bottom := min(s.Bit, floor); bottom > to {
		seconds += (bottom - to) / stand * s.StandTime(s.Rate(rig.Tripping), bottom, to)
	}
	s.LineWork += s.LineWorkOf(s.Bit, to)
	s.doUnstopped(activity.PullPipe, seconds)
	s.Bit = to
	if to == 0 {
		s.doUnstopped(activity.LayDownBHA, s.Rate(rig.LayDown))
		s.BHA = coring.NoBHA
	}
}

// MoveTime is the median time of a trip in the hole, s.
func (s *Ship) MoveTime(length float64) float64 {
	return length / s.RateMedian(rig.StandLength) / s.RateMedian(rig.TrippingInHole)
}

// LineWorkOf is the work of the drilling line on a trip of the bit between two depths, J: the mean
// load times the way [mechanics; API RP 9B counts it in ton-miles with the acceleration of each
// stand left out here].
func (s *Ship) LineWorkOf(from, to float64) float64 { return s.load((from+to)/2) * math.Abs(to-from) }

const gravity = 9.80665 // m/s2, CGPM 1901

// load is what hangs from the hoist with the bit at a depth below the sea surface, in calm water, N.
func (s *Ship) load(bit float64) float64 {
	const buoyancy = 1 - 1025.0/7850.0 // seawater and steel: BF = 1 - SG/7.85, formula list cited in the handbook facts
	return (s.RateMedian(rig.PipeMass)*buoyancy*bit + s.RateMedian(rig.TravellingMass)) * gravity
}

// RateMedian is the median of a rate, for what is a size rather than a chance, and for what
// the crew estimates with.
func (s *Ship) RateMedian(r rig.Rate) float64 { return s.Voyage.Quantities[r].Median }

func seconds(t float64) unit.Duration { return unit.Duration(t) }
