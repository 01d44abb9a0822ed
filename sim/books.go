package sim

import (
	"coredays/model/activity"
	"coredays/model/state"
	"coredays/model/voyage"
	"coredays/sim/random"
)

// account takes the operation in hand out of the time spent: it is spent again.
func (x *Start) account() {
	for k, t := range x.State.Spent {
		x.spent[k] = float64(t)
	}
	for _, p := range x.past.steps {
		x.spent[p.kind] = max(0, x.spent[p.kind]-p.worked)
		x.spent[activity.WaitOnWeather] = max(0, x.spent[activity.WaitOnWeather]-p.idle)
	}
	if x.past.credit > 0 {
		x.spent[activity.CutCore] = max(0, x.spent[activity.CutCore]-x.past.credit)
	}
}

// beenTo fills in the sites.
func (s *ship) beenTo(x *Start) {
	for i := range x.State.Sites {
		from, to := &x.State.Sites[i], &s.sites[i]
		to.floorKnown = from.FloorKnown
		switch from.State {
		case state.ToCome:
			continue
		case state.InHand:
			to.state = underWay
		case state.Done:
			to.state = done
			to.left = x.since(from.Left)
		case state.Dropped:
			to.state = dropped
			continue
		}
		to.arrived, to.waited = x.since(from.Arrived), float64(from.Waited)
	}
}

// itemOf is an item by its number among all.
func (s *ship) itemOf(x *Start, number int) (site int, item *voyage.Item) {
	i := &x.State.Items[number]
	return i.Site, &s.v.Sites[i.Site].Items[i.Number]
}

// broughtUp fills in the cores.
func (s *ship) broughtUp(x *Start) {
	last := state.None
	for i := range x.State.Cores {
		c := &x.State.Cores[i]
		if c.Cored <= 0 || x.since(c.OnDeck) > x.begins+1 {
			continue // the operation in hand brings it up
		}
		if c.Item != last {
			s.worksAt(s.itemOf(x, c.Item))
			last = c.Item
		}
		if s.clock = x.At; !c.OnDeck.IsZero() {
			s.clock = x.since(c.OnDeck)
		}
		s.hole.cores = c.Number - 1
		s.recordCore(c.Tool, float64(c.Top), float64(c.Cored), float64(c.Recovered/c.Cored))
	}
}

// worksAt puts an item of a site in hand.
func (s *ship) worksAt(site int, item *voyage.Item) {
	s.at, s.here, s.item = voyage.SitePlace(site), &s.v.Sites[site], item
	s.Place = random.Place{Site: s.here.Key, Hole: item.Key}
	if item.Hole != nil {
		s.meetGround()
	}
}

// doneWith fills in holes and tasks.
func (s *ship) doneWith(x *Start) {
	for n := range x.State.Items {
		i, log := &x.State.Items[n], &s.items[n]
		switch i.State {
		case state.ToCome:
			continue
		case state.Dropped:
			log.state = dropped
			continue
		}
		log.state = underWay
		log.began = max(1, x.since(i.Began))
		log.depth, log.refused = float64(i.Depth), float64(i.Refused)
		log.holes, log.attempts = i.Spudded, max(0, i.Spudded-1)
		if i.State == state.Done {
			log.state, log.incomplete = done, i.Incomplete
			log.took = x.since(i.Ended) - x.since(i.Began)
			_, s.item = s.itemOf(x, n)
			log.covered = s.covered(i.Site)
			s.learn(log)
			s.lastItem = 0
		}
	}
	s.item, s.here = nil, nil
}
