package sim

import (
	"coredays/model/activity"
	"coredays/model/chance"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// completeHole: nothing of the hole is left to do.
func (s *expedition) completeHole() { s.Hole.Finished = true }

// fillHole leaves the hole as it was promised, once.
func (s *expedition) fillHole() {
	if s.Hole.Filled {
		return
	}
	how := s.Planned().Abandon
	if s.Hole.Ruled && s.Planned().EndsEarly.Plugged {
		how = plan.Cement
	}
	switch how {
	case plan.HeavyMud:
		if s.Hole.Filled = s.Do(activity.HeavyMud, s.Rate(rig.HeavyMud)) > 0; s.Hole.Filled {
			s.Consumed[statistics.MudFillings]++
		}
	case plan.Cement:
		if s.Hole.Filled = s.Do(activity.CementPlug, s.Rate(rig.CementPlug)) > 0; s.Hole.Filled {
			s.Consumed[statistics.CementPlugs]++
		}
	}
}

// leaveHole fills or plugs the hole as it was promised and clears the sea floor.
func (s *expedition) leaveHole() {
	if s.Hole.Open && s.InHole() {
		s.fillHole()
		s.Move(activity.PullFromHole, s.Here.Floor)
		s.Do(activity.TopDrive, s.Rate(rig.TopDrive))
		if s.Ended == ship.StormClear {
			s.Ended = ship.GoingOn // the sea floor is being cleared anyway
			s.ClearFloor()
		}
		s.Move(activity.PullPipe, s.Clear())
	}
	s.doOtherWork()
	if s.Ended == ship.GoingOn {
		if s.Hole.Released {
			s.BHA = 0 // the bit stays in the hole: the rest of the assembly is recovered with the pipe
		}
		s.finishItem(s.Items[s.Item.Number].Incomplete)
	}
}

// theRule is the purpose of what ends holes early.
var theRule = chance.KeyOf("hole ended by rule")

// ruleAt is the depth at which a rule ends the hole in hand, m below sea floor; 0 where none does. What calls for it lies in
// the ground of the site: the same number decides for all its holes.
func (s *expedition) ruleAt() float64 {
	rule := s.Planned().EndsEarly
	if rule == nil || s.Median || s.Voyage.Plan.NoTrouble {
		return 0
	}
	stream := s.Stream.For(theRule).For(s.Here.Key)
	from, target := float64(rule.From), float64(s.Item.Target())
	if stream.Uniform(0) >= rule.Chance {
		return 0
	}
	return from + (target-from)*stream.Uniform(1)
}

// ruledTo is a depth, or that at which a rule ends the hole in hand before, m below sea floor.
func (s *expedition) ruledTo(depth float64) float64 {
	if s.Hole.Rule > 0 {
		return min(depth, s.Hole.Rule)
	}
	return depth
}

func (s *expedition) endsByRule() bool {
	return s.Hole.Open && !s.Hole.Ruled && s.Hole.Rule > 0 && s.Hole.Depth >= s.Hole.Rule
}

// endByRule waits for results and leaves the hole.
func (s *expedition) endByRule() {
	rule := s.Planned().EndsEarly
	s.Do(activity.AwaitResults, float64(rule.Waits))
	if s.Ended != ship.GoingOn {
		return
	}
	if s.Diary != nil {
		s.Diary.Remark(rule.Because)
	}
	s.Items[s.Item.Number].Incomplete = true
	s.Hole.Finished, s.Hole.Ruled = true, true
}
