package ship

import (
	"math"

	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// CrewEstimates is what the crew estimates with: the time of each item from a run of the plan in which
// every draw is the median, the sea is calm and nothing goes wrong.
type CrewEstimates struct {
	Item    []float64 // s
	Leaving []float64 // s of these after the item is done, to get under way: of the last one of a site
	Leg     [][]float64
}

// Contingency is what the crew adds to a calm estimate for sea and trouble [common practice].
const Contingency = 1.1

// HomeTime is the crew's estimate of the passage from a place to the last port, s.
func (s *Ship) HomeTime(from voyage.Place) float64 {
	return s.Crew.Leg[from][voyage.ToPort]*Contingency + s.RateMedian(rig.Pilotage) + s.RateMedian(rig.HomeReserve)
}

// LeaveTime is the crew's estimate from now until the ship is under way, s.
func (s *Ship) LeaveTime() float64 {
	stand, floor := s.RateMedian(rig.StandLength), s.Here.Floor
	var t float64
	if s.Bit > 0 {
		t += min(s.Bit, floor)/stand/s.RateMedian(rig.Tripping) + s.RateMedian(rig.LayDown)
	}
	if s.InHole() {
		t += s.MoveTime(s.Bit-floor) + s.RateMedian(rig.TopDrive) + s.FillTime()
	}
	return (s.WithOther(t) + s.RateMedian(rig.Securing)) * Contingency
}

// FillTime is the crew's estimate of filling or plugging the hole in hand, s.
func (s *Ship) FillTime() float64 {
	switch s.Planned().Abandon {
	case plan.HeavyMud:
		return s.RateMedian(rig.HeavyMud)
	case plan.Cement:
		return s.RateMedian(rig.CementPlug)
	}
	return 0
}

// MustLeave reports whether there is no time any more for work of so many seconds here.
// Near the end the crew adds the hours for which the forecast has a sea too high to handle the
// assembly on the rig floor.
func (s *Ship) MustLeave(work float64) bool {
	spare := s.Voyage.Deadline - (s.Clock + work + s.LeaveTime() + s.HomeTime(s.At))
	return spare < 0 || spare < lookAhead && spare < s.ForecastAbove(s.WaveLimitOf(activity.PipeHandling))
}

// OutOfTime ends the script where there is no more time than for leaving.
func (s *Ship) OutOfTime() bool {
	switch {
	case s.Clock > s.Longest():
		s.Ended = noTime
	case s.Constrained && !s.TimeUp && s.Item != nil && s.MustLeave(0):
		s.TimeUp, s.Ended, s.Rewind = true, noTime, true
	default:
		return false
	}
	return true
}

// Longest is when an expedition is given up, s. The crew's own estimates know no deadline.
func (s *Ship) Longest() float64 {
	if s.Median {
		return math.Inf(1)
	}
	return max(s.Voyage.Deadline, leastDays) * statistics.MostTimes
}

// leastDays keeps a short deadline from cutting the days needed short, s.
const leastDays = 50 * 86400

// WithOther is the crew's estimate of work with the other work that it brings, s.
func (s *Ship) WithOther(takes float64) float64 { return takes * (1 + s.RateMedian(rig.OtherWork)) }
