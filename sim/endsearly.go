package sim

import (
	"coredays/model/activity"
	"coredays/model/chance"
)

// theRule is the purpose of what ends holes early.
var theRule = chance.KeyOf("hole ended by rule")

// ruleAt is the depth at which a rule ends the hole in hand, m below sea floor; 0 where none does. What calls for it lies in
// the ground of the site: the same number decides for all its holes.
func (s *ship) ruleAt() float64 {
	rule := s.planned().EndsEarly
	if rule == nil || s.Median || s.v.Plan.NoTrouble {
		return 0
	}
	stream := s.Stream.For(theRule).For(s.here.Key)
	from, target := float64(rule.From), float64(s.item.Target())
	if stream.Uniform(0) >= rule.Chance {
		return 0
	}
	return from + (target-from)*stream.Uniform(1)
}

// ruledTo is a depth, or that at which a rule ends the hole in hand before, m below sea floor.
func (s *ship) ruledTo(depth float64) float64 {
	if s.hole.rule > 0 {
		return min(depth, s.hole.rule)
	}
	return depth
}

func (s *ship) endsByRule() bool {
	return s.hole.open && !s.hole.ruled && s.hole.rule > 0 && s.hole.depth >= s.hole.rule
}

// endByRule waits for results and leaves the hole.
func (s *ship) endByRule() {
	rule := s.planned().EndsEarly
	s.do(activity.AwaitResults, float64(rule.Waits))
	if s.ended != goingOn {
		return
	}
	if s.diary != nil {
		s.diary.remark(rule.Because)
	}
	s.items[s.item.Number].incomplete = true
	s.hole.finished, s.hole.ruled = true, true
}
