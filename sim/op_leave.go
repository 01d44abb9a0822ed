package sim

import (
	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/statistics"
)

// completeHole: nothing of the hole is left to do.
func (s *ship) completeHole() { s.hole.finished = true }

// fillHole leaves the hole as it was promised, once.
func (s *ship) fillHole() {
	if s.hole.filled {
		return
	}
	how := s.planned().Abandon
	if s.hole.ruled && s.planned().EndsEarly.Plugged {
		how = plan.Cement
	}
	switch how {
	case plan.HeavyMud:
		if s.hole.filled = s.do(activity.HeavyMud, s.Rate(rig.HeavyMud)) > 0; s.hole.filled {
			s.consumed[statistics.MudFillings]++
		}
	case plan.Cement:
		if s.hole.filled = s.do(activity.CementPlug, s.Rate(rig.CementPlug)) > 0; s.hole.filled {
			s.consumed[statistics.CementPlugs]++
		}
	}
}

// leaveHole fills or plugs the hole as it was promised and clears the sea floor.
func (s *ship) leaveHole() {
	if s.hole.open && s.inHole() {
		s.fillHole()
		s.move(activity.PullFromHole, s.here.Floor)
		s.do(activity.TopDrive, s.Rate(rig.TopDrive))
		if s.ended == stormClear {
			s.ended = goingOn // the sea floor is being cleared anyway
			s.clearFloor()
		}
		s.move(activity.PullPipe, s.clear())
	}
	s.doOtherWork()
	if s.ended == goingOn {
		if s.hole.released {
			s.bha = 0 // the bit stays in the hole: the rest of the assembly is recovered with the pipe
		}
		s.finishItem(s.items[s.item.Number].incomplete)
	}
}
