package sim

import (
	"coredays/model/activity"
	"coredays/model/ground"
	"coredays/model/rig"
)

// bare reports whether the hole in hand begins on rock, with next to no sediment on it.
func (s *ship) bare() bool { return s.here.Soft*s.layerDepth < ground.Bare }

// weighted is the share of its rate at which the bit cuts here: on rock the collars' weight comes to bear as the hole takes
// them in, and few collars have too little of it. The rate goes with the weight (Teale 1965, at the same torque factor). A rate that
// is stated for the layer is taken as it is.
func (s *ship) weighted() float64 {
	layer := s.layer(s.hole.depth)
	name := s.here.Site.Layers[layer].Lithology.Name
	if s.here.Layers[layer].Stated {
		return 1
	}
	share := 1.0
	if ground.Hard(name) {
		share = ground.Weighted(s.hole.depth)
	}
	if needs, rock := ground.RockWeight(name); rock && s.v.OnBoard.Weight > 0 {
		share *= min(1, s.v.OnBoard.Weight/float64(needs))
	}
	return share
}

// wear is how many hours of the bit's life an hour of rotating takes here.
func (s *ship) wear() float64 { return s.Draw(s.here.Layers[s.layer(s.hole.depth)].Wear) }

// startFails is the chance that a start is given up here.
func (s *ship) startFails() rig.Rate {
	if s.bare() {
		return rig.BareStart
	}
	return rig.FailedStart
}

// surveyRock looks for a place to spud on rock, once a site, unless a task with pipe at the sea floor did so before.
func (s *ship) surveyRock() {
	site := &s.sites[s.siteNumber()]
	if !s.bare() || site.floorKnown || site.surveyed {
		return
	}
	s.do(activity.Survey, s.Rate(rig.BareSurvey))
	site.surveyed = s.ended == goingOn
}
