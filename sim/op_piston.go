package sim

import (
	"math"
	"slices"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/rig"
	"coredays/model/unit"
)

// corePiston takes one core with the piston corer: down on the wire, pressure up, shoot, wait for
// what is measured, pull out, up.
func (s *ship) corePiston() {
	tool := s.tool()
	pace := s.rate(rig.PistonPace)
	way := s.bit / s.rate(rig.PistonWire) * pace
	layer := &s.here.Layers[s.layer(s.hole.depth)]
	stroke, overpull := s.shoot(tool, s.draw(layer.Strength))
	s.awaitBarrel()
	s.do(activity.RunBarrel, way)
	s.do(activity.ShootPiston, s.rate(rig.Shot)*pace)
	if s.planned().Oriented && tool == coring.APC {
		s.do(activity.OrientationWait, s.rate(rig.OrientationWait))
	}
	if slices.Contains(s.planned().Temperature, s.hole.cores+1) {
		s.do(activity.TemperatureStop, s.rate(rig.TemperatureStop))
	}
	s.do(activity.PullPiston, s.rate(rig.CorePull)*pace)
	stuck := overpull > float64(s.here.Refusal.Overpull)
	if stuck && s.here.Refusal.DrillOver {
		s.do(activity.DrillOver, s.rate(rig.DrillOver))
	}
	s.do(activity.FetchBarrel, way)
	s.awaitCatwalk()
	s.do(activity.HandleBarrel, s.rate(handling[tool])*pace)
	if s.ended != goingOn {
		return
	}
	from := s.hole.depth
	s.deepen(stroke)       // the next core starts where this one's stroke ended: advance by recovery
	s.used[shearPins] += 2 // two shear pins a shot: IODP Proc. 317 methods
	s.landCore(tool, from, stroke, s.draw(layer.Recovery[tool]))
	s.connect(from, s.hole.depth)
	s.meetTrouble(tool)
	s.judgeRefusal(tool, stroke, stuck)
}

// shoot is the stroke that the sediment allows, m, and the overpull that it takes to come free, N.
func (s *ship) shoot(t coring.Tool, gradient float64) (stroke, overpull float64) {
	corer := ground.Corer{
		Diameter: unit.Length(s.rateMedian(rig.PistonDiameter)),
		Force:    unit.Force(s.rateMedian(rig.StrokeForce)),
		Friction: s.rateMedian(rig.StrokeFriction),
		Tip:      s.rateMedian(rig.TipFactor),
	}
	full := min(float64(t.Stroke()), s.toGo())
	if s.hole.cores == 0 && s.hole.depth == 0 {
		above := s.rateMedian(rig.MudlineClearance) + float64(s.planned().StartOffset)
		full = max(shortest, min(full, float64(t.Stroke())-above))
	}
	shear := unit.Pressure(gradient * (s.hole.depth + full/2))
	stroke = math.Min(full, float64(corer.Stroke(shear)))
	return max(stroke, leastStroke), float64(corer.Overpull(shear, unit.Length(stroke)))
}

// leastStroke is what a piston corer pushes into any sea floor by the pipe's weight, m [from memory].
const leastStroke = 0.3

// partial is the share of the full stroke below which a stroke is incomplete [common practice].
const partial = 0.95

// judgeRefusal applies the scenario's rule: so many partial strokes in a row, or more overpull than
// is allowed where the corer may not be drilled over.
func (s *ship) judgeRefusal(t coring.Tool, stroke float64, stuck bool) {
	rule := s.here.Refusal
	full := min(float64(t.Stroke()), s.toGo()+stroke)
	if s.hole.depth == stroke && s.hole.cores == 1 {
		return // the mudline core is short by intent
	}
	if stroke < partial*full {
		s.hole.partials++
	} else {
		s.hole.partials = 0
	}
	if s.hole.partials < rule.PartialStrokes && !(stuck && !rule.DrillOver) {
		return
	}
	if log := &s.items[s.item.Number]; log.refused == 0 {
		log.refused = s.hole.depth
	}
	if t == coring.APC && rule.Then == coring.HLAPC {
		s.hole.half, s.hole.partials = true, 0
		return
	}
	s.nextStage()
}
