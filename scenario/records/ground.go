package records

import (
	"coredays/model/ground"
	"coredays/model/record"
	"coredays/model/unit"
)

// layers are the ground of a site of which only the record of its holes is known: soft as deep as the
// extended barrel and piston corers went, harder below that, and harder still in deep water.
func (u *Unrecorded) layers(s *record.Site) []ground.Layer {
	hard := u.Ground[rotaryGround]
	if isBare(s) {
		hard = u.Ground[bareGround]
	}
	if float64(s.Water()) >= u.InWater.From {
		hard.Rate.Shape = times{hard.Rate.Shape, u.InWater.Rate}
	}
	var layers []ground.Layer
	soft := softTo(s)
	if soft > 0 {
		layers = append(layers, ground.Layer{Bottom: soft, Lithology: u.Ground[softGround]})
	}
	return append(layers, ground.Layer{Bottom: max(soft, s.Deepest()) + 1, Lithology: hard})
}

// softTo is the depth down to which the extended barrel or a piston corer cored at a site.
func softTo(s *record.Site) (deepest unit.Depth) {
	for i := range s.Holes {
		h := &s.Holes[i]
		bottom := unit.Depth(h.Ahead())
		for _, step := range h.Steps() {
			bottom += unit.Depth(step.Length)
			if !rotary(step.With) {
				deepest = max(deepest, bottom)
			}
		}
	}
	return deepest
}
