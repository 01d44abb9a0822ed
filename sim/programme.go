package sim

import (
	"coredays/model/chance"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/sim/ship"
)

// nextItem decides what comes next when nothing is in hand: the next item of the site, or where to
// go. Only a bound ship leaves anything out.
func (s *expedition) nextItem() {
	if s.Item != nil {
		return
	}
	if s.Constrained {
		s.giveUp()
	}
	if s.Here != nil {
		for i := range s.Here.Items {
			item := &s.Here.Items[i]
			if s.Items[item.Number].State == ship.Ahead && s.wanted(item) && !s.leaveOut(item) {
				s.begin(item)
				return
			}
		}
	}
	s.Towards = s.nextPlace()
}

// wanted reports whether the condition of an item is met. Where it fails the item is not called for: neither
// done nor dropped. Of a hole that was dropped nobody knows what it would have shown.
func (s *expedition) wanted(i *voyage.Item) bool {
	if i.When == nil || s.everything {
		return true
	}
	other := s.Items[s.Here.Items[i.When.Hole].Number]
	depth := float64(i.When.Depth)
	met := other.Refused > 0 && other.Refused < depth
	if !i.When.Above {
		met = other.Depth >= depth && (other.Refused == 0 || other.Refused >= depth)
	}
	switch {
	case other.State == ship.Dropped:
		s.Items[i.Number].State = ship.Dropped
		return false
	case !met:
		s.Items[i.Number].State = ship.NotCalled
	}
	return met
}

// begin takes an item in hand.
func (s *expedition) begin(i *voyage.Item) {
	s.Item = i
	s.Place.Hole = i.Key
	log := &s.Items[i.Number]
	log.State = ship.UnderWay
	log.Began = s.Clock
	s.Hole, s.Task = ship.Hole{}, ship.Task{}
	if i.Hole != nil {
		s.Hole.Aim = s.DrilledFor()
		s.Offset = s.Bit > 0
		s.retireBit()
		s.meetGround()
		s.Hole.Rule = s.ruleAt()
		if i.Hole.Existing > 0 {
			s.findExisting()
		}
	}
}

// retireBit lets no hole be begun with a bit that is worn out.
func (s *expedition) retireBit() {
	if s.BHA.Of().Bit && s.BitLife > 0 && s.Rotating >= s.BitLife {
		s.BHA = coring.NoBHA
	}
}

// meetGround draws what differs from the survey in the hole in hand.
func (s *expedition) meetGround() {
	s.LayerDepth = s.Rate(rig.LayerDepth)
	s.Shift = s.Rate(rig.DepthMismatch)
	if s.Stream.For(whichWay).For(s.Place.Hole).Bits(0)&1 == 0 {
		s.Shift = -s.Shift
	}
}

// whichWay is the purpose of the direction in which the depths of a hole are off.
var whichWay = chance.KeyOf("direction of the depth mismatch")

// finishItem closes the log of the item in hand.
func (s *expedition) finishItem(incomplete bool) {
	log := &s.Items[s.Item.Number]
	log.State = ship.Done
	log.Incomplete = log.Incomplete || incomplete
	log.Took = s.Clock - log.Began
	log.Covered = s.Covered(s.SiteNumber())
	s.learn(log)
	s.LastItem = s.Item.Number + 1
	s.Item = nil
}

// closeItem adds the time until the ship is under way to the last item of the site.
func (s *expedition) closeItem() {
	if s.LastItem > 0 {
		log := &s.Items[s.LastItem-1]
		log.Leaving = s.Clock - log.Began - log.Took
		log.Took += log.Leaving
		s.LastItem = 0
	}
}

// nextPlace is where the ship goes from here: the next primary site with something left to do,
// then, when she is bound and there is time, an alternate, then the last port.
func (s *expedition) nextPlace() voyage.Place {
	for _, alternate := range []bool{false, true} {
		if alternate && !s.Constrained && !s.everything {
			break
		}
		for _, i := range s.Voyage.Plan.Order {
			if s.Voyage.Sites[i].Alternate == alternate && s.Sites[i].State == ship.Ahead && !s.passOver(i) {
				return voyage.SitePlace(i)
			}
		}
	}
	return voyage.ToPort
}

// movesHanging reports whether the ship goes to the next site with pipe hanging.
func (s *expedition) movesHanging() bool {
	return s.Towards >= voyage.FirstSite && s.Voyage.Sites[s.Towards-voyage.FirstSite].Hanging
}

// attemptKey keys the random stream of a hole begun again.
func attemptKey(i *voyage.Item, attempt int) chance.Key {
	return i.Key + chance.Key(attempt)*0x9e3779b97f4a7c15 // SplitMix64's increment keeps the keys apart
}
