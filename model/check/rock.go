package check

import (
	"fmt"

	"coredays/model/coring"
	"coredays/model/drillstring"
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
)

const (
	sedimentWeight = 3.0 // klbf, common practice, from memory
	hardRock       = 15  // klbf; what needs as much is no sediment that collars could be buried in, judgement
	weightSource   = "weight that the rock needs: rule of thumb, common practice; usable: 85 % of the buoyed collars, so that pipe is always in tension (common practice)"
	// extendedWeight is the weight on bit at which the extended barrel's shoe has gone back into the bit.
	extendedWeight = 12 // klbf: ODP XCB tool sheet
)

func needs(lithology string) float64 {
	if w, rock := ground.RockWeight(lithology); rock {
		return float64(w / klbf)
	}
	return sedimentWeight
}

// bitWeight looks at the hardest rock that a rotated barrel or a drilled interval meets. Too little weight
// cuts slowly, and what a rock needs is a rule of thumb: neither stops a plan.
func (i *inspector) bitWeight(s *voyage.Site, item *voyage.Item) {
	rotated, extended := "", ""
	eachCut(s, item.Hole, func(tool coring.Tool, l ground.Lithology) {
		lithology := l.Name
		if !tool.Piston() && (rotated == "" || needs(lithology) > needs(rotated)) {
			rotated = lithology
		}
		if tool == coring.XCB && (extended == "" || needs(lithology) > needs(extended)) {
			extended = lithology
		}
	})
	if rotated != "" {
		usable := float64(i.board.Assembly.UsableBitWeight(drillstring.Seawater) / klbf)
		i.note(Finding{Site: s.Name, Hole: item.Name, What: "weight on bit for " + rotated, Kind: "weight on bit for the hardest rock", Borne: true, Verdict: min(atMost(needs(rotated), usable), Caution),
			Value: needs(rotated), Limit: usable, Unit: "klbf", Source: weightSource, Path: "core", Cure: "more collars; with less weight the rock is cut slower"})
	}
	if extended != "" && needs(extended) > extendedWeight {
		i.note(Finding{Site: s.Name, Hole: item.Name, What: "extended barrel in " + extended, Verdict: Caution, Value: needs(extended), Limit: extendedWeight, Unit: "klbf",
			Source: "its shoe goes back into the bit above about 12,000 lb (ODP XCB tool sheet)"})
	}
}

// tooSlow looks at ground in which a tool is hardly ever as fast as the rate below which it is given up.
func (i *inspector) tooSlow(s *voyage.Site, item *voyage.Item) {
	for tool := range coring.Tools {
		if least := tool.Of().LeastRate; least != coring.NoRate {
			i.tooSlowFor(tool, least, s, item)
		}
	}
}

func (i *inspector) tooSlowFor(t coring.Tool, given rig.Rate, s *voyage.Site, item *voyage.Item) {
	least := i.plan.Ship.Rates[given]
	slowest, chance := ground.Lithology{}, 1.0
	eachCut(s, item.Hole, func(tool coring.Tool, l ground.Lithology) {
		if c := above(l.Rate.Shape, least.Median()); tool == t && c < chance {
			slowest, chance = l, c
		}
	})
	if chance < seldomAsked {
		i.note(Finding{Site: s.Name, Hole: item.Name, What: fmt.Sprintf("%s cores on in %s", t, slowest.Name), Kind: t.Of().What + " cores on in the slowest ground", Verdict: Caution, Chance: &chance,
			Value: slowest.Rate.Median() * 3600, Limit: least.Median() * 3600, Least: true, Unit: "m/h", Path: "core",
			Source: "slower than this it is given up: " + least.Source, Cure: "a rotary hole (RCB), or a lower " + given.Of().Key})
	}
}

// eachCut goes through what a hole drills and cores, layer by layer. What is drilled ahead counts as
// cut by a rotated barrel. A piston corer may be refused anywhere, so that what follows may meet all below.
func eachCut(s *voyage.Site, h *plan.Hole, visit func(tool coring.Tool, l ground.Lithology)) {
	from := unit.Depth(0)
	cut := func(tool coring.Tool, to unit.Depth) (at unit.Depth) {
		at = from
		for _, layer := range s.Site.Layers {
			if bottom := min(layer.Bottom, to); bottom > at {
				visit(tool, layer.Lithology)
				at = bottom
			}
		}
		return at
	}
	ahead := coring.RotaryBHA.Of().Barrel
	if len(h.Stages) > 0 {
		ahead = h.Stages[0].With.Assembly().Of().Barrel
	}
	from = h.Existing
	from = cut(ahead, h.DrillAheadTo)
	for _, stage := range h.Stages {
		if stage.From > from {
			from = cut(ahead, stage.From)
		}
		if at := cut(stage.With, stage.To); !stage.ToRefusal {
			from = at
		}
	}
}

// buried is how much sediment a rotary assembly needs around its collars before it meets rock.
const buried = 50 // m, common practice

// thinSpud is how rotary holes on record that began in less sediment went on: of those with igneous rock
// in their descriptions from that depth on, how many were drilled to 50 m below the sea floor and more.
type thinSpud struct {
	from        float64 // m of sediment
	deep, holes float64
}

// thinSpuds by rising thickness: 3 of 9 holes on bare rock, 8 of 9 in 6 to 48 m of sediment.
var thinSpuds = []thinSpud{{0, 3, 9}, {5, 8, 9}}

const spudSource = "about 50 m of sediment (common practice); chance: rotary holes on record with igneous rock below less sediment that went to 50 m and deeper, 3 of 9 on bare rock and 8 of 9 in 6 to 48 m of sediment (hole summaries, doi:10.5281/zenodo.10498831, with lithology of eODP, doi:10.1029/2022PA004572)"

// spud looks whether a rotary hole begins in enough sediment.
func (i *inspector) spud(s *voyage.Site, item *voyage.Item) {
	h := item.Hole
	if h.Existing > 0 {
		return // it was spudded long ago
	}
	if len(h.Stages) > 0 && !h.Stages[0].With.Assembly().Of().Bit || len(s.Site.Layers) == 0 {
		return
	}
	thick, rock := unit.Depth(0), ""
	for _, layer := range s.Site.Layers {
		if needs(layer.Lithology.Name) >= hardRock {
			rock = layer.Lithology.Name
			break
		}
		thick = layer.Bottom
	}
	if rock == "" || thick >= item.Target() {
		return // no rock is met
	}
	f := Finding{Site: s.Name, Hole: item.Name, What: fmt.Sprintf("sediment above %s to bury the collars of a rotary spud", rock),
		Kind:  "sediment to bury the collars of a rotary spud",
		Value: float64(thick), Limit: buried, Least: true, Unit: "m", Source: "about 50 m of sediment (common practice)"}
	if f.Value < buried {
		chance := spudChance(f.Value)
		f.Verdict, f.Chance, f.Source, f.Cure = Caution, &chance, spudSource, "a place with more sediment, or patience with the first metres"
	}
	i.note(f)
}

// spudChance is how often a hole went on that began in so much sediment, m.
func spudChance(thick float64) (chance float64) {
	for _, on := range thinSpuds {
		if thick >= on.from {
			chance = on.deep / on.holes
		}
	}
	return chance
}
