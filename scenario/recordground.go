package scenario

import (
	"coredays/model/ground"
	"coredays/model/record"
	"coredays/model/unit"
)

// layers are the ground of a site of which only the record of its holes is known: soft as deep as the
// extended barrel and piston corers went, and stiffer deep down; harder below that, and harder still deep
// in a hole.
func (u *Unrecorded) layers(s *record.Site) []ground.Layer {
	hard := u.Ground[rotaryGround]
	if isBare(s) {
		hard = u.Ground[bareGround]
	}
	if float64(s.Water()) >= u.InWater.From {
		hard.Rate.Shape = times{hard.Rate.Shape, u.InWater.Rate}
	}
	harder := hard
	harder.Rate.Shape = times{hard.Rate.Shape, u.Below.Rate}
	soft, deep := softTo(s), unit.Depth(u.Below.From)
	var layers []ground.Layer
	if soft > 0 {
		layers = append(layers, ground.Layer{Bottom: min(soft, unit.Depth(u.Extended.From)), Lithology: u.Ground[softGround]})
	}
	if soft > unit.Depth(u.Extended.From) {
		stiff := u.Ground[softGround]
		stiff.Rate.Shape = times{stiff.Rate.Shape, u.Extended.Rate}
		layers = append(layers, ground.Layer{Bottom: soft, Lithology: stiff})
	}
	if deep > soft {
		layers = append(layers, ground.Layer{Bottom: deep, Lithology: hard})
	}
	return append(layers, ground.Layer{Bottom: max(soft, deep, s.Deepest()) + 1, Lithology: harder})
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
