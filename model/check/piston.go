package check

import (
	"fmt"
	"math"

	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// pistons looks at piston corers that are asked to a depth, rather than to refusal: is it beyond where
// the force of the stroke takes them in ground of even strength, and in ground that only one site in
// ten is weaker than?
func (i *inspector) pistons(s *voyage.Site, item *voyage.Item) {
	stages := item.Hole.Stages
	for n, stage := range stages {
		if !stage.With.Piston() || stage.ToRefusal || len(s.Site.Layers) == 0 {
			continue
		}
		even, weak := i.refusalDepth(s, stage.With, 0.5), i.refusalDepth(s, stage.With, 0.1)
		f := Finding{Site: s.Name, Hole: item.Name, What: fmt.Sprintf("%s gets to its depth before it is refused", stage.With),
			Verdict: between(float64(stage.To), even, weak), Value: float64(stage.To), Limit: even, Unit: "mbsf",
			Source: "force balance of the stroke in ground of even strength, as the simulation has it; stop: beyond the ground that one in ten is weaker than"}
		if f.Verdict == Stop && n+1 < len(stages) {
			f.Verdict = Caution // another tool goes on from where it is refused
		}
		if math.IsInf(f.Limit, 1) {
			f.Limit = none
		}
		i.note(f)
	}
}

// idleStages looks at tools that go on where a piston corer is refused, and end above where that may be: they core
// nothing then.
func (i *inspector) idleStages(s *voyage.Site, item *voyage.Item) {
	stages := item.Hole.Stages
	for n := 1; n < len(stages); n++ {
		before, stage := stages[n-1], stages[n]
		if !before.ToRefusal || stage.ToRefusal || len(s.Site.Layers) == 0 {
			continue
		}
		if early := i.refusalDepth(s, before.With, 0.9); float64(stage.To) <= early {
			i.note(Finding{Site: s.Name, Hole: item.Name, What: fmt.Sprintf("%s cores at all after %s to refusal", stage.With, before.With), Verdict: Caution,
				Value: float64(stage.To), Limit: min(early, float64(s.Site.Deepest())), Unit: "mbsf",
				Source: "it does only where the piston corer is refused above its depth, which not one time in ten it is: force balance of the stroke in ground that one in ten is stronger than"})
		}
	}
}

const (
	leastStroke = 0.3  // m, into any sea floor by the pipe's weight, from memory; as in the simulation
	whole       = 0.95 // share of the full stroke below which a stroke is incomplete, common practice
)

// refusalDepth is where the refusal rule gives a piston corer up in ground of a strength that a share of
// all such ground is weaker than; +Inf where the layers end first.
func (i *inspector) refusalDepth(s *voyage.Site, tool coring.Tool, weaker float64) float64 {
	corer, rule := i.corer(), s.Refusal
	partials, depth := 0, 0.0
	for _, layer := range s.Site.Layers {
		gradient := layer.Lithology.Strength.Shape.Quantile(weaker)
		for depth < float64(layer.Bottom) {
			full := float64(tool.Stroke())
			shear := unit.Pressure(gradient * (depth + full/2)) // in the middle of the core
			stroke := max(leastStroke, min(full, float64(corer.Stroke(shear))))
			stuck := corer.Overpull(shear, unit.Length(stroke)) > rule.Overpull
			depth += stroke
			partials++
			if stroke >= whole*full {
				partials = 0
			}
			if partials < rule.PartialStrokes && (!stuck || rule.DrillOver) {
				continue
			}
			if tool != coring.APC || rule.Then != coring.HLAPC {
				return depth
			}
			tool, partials = coring.HLAPC, 0
		}
	}
	return math.Inf(1)
}

func (i *inspector) corer() ground.Corer {
	even := func(r rig.Rate) float64 { return i.plan.Ship.Rates[r].Median() }
	return ground.Corer{Diameter: unit.Length(even(rig.PistonDiameter)), Force: unit.Force(even(rig.StrokeForce)),
		Friction: even(rig.StrokeFriction), Tip: even(rig.TipFactor)}
}
