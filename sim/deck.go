package sim

import (
	"coredays/model/activity"
	"coredays/model/rig"
)

// mostOnDeck bounds the barrels on the bench and the cores on the catwalk.
const mostOnDeck = 16

// deck is the barrel bench and the catwalk: people who work beside the rig, known by when they
// are free. The rig waits for them only when it has to.
type deck struct {
	barrels   [mostOnDeck]float64 // when each barrel is ready, s after sailing
	benchFree float64
	inPipe    int                 // cores begun
	out       [mostOnDeck]float64 // when each place on the catwalk is empty
	cutFree   float64
	landed    int // cores laid on the catwalk
	labFree   float64
	behind    float64 // most that the laboratory was ever behind, s
	today     int     // the day of the expedition on which the last core was recovered
	cores     int     // on that day
	mostCores int     // on any day
}

// awaitBarrel waits until the bench has a barrel ready.
func (s *ship) awaitBarrel() {
	n := s.deck.inPipe % s.count(rig.Barrels)
	s.do(activity.BenchWait, s.deck.barrels[n]-s.clock)
}

// awaitCatwalk waits until there is room for the core that was recovered.
func (s *ship) awaitCatwalk() {
	n := s.deck.landed % s.count(rig.CatwalkRoom)
	s.do(activity.CatwalkWait, s.deck.out[n]-s.clock)
}

// coreOnDeck gives a core to the catwalk and its barrel to the bench, each to be worked on in turn.
func (s *ship) coreOnDeck() {
	d := &s.deck
	d.cutFree = max(d.cutFree, s.clock) + s.Rate(rig.CatwalkTime)
	d.out[d.landed%s.count(rig.CatwalkRoom)] = d.cutFree
	d.landed++
	s.toLaboratory()
	d.benchFree = max(d.benchFree, s.clock) + s.Rate(rig.Bench)
	d.barrels[d.inPipe%s.count(rig.Barrels)] = d.benchFree
	d.inPipe++
}

// toLaboratory sends the core that was cut last on to the laboratory, which takes cores in turn.
func (s *ship) toLaboratory() {
	d := &s.deck
	d.labFree = max(d.labFree, d.cutFree) + s.Rate(rig.LaboratoryTime)
	d.behind = max(d.behind, d.labFree-s.clock)
	const day = 86400
	if today := int(s.clock / day); today != d.today {
		d.today, d.cores = today, 0
	}
	d.cores++
	d.mostCores = max(d.mostCores, d.cores)
}

// count is a rate that is a whole number.
func (s *ship) count(r rig.Rate) int { return min(mostOnDeck, max(1, int(s.rateMedian(r)+0.5))) }
