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

// pistons looks at piston corers that are asked to a depth, rather than to refusal: how likely is ground so
// weak that the force of the stroke takes them there?
func (i *inspector) pistons(s *voyage.Site, item *voyage.Item) {
	stages := item.Hole.Stages
	for n, stage := range stages {
		if !stage.With.Piston() || stage.ToRefusal || len(s.Site.Layers) == 0 {
			continue
		}
		even := i.walk(s, item.Hole, i.evenGround())[n].to
		chance := i.chance(func(g met) bool { return i.walk(s, item.Hole, g)[n].to >= float64(stage.To)-shortest })
		f := Finding{Site: s.Name, Hole: item.Name, What: fmt.Sprintf("%s gets to its depth before it is refused", stage.With),
			Verdict: likely(chance, 0.5), Value: float64(stage.To), Limit: even, Unit: "mbsf", Chance: &chance, Path: fmt.Sprintf("core[%d].to", n),
			Source: "force balance of the stroke in ground of even strength, as the simulation has it; stop: in ground that 999 in 1,000 are stronger than",
			Cure:   "another tool after it, or to: refusal"}
		if f.Verdict == Stop && n+1 < len(stages) {
			f.Verdict = Caution // another tool goes on from where it is refused
		}
		if even >= float64(stage.To)-shortest {
			f.Limit = none // the corer is not refused in even ground
		}
		i.note(f)
	}
}

// seldomAsked is the chance below which a stage that has something to core is worth a word [judgement].
const seldomAsked = 0.1

// shortest is the shortest core worth a cycle, m: what is left of a stage that is shorter is left.
const shortest = float64(coring.Shortest)

// idle looks at stages that hardly ever have anything to core: those that end above where a piston corer
// before them is refused, and piston corers that begin where they are refused at once.
func (i *inspector) idle(s *voyage.Site, item *voyage.Item) {
	if len(s.Site.Layers) == 0 {
		return
	}
	for n, stage := range item.Hole.Stages {
		what := fmt.Sprintf("%s has something to core above %s", stage.With, unit.OfDepth.Format(float64(stage.To), "mbsf"))
		chance := 1 - i.chance(func(g met) bool { return i.walk(s, item.Hole, g)[n].from >= float64(stage.To)-shortest })
		cure := "a deeper target, or a depth for the tool before in place of refusal"
		if from := item.Hole.DrillAheadTo; n == 0 && from > 0 && stage.With.Piston() {
			what = fmt.Sprintf("%s takes a whole core below %s, to which is drilled ahead", stage.With, unit.OfDepth.Format(float64(from), "mbsf"))
			chance = i.chance(func(g met) bool { return i.wholeStroke(s, stage.With, float64(from), g) })
			cure = "a shallower drill_ahead_to, or another tool"
		}
		if chance < seldomAsked {
			i.note(Finding{Site: s.Name, Hole: item.Name, What: what, Kind: "stages have something to core", Verdict: Caution, Value: none, Limit: none, Chance: &chance,
				Source: "force balance of the stroke, as the simulation has it", Path: fmt.Sprintf("core[%d].to", n), Cure: cure})
		}
	}
}

// met is the ground that is met.
type met struct {
	weaker float64 // the share of all such ground that is weaker
	depth  float64 // of the layers, as a share of what the survey has
}

func (i *inspector) evenGround() met { return met{0.5, i.plan.Ship.Rates[rig.LayerDepth].Median()} }

// chance is that of ground in which something succeeds that succeeds in all weaker ground too.
func (i *inspector) chance(succeeds func(met) bool) (chance float64) {
	const parts = 20 // of the spread of the layers' depth
	depth := i.plan.Ship.Rates[rig.LayerDepth].Shape
	for n := range parts {
		deep := depth.Quantile((float64(n) + 0.5) / parts)
		chance += weakest(func(weaker float64) bool { return succeeds(met{weaker, deep}) }) / parts
	}
	return chance
}

// weakest is the share of ground in which something succeeds that succeeds in all weaker ground.
func weakest(succeeds func(weaker float64) bool) float64 {
	const surely = 1e-6
	low, high := 0.0, 1.0
	if !succeeds(surely) {
		return 0
	}
	if succeeds(1 - surely) {
		return 1
	}
	for high-low > 1e-4 {
		if middle := (low + high) / 2; succeeds(middle) {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

// stretch is what a stage cores of a hole, m below the sea floor.
type stretch struct{ from, to float64 }

// walk is what each stage of a hole cores in the ground met.
func (i *inspector) walk(s *voyage.Site, h *plan.Hole, g met) (all []stretch) {
	depth := float64(h.DrillAheadTo)
	for _, stage := range h.Stages {
		depth = max(depth, float64(stage.From))
		to := max(depth, float64(stage.To))
		if stage.With.Piston() {
			to = min(to, i.refusalDepth(s, stage.With, depth, g))
		}
		all = append(all, stretch{depth, to})
		depth = to
	}
	return all
}

// wholeStroke reports whether a corer's first stroke from a depth on is whole.
func (i *inspector) wholeStroke(s *voyage.Site, tool coring.Tool, from float64, g met) bool {
	full := float64(tool.Stroke())
	for _, layer := range s.Site.Layers {
		if from < float64(layer.Bottom)*g.depth {
			shear := unit.Pressure(layer.Lithology.Strength.Shape.Quantile(g.weaker) * (from + full/2))
			return float64(i.v.Corer().Stroke(shear)) >= ground.Whole*full
		}
	}
	return true
}

// refusalDepth is where the refusal rule gives a piston corer up that begins at a depth; +Inf where the
// layers end first.
func (i *inspector) refusalDepth(s *voyage.Site, tool coring.Tool, from float64, g met) float64 {
	corer, rule := i.v.Corer(), s.Refusal
	partials, depth := 0, from
	for _, layer := range s.Site.Layers {
		gradient := layer.Lithology.Strength.Shape.Quantile(g.weaker)
		for depth < float64(layer.Bottom)*g.depth {
			full := float64(tool.Stroke())
			shear := unit.Pressure(gradient * (depth + full/2)) // in the middle of the core
			stroke := max(float64(ground.LeastStroke), min(full, float64(corer.Stroke(shear))))
			stuck := corer.Overpull(shear, unit.Length(stroke)) > rule.Overpull
			depth += stroke
			partials++
			if stroke >= ground.Whole*full {
				partials = 0
			}
			if partials < rule.PartialStrokes && (!stuck || rule.DrillOver) {
				continue
			}
			if !tool.GoesOn(rule.Then) {
				return depth
			}
			tool, partials = rule.Then, 0
		}
	}
	return math.Inf(1)
}
