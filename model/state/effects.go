package state

import (
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
)

// did changes the ship by what was done.
func (r *reader) did(k activity.Kind, seconds unit.Duration, to time.Time, next activity.Kind) {
	s := &r.st.Now
	if s.Site == None {
		return
	}
	if k == activity.WaitOnWeather {
		r.st.Sites[s.Site].Waited += seconds
	}
	floor := unit.Length(r.plan.Sites[s.Site].WaterDepth)
	high := rig.ClearOf(floor)
	s.SinceOther[k] += seconds
	before := s.Bit
	switch k {
	case activity.Position:
		s.OnStation, s.LastService = true, to
	case activity.Secure:
		s.OnStation = false
	case activity.MakeUpBHA:
		s.TryOut = s.TryOut || !s.TriedOut
		s.Assembly, s.Rotated, s.TriedOut = r.assembly(), 0, true
		s.Hole.Conditioned, s.Hole.Released = false, false
	case activity.LayDownBHA:
		s.Assembly, s.Bit, s.Clear = coring.NoBHA, 0, true
	case activity.RunPipe:
		s.Bit = high
	case activity.PullPipe:
		if s.Bit <= high+0.1 || next == activity.LayDownBHA {
			s.Bit = 0
		} else {
			s.Bit = high
		}
	case activity.RunInHole, activity.WashDown:
		s.Bit = floor + unit.Length(s.Hole.Depth)
	case activity.PullFromHole:
		if s.Bit = floor; next == activity.RigUpLogging || next == activity.RunInHole {
			s.Bit += min(unit.Length(r.median(rig.LoggingPipeDepth)), unit.Length(s.Hole.Depth))
		}
	case activity.OffsetMove:
		s.Clear = true
	case activity.DrillAhead, activity.CutCore:
		s.Rotated += seconds
	case activity.DropFunnel:
		s.Hole.Funnel = true
	case activity.Stab:
		s.Hole.Stabs++
		s.Bit = floor + 1e-3
	case activity.MakeUpCasing, activity.LandCasing, activity.CementCasing, activity.DrillShoe:
		r.didCasing(k, to, next)
	case activity.ConditionHole:
		s.Hole.Conditioned = true
	case activity.ReleaseBit:
		s.Hole.Released = true
	case activity.RigUpLogging:
		s.Hole.Hung = true
	case activity.RunString:
		s.Hole.Logged++
	case activity.Penetrometer:
		s.Hole.Probes++
	case activity.HeavyMud, activity.CementPlug:
		s.Hole.Filled, s.Hole.Finished = true, true
	case activity.Sweep:
		r.swept = to
	case activity.SlipAndCut:
		s.NumberOf = 0
	case activity.RigService:
		s.LastService = to
	case activity.OtherWork:
		s.SinceOther, s.TryOut = [activity.Kinds]unit.Duration{}, false
	case activity.SeverPipe:
		if next != activity.Kinds { // else it is still in hand
			r.lostString()
		}
	case activity.Task, activity.WholeTask, activity.FrailTask:
		s.TaskDone += seconds
	}
	if s.Bit != before && s.NumberOf < maxTrips {
		s.Trips[s.NumberOf] = [2]unit.Length{before, s.Bit}
		s.NumberOf++
	}
}

// lostString: an assembly and what pipe was below the cut stay in the hole.
func (r *reader) lostString() {
	s := &r.st.Now
	var assembly unit.Length
	if board, err := r.plan.Ship.Tubulars.Board(); err == nil {
		assembly = board.Assembly.Length()
	}
	r.st.Gone.Assemblies++
	r.st.Gone.Pipe += rig.LeftInHole(unit.Length(s.Hole.Depth), assembly)
	s.Assembly, s.Hole.Lost = coring.NoBHA, true
}

func (r *reader) median(of rig.Rate) float64 { return r.plan.Ship.Rates[of].Median() }

// assembly is the one that the hole in hand needs.
func (r *reader) assembly() coring.Assembly {
	if r.st.Now.Item == None || r.item(r.st.Now.Item).Hole == nil {
		return coring.NoBHA
	}
	if c := r.casing(); c != nil && c.By != plan.InADrilledHole {
		return coring.CasingString
	}
	if h := r.item(r.st.Now.Item).Hole; len(h.Stages) > 0 && r.casing() == nil {
		return h.Stages[0].With.Assembly()
	}
	return coring.RotaryBHA
}
