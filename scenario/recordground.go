package scenario

import (
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/record"
	"coredays/model/unit"
)

// layers are the ground of a site of which only the record of its holes is known: soft as deep as
// the extended barrel and piston corers went, harder below.
func (u *Unrecorded) layers(s *record.Site) []ground.Layer {
	hard := rotaryGround
	if isBare(s) {
		hard = bareGround
	}
	var layers []ground.Layer
	soft := softTo(s)
	if soft > 0 {
		layers = append(layers, ground.Layer{Bottom: soft, Lithology: u.Ground[softGround]})
	}
	return append(layers, ground.Layer{Bottom: max(soft, s.Deepest()) + 1, Lithology: u.Ground[hard]})
}

// softTo is the depth down to which the extended barrel or a piston corer cored at a site.
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
