package check

import (
	"math"

	"coredays/model/ground"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// Holes of which more strings than this are expected to be lost are cautioned [judgement].
const mostLost = 0.1

// sticking looks at how likely the hole is to cost a string: pipe sticks now and then at each joint or core, the more the deeper
// and older the hole and the looser its ground, and now and then it can't be freed.
func (i *inspector) sticking(s *voyage.Site, item *voyage.Item) {
	bottom := float64(item.Item.AskedFor())
	if i.plan.NoTrouble || bottom <= 0 {
		return
	}
	stood := i.openFor(item)
	rates := &i.plan.Ship.Rates
	joint, stuck, worst, k := rates[rig.JointLength].Median(), 0.0, 0.0, 0
	for depth := joint; depth <= bottom; depth += joint {
		for ; k < len(s.Site.Layers) && (k == 0 || float64(s.Site.Layers[k-1].Bottom) < depth); k++ {
			worst = max(worst, s.Site.Layers[k].Lithology.Sticking.Median())
		}
		stuck += min(1, rates[rig.StuckChance].Median()*ground.Stickiness(worst, unit.Length(depth), stood*unit.Duration(depth/bottom)))
	}
	lost := stuck * rates[rig.LostBHA].Median()
	i.lost += lost
	if lost > mostLost {
		chance := math.Exp(-lost) // none of a Poisson number of them
		i.note(Finding{Site: s.Name, Hole: item.Name, What: "strings expected to be lost by sticking", Verdict: Caution, Value: lost, Limit: mostLost, Unit: "strings",
			Source: "chance of sticking by ground, open metres and hours, and of losing what sticks, from memory; judgement", Chance: &chance,
			Cure: "casing through the loose layers, a shallower target, or mud; collars and pipe to spare"})
	}
}

// openFor is how long a hole stands open, about: as the quick estimate has it, else at ten metres an hour [judgement].
func (i *inspector) openFor(item *voyage.Item) unit.Duration {
	if i.estimated.Known() && i.estimated.Items[item.Number] > 0 {
		return i.estimated.Items[item.Number]
	}
	return unit.Duration(float64(item.Item.AskedFor()) / 10 * float64(unit.Hour))
}

// strings looks whether what is on board makes up a string after those that may be lost: a Poisson number of them.
func (i *inspector) strings() {
	have := i.v.OnBoard.Strings
	if have == 0 || i.lost == 0 {
		return
	}
	few, term := 0.0, math.Exp(-i.lost)
	for n := range have {
		few += term
		term *= i.lost / float64(n+1)
	}
	f := Finding{What: "strings that can be made up of assemblies and collars on board", Value: float64(have), Limit: 1 + i.lost, Least: true, Unit: "strings",
		Source: "one to work with and those expected to be lost; the plan stops where none is left. A lost string costs in the order of a million US dollars (from memory)"}
	if 1-few > seldomShort {
		f.Verdict, f.Chance, f.Cure = Caution, &few, "more assemblies and collars on board, or less risk: see the holes"
	}
	i.note(f)
}

// seldomShort is the chance of running out of strings above which it is cautioned [judgement].
const seldomShort = 0.02
