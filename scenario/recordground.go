package scenario

import (
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/record"
	"coredays/model/spread"
	"coredays/model/unit"
)

// recordLayers is the ground of a site of which only the record of its holes is known.
func recordLayers(s *record.Site) []ground.Layer {
	l, _ := named(builtIn().lithologies, "claystone")
	l.Strength = spread.Just(0)
	soft, _ := named(builtIn().lithologies, "chalk")
	soft.Strength = spread.Just(0)
	top := softTo(s)
	var layers []ground.Layer
	if top > 0 {
		layers = append(layers, ground.Layer{Bottom: top, Lithology: soft})
	}
	return append(layers, ground.Layer{Bottom: max(top, s.Deepest()) + 1, Lithology: l})
}

// softTo is the depth down to which the extended barrel or the piston corer cored at a site.
func softTo(s *record.Site) (deepest unit.Depth) {
	for i := range s.Holes {
		h := &s.Holes[i]
		bottom := unit.Depth(h.Ahead())
		for _, step := range h.Steps() {
			bottom += unit.Depth(step.Length)
			if step.With != coring.RCB {
				deepest = max(deepest, bottom)
			}
		}
	}
	return deepest
}
