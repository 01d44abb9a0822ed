package sim

import (
	"slices"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// corePiston takes one core with the piston corer: down on the wire, pressure up, shoot, wait for
// what is measured, pull out, up.
func (s *expedition) corePiston(tool coring.Tool) {
	is := tool.Of()
	pace := s.PistonDurationFactor(tool)
	way := s.Bit / s.Rate(is.Wire) * pace
	layer := &s.Here.Layers[s.Layer(s.Hole.Depth)]
	shot := s.shoot(tool, s.Draw(layer.Strength))
	s.AwaitBarrel()
	s.Do(activity.RunBarrel, way)
	s.Do(activity.ShootPiston, s.Rate(rig.Shot)*pace)
	if s.Planned().Oriented && tool.Has(coring.Orients) {
		s.Do(activity.OrientationWait, s.Rate(rig.OrientationWait))
	}
	if slices.Contains(s.Planned().Temperature, s.Hole.Cores+1) {
		s.Do(activity.TemperatureStop, s.Rate(rig.TemperatureStop))
	}
	s.Do(activity.PullPiston, s.Rate(rig.CorePull)*pace)
	if shot.stuck && s.Here.Refusal.DrillOver {
		s.Do(activity.DrillOver, s.Rate(rig.DrillOver))
	}
	s.Do(activity.FetchCorer, way)
	s.AwaitCatwalk()
	s.Do(activity.HandleCorer, s.Rate(is.Handling)*pace)
	if s.Ended != ship.GoingOn {
		return
	}
	from, share := s.Hole.Depth, s.Recovers(tool, s.Hole.Depth)
	s.Consumed[statistics.ShearPins] += 2 // two shear pins a shot: IODP Proc. 317 methods
	if s.MeetTrouble(tool) == activity.BlownLiner {
		share = 0
	}
	cut := s.advance(shot, share)
	s.deepen(cut)
	s.RecordCore(tool, from, cut, share*shot.stroke/cut)
	s.connect(from, s.Hole.Depth)
	s.MeetStuckPipe()
	s.judgeRefusal(tool, shot)
}

// shot is what became of one stroke of the corer.
type shot struct {
	stroke float64 // m
	whole  bool
	stuck  bool // it takes more than the overpull allowed to come free
}

// advance is how much deeper the next core starts: by the stroke when it was whole. When it was not,
// nobody knows how far it went, and the core that was recovered is taken for it.
func (s *expedition) advance(shot shot, share float64) float64 {
	if shot.whole || s.Here.Refusal.AdvanceByStroke {
		return shot.stroke
	}
	return max(float64(ground.LeastStroke), shot.stroke*min(1, share))
}

// shoot is the stroke that the sediment allows and the pull that it takes to come free.
func (s *expedition) shoot(t coring.Tool, gradient float64) shot {
	corer := s.Voyage.Corer()
	full := min(s.Stroke(t, s.Rate), s.ToGo())
	if s.Hole.Cores == 0 && s.Hole.Depth == 0 && s.Stages()[s.Hole.Stage].Advance == 0 {
		above := min(s.RateMedian(rig.MudlineClearance), float64(t.Stroke())/2) + float64(s.Planned().StartOffset)
		full = max(ship.Shortest, min(full, float64(t.Stroke())-above))
	}
	shear := unit.Pressure(gradient * (s.Hole.Depth + full/2))
	stroke := max(float64(ground.LeastStroke), min(full, float64(corer.Stroke(shear))))
	return shot{stroke: stroke, whole: stroke >= ground.Whole*full, stuck: corer.Overpull(shear, unit.Length(stroke)) > s.Here.Refusal.Overpull}
}

// judgeRefusal applies the scenario's rule: so many partial strokes in a row, or more overpull than
// is allowed where the corer may not be drilled over.
func (s *expedition) judgeRefusal(t coring.Tool, shot shot) {
	rule := s.Here.Refusal
	if shot.whole {
		s.Hole.Partials = 0
	} else {
		s.Hole.Partials++
	}
	if s.Hole.Partials < rule.PartialStrokes && !(shot.stuck && !rule.DrillOver) {
		return
	}
	if log := &s.Items[s.Item.Number]; log.Refused == 0 {
		log.Refused = s.Hole.Depth
	}
	if t.GoesOn(rule.Then) {
		s.Hole.Half, s.Hole.Partials = true, 0
		return
	}
	s.NextStage()
}
