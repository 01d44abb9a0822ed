package check

import (
	"fmt"
	"math"

	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// pistons looks at piston corers that are asked to a depth, rather than to refusal: is it beyond where
// the force of the stroke takes them in ground of median strength? Deep piston holes in soft ground are on record, to 280
// and 315 m in ooze (hole summaries, doi:10.5281/zenodo.10498831), so what is unlikely is told with its chance, and only
// what the ground as stated hardly ever allows stops a plan.
func (i *inspector) pistons(s *voyage.Site, item *voyage.Item) {
	stages := item.Hole.Stages
	for n, stage := range stages {
		if !stage.With.Piston() || stage.ToRefusal || len(s.Site.Layers) == 0 {
			continue
		}
		median, weakest := i.refusalDepth(s, stage.With, 0.5), i.refusalDepth(s, stage.With, hardlyEver)
		f := Finding{Site: s.Name, Hole: item.Name, What: fmt.Sprintf("%s gets to its depth before it is refused", stage.With),
			Verdict: between(float64(stage.To), median, weakest), Value: float64(stage.To), Limit: median, Unit: "mbsf",
			Source: "force balance of the stroke in ground of median strength, as the simulation has it"}
		switch f.Verdict {
		case Caution:
			f.Source += fmt.Sprintf("; it gets there in %.2g of 100 such grounds", 100*i.reaches(s, stage))
		case Stop:
			f.Source += "; not in one of a thousand such grounds"
		}
		if f.Verdict == Stop && n+1 < len(stages) {
			f.Verdict = Caution // another tool goes on from where it is refused
		}
		if math.IsInf(f.Limit, 1) {
			f.Limit = none
		}
		i.note(f)
	}
}

// hardlyEver is the share of grounds below which nobody counts on one as weak, our choice.
const hardlyEver = 0.001

// reaches is the share of grounds in which a piston corer gets to the depth of its stage: by halving, as refusal comes the
// later the weaker the ground.
func (i *inspector) reaches(s *voyage.Site, stage plan.Stage) float64 {
	low, high := hardlyEver, 1.0
	for range 20 {
		if middle := (low + high) / 2; i.refusalDepth(s, stage.With, middle) >= float64(stage.To) {
			low = middle
		} else {
			high = middle
		}
	}
	return low
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
