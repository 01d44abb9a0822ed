package sim

import (
	"coredays/model/activity"
	"coredays/model/state"
	"coredays/model/voyage"
	"coredays/sim/random"
	"coredays/sim/ship"
)

// account takes the operation in hand out of the time spent: it is spent again.
func (x *Start) account() {
	for k, t := range x.State.Spent {
		x.spent[k] = float64(t)
	}
	for _, p := range x.past.Steps {
		x.spent[p.Kind] = max(0, x.spent[p.Kind]-p.Worked)
		x.spent[activity.WaitOnWeather] = max(0, x.spent[activity.WaitOnWeather]-p.Idle)
	}
	if x.past.Credit > 0 {
		x.spent[activity.CutCore] = max(0, x.spent[activity.CutCore]-x.past.Credit)
	}
}

// beenTo fills in the sites.
func (s *expedition) beenTo(x *Start) {
	for i := range x.State.Sites {
		from, to := &x.State.Sites[i], &s.Sites[i]
		to.FloorKnown = from.FloorKnown
		switch from.State {
		case state.ToCome:
			continue
		case state.InHand:
			to.State = ship.UnderWay
		case state.Done:
			to.State = ship.Done
			to.Left = x.since(from.Left)
		case state.Dropped:
			to.State = ship.Dropped
			continue
		}
		to.Arrived, to.Waited = x.since(from.Arrived), float64(from.Waited)
	}
}

// itemOf is an item by its number among all.
func (s *expedition) itemOf(x *Start, number int) (site int, item *voyage.Item) {
	i := &x.State.Items[number]
	return i.Site, &s.Voyage.Sites[i.Site].Items[i.Number]
}

// broughtUp fills in the cores.
func (s *expedition) broughtUp(x *Start) {
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
		if s.Clock = x.At; !c.OnDeck.IsZero() {
			s.Clock = x.since(c.OnDeck)
		}
		s.Hole.Cores = c.Number - 1
		s.RecordCore(c.Tool, float64(c.Top), float64(c.Cored), float64(c.Recovered/c.Cored))
	}
}

// worksAt puts an item of a site in hand.
func (s *expedition) worksAt(site int, item *voyage.Item) {
	s.At, s.Here, s.Item = voyage.SitePlace(site), &s.Voyage.Sites[site], item
	s.Place = random.Place{Site: s.Here.Key, Hole: item.Key}
	if item.Hole != nil {
		s.meetGround()
	}
}

// doneWith fills in holes and tasks.
func (s *expedition) doneWith(x *Start) {
	for n := range x.State.Items {
		i, log := &x.State.Items[n], &s.Items[n]
		switch i.State {
		case state.ToCome:
			continue
		case state.Dropped:
			log.State = ship.Dropped
			continue
		}
		log.State = ship.UnderWay
		log.Began = max(1, x.since(i.Began))
		log.Depth, log.Refused = float64(i.Depth), float64(i.Refused)
		log.Holes, log.Attempts = i.Spudded, max(0, i.Spudded-1)
		if i.State == state.Done {
			log.State, log.Incomplete = ship.Done, i.Incomplete
			log.Took = x.since(i.Ended) - x.since(i.Began)
			_, s.Item = s.itemOf(x, n)
			log.Covered = s.Covered(i.Site)
			s.learn(log)
			s.LastItem = 0
		}
	}
	s.Item, s.Here = nil, nil
}
