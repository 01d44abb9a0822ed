package sim

import (
	"slices"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim/statistics"
)

// corePiston takes one core with the piston corer: down on the wire, pressure up, shoot, wait for
// what is measured, pull out, up.
func (s *ship) corePiston(tool coring.Tool) {
	is := tool.Of()
	pace := s.pistonDurationFactor(tool)
	way := s.bit / s.Rate(is.Wire) * pace
	layer := &s.here.Layers[s.layer(s.hole.depth)]
	shot := s.shoot(tool, s.Draw(layer.Strength))
	s.awaitBarrel()
	s.do(activity.RunBarrel, way)
	s.do(activity.ShootPiston, s.Rate(rig.Shot)*pace)
	if s.planned().Oriented && tool.Has(coring.Orients) {
		s.do(activity.OrientationWait, s.Rate(rig.OrientationWait))
	}
	if slices.Contains(s.planned().Temperature, s.hole.cores+1) {
		s.do(activity.TemperatureStop, s.Rate(rig.TemperatureStop))
	}
	s.do(activity.PullPiston, s.Rate(rig.CorePull)*pace)
	if shot.stuck && s.here.Refusal.DrillOver {
		s.do(activity.DrillOver, s.Rate(rig.DrillOver))
	}
	s.do(activity.FetchCorer, way)
	s.awaitCatwalk()
	s.do(activity.HandleCorer, s.Rate(is.Handling)*pace)
	if s.ended != goingOn {
		return
	}
	from, share := s.hole.depth, s.recovers(tool, s.hole.depth)
	s.consumed[statistics.ShearPins] += 2 // two shear pins a shot: IODP Proc. 317 methods
	if s.meetTrouble(tool) == activity.BlownLiner {
		share = 0
	}
	cut := s.advance(shot, share)
	s.deepen(cut)
	s.recordCore(tool, from, cut, share*shot.stroke/cut)
	s.connect(from, s.hole.depth)
	s.meetStuckPipe()
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
func (s *ship) advance(shot shot, share float64) float64 {
	if shot.whole || s.here.Refusal.AdvanceByStroke {
		return shot.stroke
	}
	return max(float64(ground.LeastStroke), shot.stroke*min(1, share))
}

// shoot is the stroke that the sediment allows and the pull that it takes to come free.
func (s *ship) shoot(t coring.Tool, gradient float64) shot {
	corer := s.v.Corer()
	full := min(s.stroke(t, s.Rate), s.toGo())
	if s.hole.cores == 0 && s.hole.depth == 0 && s.stages()[s.hole.stage].Advance == 0 {
		above := min(s.rateMedian(rig.MudlineClearance), float64(t.Stroke())/2) + float64(s.planned().StartOffset)
		full = max(shortest, min(full, float64(t.Stroke())-above))
	}
	shear := unit.Pressure(gradient * (s.hole.depth + full/2))
	stroke := max(float64(ground.LeastStroke), min(full, float64(corer.Stroke(shear))))
	return shot{stroke: stroke, whole: stroke >= ground.Whole*full, stuck: corer.Overpull(shear, unit.Length(stroke)) > s.here.Refusal.Overpull}
}

// judgeRefusal applies the scenario's rule: so many partial strokes in a row, or more overpull than
// is allowed where the corer may not be drilled over.
func (s *ship) judgeRefusal(t coring.Tool, shot shot) {
	rule := s.here.Refusal
	if shot.whole {
		s.hole.partials = 0
	} else {
		s.hole.partials++
	}
	if s.hole.partials < rule.PartialStrokes && !(shot.stuck && !rule.DrillOver) {
		return
	}
	if log := &s.items[s.item.Number]; log.refused == 0 {
		log.refused = s.hole.depth
	}
	if t.GoesOn(rule.Then) {
		s.hole.half, s.hole.partials = true, 0
		return
	}
	s.nextStage()
}
