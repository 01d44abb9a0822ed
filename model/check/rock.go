package check

import (
	"fmt"

	"coredays/model/coring"
	"coredays/model/drillstring"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// rockWeight is the least weight on bit with which a lithology is cut, in klbf; what is not named is
// sediment. All from memory and common practice: 2,000 to 4,000 lbf for each inch of a roller-cone bit in
// hard rock, on a 9-7/8 in bit, down to little but the weight of the assembly in sediment.
var rockWeight = map[string]float64{
	"chalk": 8, "claystone": 10, "volcaniclastic": 10, "limestone": 15, "chert": 20, "basalt": 20, "gabbro": 20,
}

const (
	sedimentWeight = 3.0 // klbf, common practice, from memory
	hardRock       = 15  // klbf; what needs as much is no sediment that collars could be buried in, judgement
	weightSource   = "weight that the rock needs: rule of thumb, common practice; usable: 85 % of the buoyed collars, so that pipe is always in tension (common practice)"
	// extendedWeight is the weight on bit at which the extended barrel's shoe has gone back into the bit.
	extendedWeight = 12 // klbf: ODP XCB tool sheet
)

func needs(lithology string) float64 {
	if w, rock := rockWeight[lithology]; rock {
		return w
	}
	return sedimentWeight
}

// bitWeight looks at the hardest rock that a rotated barrel or a drilled interval meets.
func (i *inspector) bitWeight(s *voyage.Site, item *voyage.Item) {
	rotated, extended := "", ""
	eachCut(s, item.Hole, func(tool coring.Tool, lithology string) {
		if !tool.Piston() && (rotated == "" || needs(lithology) > needs(rotated)) {
			rotated = lithology
		}
		if tool == coring.XCB && (extended == "" || needs(lithology) > needs(extended)) {
			extended = lithology
		}
	})
	if rotated != "" {
		usable := float64(i.board.Assembly.UsableBitWeight(drillstring.Seawater) / klbf)
		i.note(Finding{Site: s.Name, Hole: item.Name, What: "weight on bit for " + rotated, Kind: "weight on bit for the hardest rock", Verdict: atMost(needs(rotated), usable),
			Value: needs(rotated), Limit: usable, Unit: "klbf", Source: weightSource})
	}
	if extended != "" && needs(extended) > extendedWeight {
		i.note(Finding{Site: s.Name, Hole: item.Name, What: "extended barrel in " + extended, Verdict: Caution, Value: needs(extended), Limit: extendedWeight, Unit: "klbf",
			Source: "its shoe goes back into the bit above about 12,000 lb (ODP XCB tool sheet)"})
	}
}

// eachCut goes through what a hole drills and cores, layer by layer. What is drilled ahead counts as
// cut by a rotated barrel. A piston corer may be refused anywhere, so that what follows may meet all below.
func eachCut(s *voyage.Site, h *plan.Hole, visit func(tool coring.Tool, lithology string)) {
	from := unit.Depth(0)
	cut := func(tool coring.Tool, to unit.Depth) (at unit.Depth) {
		at = from
		for _, layer := range s.Site.Layers {
			if bottom := min(layer.Bottom, to); bottom > at {
				visit(tool, layer.Lithology.Name)
				at = bottom
			}
		}
		return at
	}
	ahead := coring.RCB
	if len(h.Stages) > 0 && h.Stages[0].With != coring.RCB {
		ahead = coring.XCB
	}
	from = cut(ahead, h.DrillAheadTo)
	for _, stage := range h.Stages {
		if at := cut(stage.With, stage.To); !stage.ToRefusal {
			from = at
		}
	}
}

// buried is how much sediment a rotary assembly needs around its collars before it meets rock.
const buried = 50 // m, common practice

// spud looks whether a rotary hole begins in enough sediment.
func (i *inspector) spud(s *voyage.Site, item *voyage.Item) {
	h := item.Hole
	if len(h.Stages) > 0 && h.Stages[0].With != coring.RCB || len(s.Site.Layers) == 0 {
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
	i.note(Finding{Site: s.Name, Hole: item.Name, What: fmt.Sprintf("sediment above %s to bury the collars of a rotary spud", rock),
		Kind:    "sediment to bury the collars of a rotary spud",
		Verdict: min(Caution, atLeast(float64(thick), buried)), Value: float64(thick), Limit: buried, Unit: "m",
		Source: "about 50 m of sediment (common practice); holes were begun in less, with more failed starts (one in 22.6 m is on record, hole summaries, doi:10.5281/zenodo.10498831)"})
}
