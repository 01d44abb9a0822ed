package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/unit"
)

// clear is the depth of a bit that is clear of the sea floor, below the sea surface, m.
func (s *ship) clear() float64 { return clearOf(s.here.Floor) }

// clearOf is the depth of a bit that is clear of a sea floor, m.
func clearOf(floor float64) float64 { return float64(rig.ClearOf(unit.Length(floor))) }

// inHole reports whether the bit is below the sea floor.
func (s *ship) inHole() bool { return s.here != nil && s.bit > s.here.Floor+1e-6 }

// move runs or pulls pipe until the bit is at a depth below the sea surface, m. When it is
// stopped for good on the way, the bit is where it got to.
func (s *ship) move(k activity.Kind, to float64) {
	if s.ended != goingOn || to == s.bit {
		return
	}
	from, length := s.bit, math.Abs(to-s.bit)
	stands := length / s.rateMedian(rig.StandLength)
	takes, unit := s.tripTime(k, stands, to)
	s.bit = max(from, to) // while it is on its way the storm ladder takes it to be as deep as it will be or was
	share := s.doInUnits(k, takes, unit) / takes
	s.bit = from + (to-from)*share
	s.drifted = max(s.drifted, s.bit)
	s.lineWork += s.lineWorkOf(from, s.bit)
}

// tripTime is the time of a trip of so many stands, and of one stand of it, s.
func (s *ship) tripTime(k activity.Kind, stands, to float64) (takes, stand float64) {
	r := rig.Tripping
	if k == activity.RunInHole || k == activity.PullFromHole {
		r = rig.TrippingInHole
	}
	takes = stands * s.standTime(s.Rate(r), s.bit, to)
	if to > s.bit {
		takes += math.Floor(stands/s.rateMedian(rig.StandsBetweenFills)) * s.Rate(rig.Filling)
		if fresh := to - max(s.drifted, s.bit); fresh > 0 {
			takes += fresh / s.rateMedian(rig.StandLength) * s.Rate(rig.Strapping)
		}
	}
	return takes, takes / stands
}

// heavyLoad is that for which the speeds of the hoist are stated, N: 320 t, some 700 klbf.
const heavyLoad = 320e3 * gravity

// standTime is the mean time of a stand on a trip of the bit between two depths, s: as the rate has it, but no less than the racker
// takes and the way at the speed that the hoist makes of its power, or its brake bears (P = F v). The load grows with the depth, so
// that the deep part of a trip may be slower than its rate, and the rest not.
func (s *ship) standTime(rate, from, to float64) float64 {
	speed := rig.HoistingSpeed
	if to > from {
		speed = rig.LoweringSpeed
	}
	low, high, usual := min(from, to), max(from, to), 1/rate
	way := s.rateMedian(rig.StandLength) / (s.rateMedian(speed) * heavyLoad)
	slowest := func(bit float64) float64 { return s.rateMedian(rig.Racker) + way*s.load(bit) }
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

// pullAnyhow pulls pipe to a depth below the sea surface in any sea: for safety nobody waits.
func (s *ship) pullAnyhow(to float64) {
	if s.bit <= to {
		return
	}
	floor := math.Inf(1)
	if s.here != nil {
		floor = s.here.Floor
	}
	stand := s.rateMedian(rig.StandLength)
	var seconds float64
	if top := max(to, floor); s.bit > top {
		seconds = (s.bit - top) / stand * s.standTime(s.Rate(rig.TrippingInHole), s.bit, top)
	}
	if bottom := min(s.bit, floor); bottom > to {
		seconds += (bottom - to) / stand * s.standTime(s.Rate(rig.Tripping), bottom, to)
	}
	s.lineWork += s.lineWorkOf(s.bit, to)
	s.doUnstopped(activity.PullPipe, seconds)
	s.bit = to
	if to == 0 {
		s.doUnstopped(activity.LayDownBHA, s.Rate(rig.LayDown))
		s.bha = coring.NoBHA
	}
}

// moveTime is the median time of a trip in the hole, s.
func (s *ship) moveTime(length float64) float64 {
	return length / s.rateMedian(rig.StandLength) / s.rateMedian(rig.TrippingInHole)
}

// lineWorkOf is the work of the drilling line on a trip of the bit between two depths, J: the mean
// load times the way [mechanics; API RP 9B counts it in ton-miles with the acceleration of each
// stand left out here].
func (s *ship) lineWorkOf(from, to float64) float64 { return s.load((from+to)/2) * math.Abs(to-from) }

const gravity = 9.80665 // m/s2, CGPM 1901

// load is what hangs from the hoist with the bit at a depth below the sea surface, in calm water, N.
func (s *ship) load(bit float64) float64 {
	const buoyancy = 1 - 1025.0/7850.0 // seawater and steel: BF = 1 - SG/7.85, formula list cited in the handbook facts
	return (s.rateMedian(rig.PipeMass)*buoyancy*bit + s.rateMedian(rig.TravellingMass)) * gravity
}

// rateMedian is the median of a rate, for what is a size rather than a chance, and for what
// the crew estimates with.
func (s *ship) rateMedian(r rig.Rate) float64 { return s.v.Quantities[r].Median }

func seconds(t float64) unit.Duration { return unit.Duration(t) }
