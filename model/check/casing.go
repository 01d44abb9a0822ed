package check

import (
	"fmt"
	"strings"

	"coredays/model/activity"
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// casingWeight is that of casing by its size, lb for each foot in air: usual weights of the API ranges, all from memory.
var casingWeight = map[string]float64{"20 in": 94, "16 in": 75, "13-3/8 in": 61, "11-3/4 in": 54, "10-3/4 in": 40.5, "9-5/8 in": 40, "7 in": 26}

// mostJetted is how deep casing is jetted in soft sediment, m [from memory].
const mostJetted = 100

// casing looks at the strings of casing of a hole: whether the rig carries each, and whether the ground takes the first.
func (i *inspector) casing(s *voyage.Site, item *voyage.Item) {
	for k := range item.Hole.Casing {
		c := &item.Hole.Casing[k]
		at := fmt.Sprintf("casing[%d]", k)
		if c.By == plan.Jetted {
			i.jetted(s, item, c, at)
		}
		i.casingLoad(s, item, c, at)
	}
}

// jetted looks at what casing is washed into.
func (i *inspector) jetted(s *voyage.Site, item *voyage.Item, c *plan.Casing, at string) {
	f := Finding{Site: s.Name, Hole: item.Name, What: "casing jetted in", Value: float64(c.To), Limit: mostJetted, Unit: "m", Path: at + ".by",
		Source: "some 100 m at most, in soft sediment alone (common practice, from memory)"}
	hard := ""
	for _, layer := range s.Site.Layers {
		if _, rock := ground.RockWeight(layer.Lithology.Name); rock && hard == "" {
			hard = layer.Lithology.Name
		}
		if layer.Bottom >= c.To {
			break
		}
	}
	if hard != "" {
		f.What, f.Kind, f.Limit = "casing jetted into "+hard, "casing jetted into rock", none
	}
	if hard != "" || f.Value > f.Limit {
		f.Verdict, f.Cure = Caution, "by: drilling in, or a shorter first string"
	}
	i.note(f)
}

// casingLoad looks at what hangs when a string comes to its cone: pipe to the sea floor and the casing below it.
func (i *inspector) casingLoad(s *voyage.Site, item *voyage.Item, c *plan.Casing, at string) {
	each, known := casingWeight[strings.TrimSpace(c.Name)]
	hung, err := i.hang(i.below(s, 0))
	if !known || err != nil {
		return
	}
	h := i.heave(s, activity.Logging)
	casing := unit.Force(each/0.3048*float64(c.To)*buoyedInSeawater) * unit.PoundForce
	load := hung.HookLoad(i.conditions(h)).Total() + casing
	t := &i.plan.Ship.Tubulars
	f := Finding{Site: s.Name, Hole: item.Name, What: fmt.Sprintf("hook load with %s of %s casing, its heave left out", unit.Length(c.To).Tell(), c.Name), Kind: "hook load with casing", Borne: true,
		Value: float64(load / klbf), Limit: float64(t.Carries() / klbf), Unit: "klbf", Path: at + ".to",
		Source: "derrick and hoist; weight of casing by its size from memory"}
	if load > t.Carries() {
		f.Verdict, f.Cure = Caution, "a shorter or lighter string"
	}
	i.note(f)
}

// buoyedInSeawater is the share of the weight of steel that is left in seawater: 1 - SG/7.85, formula list cited in the
// handbook facts.
const buoyedInSeawater = 1 - 1025.0/7850.0
