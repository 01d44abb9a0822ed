package sim

import (
	"coredays/model/chance"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// nextItem decides what comes next when nothing is in hand: the next item of the site, or where to
// go. Only a bound ship leaves anything out.
func (s *ship) nextItem() {
	if s.item != nil {
		return
	}
	if s.constrained {
		s.giveUp()
	}
	if s.here != nil {
		for i := range s.here.Items {
			item := &s.here.Items[i]
			if s.items[item.Number].state == ahead && s.wanted(item) && !s.leaveOut(item) {
				s.begin(item)
				return
			}
		}
	}
	s.towards = s.nextPlace()
}

// wanted reports whether the condition of an item is met. Where it fails the item is not called for: neither
// done nor dropped. Of a hole that was dropped nobody knows what it would have shown.
func (s *ship) wanted(i *voyage.Item) bool {
	if i.When == nil || s.everything {
		return true
	}
	other := s.items[s.here.Items[i.When.Hole].Number]
	depth := float64(i.When.Depth)
	met := other.refused > 0 && other.refused < depth
	if !i.When.Above {
		met = other.depth >= depth && (other.refused == 0 || other.refused >= depth)
	}
	switch {
	case other.state == dropped:
		s.items[i.Number].state = dropped
		return false
	case !met:
		s.items[i.Number].state = notCalled
	}
	return met
}

// begin takes an item in hand.
func (s *ship) begin(i *voyage.Item) {
	s.item = i
	s.Place.Hole = i.Key
	log := &s.items[i.Number]
	log.state = underWay
	log.began = s.clock
	s.hole, s.task = hole{}, task{}
	if i.Hole != nil {
		s.hole.aim = s.drilledFor()
		s.offset = s.bit > 0
		s.retireBit()
		s.meetGround()
		s.hole.rule = s.ruleAt()
		if i.Hole.Existing > 0 {
			s.findExisting()
		}
	}
}

// retireBit lets no hole be begun with a bit that is worn out.
func (s *ship) retireBit() {
	if s.bha.Of().Bit && s.bitLife > 0 && s.rotating >= s.bitLife {
		s.bha = coring.NoBHA
	}
}

// meetGround draws what differs from the survey in the hole in hand.
func (s *ship) meetGround() {
	s.layerDepth = s.Rate(rig.LayerDepth)
	s.shift = s.Rate(rig.DepthMismatch)
	if s.Stream.For(whichWay).For(s.Place.Hole).Bits(0)&1 == 0 {
		s.shift = -s.shift
	}
}

// whichWay is the purpose of the direction in which the depths of a hole are off.
var whichWay = chance.KeyOf("direction of the depth mismatch")

// finishItem closes the log of the item in hand.
func (s *ship) finishItem(incomplete bool) {
	log := &s.items[s.item.Number]
	log.state = done
	log.incomplete = log.incomplete || incomplete
	log.took = s.clock - log.began
	log.covered = s.covered(s.siteNumber())
	s.learn(log)
	s.lastItem = s.item.Number + 1
	s.item = nil
}

// closeItem adds the time until the ship is under way to the last item of the site.
func (s *ship) closeItem() {
	if s.lastItem > 0 {
		log := &s.items[s.lastItem-1]
		log.leaving = s.clock - log.began - log.took
		log.took += log.leaving
		s.lastItem = 0
	}
}

// nextPlace is where the ship goes from here: the next primary site with something left to do,
// then, when she is bound and there is time, an alternate, then the last port.
func (s *ship) nextPlace() voyage.Place {
	for _, alternate := range []bool{false, true} {
		if alternate && !s.constrained && !s.everything {
			break
		}
		for _, i := range s.v.Plan.Order {
			if s.v.Sites[i].Alternate == alternate && s.sites[i].state == ahead && !s.passOver(i) {
				return voyage.SitePlace(i)
			}
		}
	}
	return voyage.ToPort
}

// siteNumber is the index of the site where the ship is.
func (s *ship) siteNumber() int { return int(s.at - voyage.FirstSite) }

// movesHanging reports whether the ship goes to the next site with pipe hanging.
func (s *ship) movesHanging() bool {
	return s.towards >= voyage.FirstSite && s.v.Sites[s.towards-voyage.FirstSite].Hanging
}

// attemptKey keys the random stream of a hole begun again.
func attemptKey(i *voyage.Item, attempt int) chance.Key {
	return i.Key + chance.Key(attempt)*0x9e3779b97f4a7c15 // SplitMix64's increment keeps the keys apart
}
