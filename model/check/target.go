package check

import "coredays/model/voyage"

// target looks whether a hole's target is approved, known to the layers, and within the string's reach.
func (i *inspector) target(s *voyage.Site, item *voyage.Item) {
	target := item.Target()
	if s.ApprovedTo > 0 {
		i.note(Finding{Site: s.Name, Hole: item.Name, What: "target within the approved depth", Verdict: atMost(float64(target), float64(s.ApprovedTo)),
			Value: float64(target), Limit: float64(s.ApprovedTo), Unit: "mbsf", Source: "approved_to of the scenario", Cure: "a shallower target, or the approval of a deeper one"})
	}
	if n := len(s.Site.Layers); n > 0 {
		bottom := s.Site.Layers[n-1].Bottom
		i.note(Finding{Site: s.Name, Hole: item.Name, What: "layers are known down to the target", Verdict: atMost(float64(target), float64(bottom)),
			Value: float64(target), Limit: float64(bottom), Unit: "mbsf", Source: "layers of the scenario", Cure: "a layer down to the target, or a shallower target"})
	}
	depth, tubulars := i.below(s, target), &i.plan.Ship.Tubulars
	onBoard := tubulars.Length() + i.board.Assembly.Length()
	i.note(Finding{Site: s.Name, Hole: item.Name, What: "pipe on board for the target", Borne: true, Verdict: atMost(float64(depth), float64(onBoard)),
		Value: float64(depth), Limit: float64(onBoard), Unit: "m", Source: "drill pipe and assembly on board", Cure: "more pipe under string, or a shallower target"})
	i.note(Finding{Site: s.Name, Hole: item.Name, What: "string reaches the target", Borne: true, Verdict: atMost(float64(depth), float64(i.reach.Length)),
		Value: float64(depth), Limit: float64(i.reach.Length), Unit: "m", Source: i.reachSource(), Cure: "a stronger or lighter string, or a shallower target"})
}
