package ship

import (
	"coredays/model/ground"
)

// Bare reports whether the hole in hand begins on rock, with next to no sediment on it.
func (s *Ship) Bare() bool { return s.Here.Soft*s.LayerDepth < ground.Bare }

// Weighted is the share of its rate at which the bit cuts here: on rock the collars' weight comes to bear as the hole takes
// them in, and few collars have too little of it. The rate goes with the weight (Teale 1965, at the same torque factor). A rate that
// is stated for the layer is taken as it is.
func (s *Ship) Weighted() float64 {
	layer := s.Layer(s.Hole.Depth)
	name := s.Here.Site.Layers[layer].Lithology.Name
	if s.Here.Layers[layer].Stated {
		return 1
	}
	share := 1.0
	if ground.Hard(name) {
		share = ground.Weighted(s.Hole.Depth)
	}
	if needs, rock := ground.RockWeight(name); rock && s.Voyage.OnBoard.Weight > 0 {
		share *= min(1, s.Voyage.OnBoard.Weight/float64(needs))
	}
	return share
}

// Wear is how many hours of the bit's life an hour of rotating takes here.
func (s *Ship) Wear() float64 { return s.Draw(s.Here.Layers[s.Layer(s.Hole.Depth)].Wear) }
