package check

import (
	"fmt"
	"math"

	"coredays/model/activity"
	"coredays/model/drillstring"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// compensator looks at what carries the string while a barrel is rotated. Piston corers are shot without
// it (ODP TN31 drillship sheet), so that a site of them alone asks nothing of it.
func (i *inspector) compensator(s *voyage.Site) {
	deepest := rotatedTo(s)
	if deepest == 0 {
		return
	}
	i.compensatorLoad(s, deepest)
	i.compensatorStroke(s)
}

// rotatedTo is the deepest to which something is drilled or cored by rotating.
func rotatedTo(s *voyage.Site) (deepest unit.Depth) {
	for _, item := range s.Items {
		if item.Hole == nil {
			continue
		}
		deepest = max(deepest, item.Hole.DrillAheadTo)
		for _, stage := range item.Hole.Stages {
			if !stage.With.Piston() {
				deepest = max(deepest, stage.To)
			}
		}
	}
	return deepest
}

// compensatorLoad is that of the string with its bit just off bottom, in no heave: that is what the
// compensator is for. Part of the travelling gear hangs above it, so that all of it is too much to
// count: the plan is stopped by the string alone.
func (i *inspector) compensatorLoad(s *voyage.Site, deepest unit.Depth) {
	hung, err := i.hang(i.below(s, deepest))
	if err != nil {
		return // the depth itself is looked at for each hole
	}
	load := hung.HookLoad(i.conditions(drillstring.Heave{}))
	rated := i.plan.Ship.Compensator.Load
	verdict := between(float64(load.Static()), rated.Value, rated.Value+float64(load.Travelling))
	i.note(Finding{Site: s.Name, What: fmt.Sprintf("load on the heave compensator with %s of string, all travelling gear counted", hung.Length().Tell()),
		Kind: "load on the heave compensator", Borne: true, Verdict: remembered(verdict, rated.Source),
		Value: float64(load.Static() / klbf), Limit: rated.Value / float64(klbf), Unit: "klbf", Source: "rated load: " + rated.Source})
}

// compensatorStroke holds the stroke against the heave of the roughest sea in which a barrel is rotated.
func (i *inspector) compensatorStroke(s *voyage.Site) {
	stroke, height := i.plan.Ship.Compensator.Stroke, s.Most[activity.RotaryCoring]
	f := Finding{Site: s.Name, Value: float64(i.heave(s, activity.RotaryCoring).Height), Limit: stroke.Value, Unit: "m", Source: "largest heave in 10 min at the limit of the work; stroke: " + stroke.Source}
	if f.Value == 0 || math.IsInf(height, 1) {
		f.What, f.Verdict, f.Value = "no limit of sea for rotated coring to hold the compensator's stroke against", Caution, none
		i.note(f)
		return
	}
	f.Kind = "largest heave of rotated coring within the compensator's stroke"
	f.What = fmt.Sprintf("%s, Hs %.1f m", f.Kind, height)
	f.Verdict = remembered(atMost(f.Value, f.Limit), stroke.Source)
	i.note(f)
}
