package ship

import (
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// WithPipe is what the way from place to place adds to the visits at its ends, s, where with all pipe on deck
// it takes so many seconds. A visit of the book begins and ends with all pipe on deck. With pipe
// hanging the ship sails slowly, but has neither to pull it and run it again nor to get under way
// and take station.
func (s *Ship) WithPipe(from, to voyage.Place, onDeck float64) float64 {
	if from < voyage.FirstSite || to < voyage.FirstSite || !s.Voyage.Sites[to-voyage.FirstSite].Hanging {
		return onDeck
	}
	left, reached := &s.Voyage.Sites[from-voyage.FirstSite], &s.Voyage.Sites[to-voyage.FirstSite]
	last, first := lastAssembly(left), firstAssembly(reached)
	if last == coring.NoBHA {
		return onDeck
	}
	start, end := ClearOf(left.Floor), ClearOf(reached.Floor)
	shallower, down := min(start, end), s.runTime(first, end)
	visits := s.pipeTime(start) + s.RateMedian(rig.LayDown) + down
	moves := s.pipeTime(start - shallower)
	if last == first {
		moves += s.pipeTime(end-shallower) + s.RateMedian(rig.OffsetMove)
	} else {
		moves += s.pipeTime(shallower) + s.RateMedian(rig.LayDown) + down
	}
	sails := s.Voyage.Leg(from, to).Distance / s.RateMedian(rig.HangingSpeed)
	return sails - s.RateMedian(rig.Securing) - s.RateMedian(rig.Positioning) + s.WithOther(moves-visits)
}

// pipeTime is the median time to run or pull pipe above the sea floor, s.
func (s *Ship) pipeTime(length float64) float64 {
	return length / s.RateMedian(rig.StandLength) / s.RateMedian(rig.Tripping)
}

// runTime is the median time to make up an assembly, if any, and to run it down to a depth, s.
func (s *Ship) runTime(a coring.Assembly, depth float64) float64 {
	if a == coring.NoBHA {
		return 0
	}
	return s.RateMedian(a.Of().MakeUp) + s.pipeTime(depth)
}

// firstAssembly is that of the first hole of a site.
func firstAssembly(site *voyage.Site) coring.Assembly {
	for i := range site.Items {
		if h := site.Items[i].Hole; h != nil {
			return assemblyOf(h)
		}
	}
	return coring.NoBHA
}

// lastAssembly is that of the last hole of a site that is wanted whatever the others show.
func lastAssembly(site *voyage.Site) coring.Assembly {
	last := coring.NoBHA
	for i := range site.Items {
		if item := &site.Items[i]; item.Hole != nil && (item.When == nil || last == coring.NoBHA) {
			last = assemblyOf(item.Hole)
		}
	}
	return last
}
