package sim

import (
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// withPipe is what the way from place to place adds to the visits at its ends, s, where with all pipe on deck
// it takes so many seconds. A visit of the book begins and ends with all pipe on deck. With pipe
// hanging the ship sails slowly, but has neither to pull it and run it again nor to get under way
// and take station.
func (s *ship) withPipe(from, to voyage.Place, onDeck float64) float64 {
	if from < voyage.FirstSite || to < voyage.FirstSite || !s.v.Sites[to-voyage.FirstSite].Hanging {
		return onDeck
	}
	left, reached := &s.v.Sites[from-voyage.FirstSite], &s.v.Sites[to-voyage.FirstSite]
	last, first := lastAssembly(left), firstAssembly(reached)
	if last == coring.NoBHA {
		return onDeck
	}
	start, end := clearOf(left.Floor), clearOf(reached.Floor)
	shallower, down := min(start, end), s.runTime(first, end)
	visits := s.pipeTime(start) + s.rateMedian(rig.LayDown) + down
	moves := s.pipeTime(start - shallower)
	if last == first {
		moves += s.pipeTime(end-shallower) + s.rateMedian(rig.OffsetMove)
	} else {
		moves += s.pipeTime(shallower) + s.rateMedian(rig.LayDown) + down
	}
	sails := s.v.Leg(from, to).Distance / s.rateMedian(rig.HangingSpeed)
	return sails - s.rateMedian(rig.Securing) - s.rateMedian(rig.Positioning) + s.withOther(moves-visits)
}

// pipeTime is the median time to run or pull pipe above the sea floor, s.
func (s *ship) pipeTime(length float64) float64 {
	return length / s.rateMedian(rig.StandLength) / s.rateMedian(rig.Tripping)
}

// runTime is the median time to make up an assembly, if any, and to run it down to a depth, s.
func (s *ship) runTime(a coring.Assembly, depth float64) float64 {
	if a == coring.NoBHA {
		return 0
	}
	return s.rateMedian(a.Of().MakeUp) + s.pipeTime(depth)
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
