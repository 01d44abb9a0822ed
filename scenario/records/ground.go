package records

import (
	"slices"

	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/record"
	"coredays/model/unit"
)

// Told is what the lithology described at a site tells of it, against what the tools alone tell.
type Told struct {
	Classes          []string // of the description
	Rotary, Extended float64  // share of the rates of the ground
	Recovery         [coring.Tools]float64
}

// layers are the ground of a site: of what only the tools tell soft as deep as the extended barrel and piston corers went, harder
// below that, and harder still in deep water; and where its lithology is told, that.
func (u *Unrecorded) layers(s *record.Site, known Knowledge) (layers []ground.Layer) {
	described := []record.Described{{}}
	if known == Ground {
		described = append(s.Ground(), described...)
	}
	hard := rotaryGround
	if isBare(s) {
		hard = bareGround
	}
	soft, end, top := softTo(s), max(softTo(s), s.Deepest())+1, unit.Depth(0)
	for _, d := range described {
		bottom := d.Bottom
		if bottom == 0 || bottom > end {
			bottom = end
		}
		if soft > top && soft < bottom {
			layers = append(layers, ground.Layer{Bottom: soft, Lithology: u.lithology(s, softGround, d.Class)})
			top = soft
		}
		if bottom > top {
			layers = append(layers, ground.Layer{Bottom: bottom, Lithology: u.lithology(s, kindAt(bottom, soft, hard), d.Class)})
			top = bottom
		}
	}
	return layers
}

// kindAt is the ground above a depth.
func kindAt(bottom, soft unit.Depth, hard int) int {
	if bottom <= soft {
		return softGround
	}
	return hard
}

// lithology is the ground of a kind where a class was described, or none.
func (u *Unrecorded) lithology(s *record.Site, kind int, class string) ground.Lithology {
	l := u.Ground[kind]
	k := slices.IndexFunc(u.Described, func(t Told) bool { return slices.Contains(t.Classes, class) })
	switch {
	case k >= 0:
		return u.Described[k].of(l, kind, class)
	case kind != softGround && float64(s.Water()) >= u.InWater.From:
		l.Rate.Shape = times{l.Rate.Shape, u.InWater.Rate}
	}
	return l
}

// of is a ground that is known to be of a class.
func (t *Told) of(l ground.Lithology, kind int, class string) ground.Lithology {
	share := t.Rotary
	if kind == softGround {
		share = t.Extended
	}
	l.Name += ": " + class
	l.Rate.Shape, l.Ahead.Shape = times{l.Rate.Shape, share}, times{l.Ahead.Shape, share}
	for tool, share := range t.Recovery {
		l.Recovery[tool].Shape = withMean(l.Recovery[tool].Shape, share)
	}
	return l
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
