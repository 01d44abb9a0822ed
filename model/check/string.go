package check

import (
	"fmt"
	"math"

	"coredays/model/activity"
	"coredays/model/drillstring"
	"coredays/model/rig"
	"coredays/model/sea/heave"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// readyString works out what hangs at all sites: the longest string in the conditions under which such
// reaches are published, a calm vertical with the ship rolling and an overpull kept back.
func (i *inspector) readyString() {
	ship := &i.plan.Ship
	i.response, _ = heave.NewResponse(ship.Hull, heave.PeriodFactor, ship.Heading)
	board, err := ship.Tubulars.Board()
	if err != nil {
		i.note(Finding{What: "an assembly can be made up: " + err.Error(), Verdict: Stop, Value: ship.Tubulars.Collars.Value, Limit: none, Source: ship.Tubulars.Collars.Source})
		return
	}
	i.board = board
	calm := i.conditions(drillstring.Heave{})
	calm.Overpull = unit.Force(ship.Tubulars.Overpull.Value)
	i.reach = board.Reach(calm)
}

// conditions are those in which the string of this ship hangs.
func (i *inspector) conditions(h drillstring.Heave) drillstring.Conditions {
	t := &i.plan.Ship.Tubulars
	return drillstring.Conditions{
		Fluid:      drillstring.Seawater,
		Heave:      h,
		Roll:       drillstring.Roll{Angle: t.Roll.Value, Horn: unit.Length(t.GuideHorn.Value)},
		Travelling: unit.Mass(i.plan.Ship.Rates[rig.TravellingMass].Median()),
		Hoist:      t.Carries(),
	}
}

// heave is the largest heave in ten minutes of the roughest sea in which a class of work goes on. Its
// period is the peak period of that sea.
func (i *inspector) heave(s *voyage.Site, work activity.Limit) drillstring.Heave {
	height := s.Most[work]
	if i.response == nil || math.IsInf(height, 1) {
		return drillstring.Heave{}
	}
	h := drillstring.Heave{
		Height: heave.LargestHeave(i.response.Heave(unit.Length(height))),
		Period: unit.Duration(heave.PeriodFactor * math.Sqrt(height)),
	}
	if h.Height < noHeave {
		return drillstring.Heave{}
	}
	return h
}

// noHeave stretches kilometres of pipe by nothing that counts, however its short period suits the string [judgement].
const noHeave = unit.Length(0.1)

// below is the length of string from the rig floor to a depth below the sea floor.
func (i *inspector) below(s *voyage.Site, depth unit.Depth) unit.Length {
	return i.plan.Ship.RigFloor + s.WaterDepth + unit.Length(depth)
}

// hookLoad looks at the string that hangs to the deepest that a hole of a site may reach: the load in the heave of the
// roughest sea for running pipe, and what is left to pull in the roughest sea for coring.
func (i *inspector) hookLoad(s *voyage.Site) {
	deepest := s.Deepest()
	hung, err := i.hang(i.below(s, deepest))
	if deepest == 0 || err != nil {
		return // the depth itself is looked at for each hole
	}
	i.load(s, hung)
	i.pipeRating(s, hung)
	i.margin(s, hung)
}

// hang is the string to a depth, whatever carries it: what the hoist can't carry is found by its load.
func (i *inspector) hang(depth unit.Length) (drillstring.String, error) {
	unhoisted := i.conditions(drillstring.Heave{})
	unhoisted.Hoist = 0
	return i.board.Hang(depth, unhoisted)
}

func (i *inspector) load(s *voyage.Site, hung drillstring.String) {
	h := i.heave(s, activity.Tripping)
	load := hung.HookLoad(i.conditions(h))
	t := &i.plan.Ship.Tubulars
	bears := t.Derrick.Source
	source := "derrick: " + bears
	if t.Hoist.Value < t.Derrick.Value {
		bears = t.Hoist.Source
		source = "hoist: " + bears
	}
	verdict := between(float64(load.Total()), float64(drillstring.HeaviestRun), float64(t.Carries()))
	limit := t.Carries()
	if verdict == Stop {
		verdict = remembered(verdict, bears)
	} else if verdict == Caution {
		limit, source = drillstring.HeaviestRun, "strings that are run and stopped weigh up to about 700 klbf (common practice, from memory)"
	}
	i.note(Finding{Site: s.Name, What: fmt.Sprintf("hook load with %s, heave of %s included", hung.Length().Tell(), h.Height.Tell()), Kind: "hook load, heave included", Borne: true, Verdict: verdict,
		Value: float64(load.Total() / klbf), Limit: float64(limit / klbf), Unit: "klbf", Source: source})
}

func (i *inspector) pipeRating(s *voyage.Site, hung drillstring.String) {
	h := i.heave(s, activity.Tripping)
	worst := hung.Worst(i.conditions(h))
	i.note(Finding{Site: s.Name, What: "tension of " + worst.Section.Name + fmt.Sprintf(" in %s of heave, roll bending it", h.Height.Tell()), Kind: "tension of the pipe in heave, roll bending it", Borne: true, Verdict: atMost(float64(worst.Tension), float64(worst.Carries)),
		Value: float64(worst.Tension / klbf), Limit: float64(worst.Carries / klbf), Unit: "klbf",
		Source: "90 % of the rating of the pipe body (Lapeyrouse 2nd ed. as reproduced), less for bending; built-in pipe table"})
}

// margin is what is left to pull on a stuck string or corer. What the crew may pull by the refusal
// rule must be there.
func (i *inspector) margin(s *voyage.Site, hung drillstring.String) {
	h := i.heave(s, activity.PistonCoring)
	left := hung.Margin(i.conditions(h)).Overpull()
	kept, source := unit.Force(i.plan.Ship.Tubulars.Overpull.Value), i.plan.Ship.Tubulars.Overpull.Source
	verdict := Pass
	switch {
	case left < s.Refusal.Overpull && usesPiston(s):
		verdict, kept, source = Stop, s.Refusal.Overpull, "overpull of the refusal rule: "+s.Refusal.Source
	case left < 0:
		verdict = Stop
	case left < kept:
		verdict = Caution
	}
	i.note(Finding{Site: s.Name, What: fmt.Sprintf("margin of overpull in %s of heave", h.Height.Tell()), Kind: "margin of overpull in heave", Borne: true, Verdict: verdict,
		Value: float64(left / klbf), Limit: float64(kept / klbf), Least: true, Unit: "klbf", Source: source})
}

func usesPiston(s *voyage.Site) bool {
	for _, item := range s.Items {
		if item.Hole == nil {
			continue
		}
		for _, stage := range item.Hole.Stages {
			if stage.With.Piston() {
				return true
			}
		}
	}
	return false
}

// spares looks at the assemblies on board.
func (i *inspector) spares() {
	t := &i.plan.Ship.Tubulars
	verdict := Pass
	if t.Assemblies.Value < 2 {
		verdict = Caution
	}
	i.note(Finding{What: "assemblies on board, that in use included", Verdict: verdict, Value: t.Assemblies.Value, Limit: 2, Least: true,
		Source: "one to lose and one to go on with (common practice)"})
	needed := t.Collars.Value * t.Assemblies.Value
	verdict = Pass
	if needed > t.CollarsOnBoard.Value {
		verdict = Caution
	}
	i.note(Finding{What: "collars for all assemblies on board", Verdict: verdict, Value: needed, Limit: t.CollarsOnBoard.Value, Source: t.CollarsOnBoard.Source})
}
