package ship

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
	LabFree   float64
	Behind    float64 // most that the laboratory was ever behind, s
	today     int     // the day of the expedition on which the last core was recovered
	cores     int     // on that day
	MostCores int     // on any day
}

// AwaitBarrel waits until the bench has a barrel ready.
func (s *Ship) AwaitBarrel() {
	n := s.Deck.inPipe % s.count(rig.Barrels)
	s.Do(activity.BenchWait, s.Deck.barrels[n]-s.Clock)
}

// AwaitCatwalk waits until there is room for the core that was recovered.
func (s *Ship) AwaitCatwalk() {
	n := s.Deck.landed % s.count(rig.CatwalkRoom)
	s.Do(activity.CatwalkWait, s.Deck.out[n]-s.Clock)
}

// CoreOnDeck gives a core to the catwalk and its barrel to the bench, each to be worked on in turn.
func (s *Ship) CoreOnDeck() {
	d := &s.Deck
	d.cutFree = max(d.cutFree, s.Clock) + s.Rate(rig.CatwalkTime)
	d.out[d.landed%s.count(rig.CatwalkRoom)] = d.cutFree
	d.landed++
	s.toLaboratory()
	d.benchFree = max(d.benchFree, s.Clock) + s.Rate(rig.Bench)
	d.barrels[d.inPipe%s.count(rig.Barrels)] = d.benchFree
	d.inPipe++
}

// toLaboratory sends the core that was cut last on to the laboratory, which takes cores in turn.
func (s *Ship) toLaboratory() {
	d := &s.Deck
	d.LabFree = max(d.LabFree, d.cutFree) + s.Rate(rig.LaboratoryTime)
	d.Behind = max(d.Behind, d.LabFree-s.Clock)
	const day = 86400
	if today := int(s.Clock / day); today != d.today {
		d.today, d.cores = today, 0
	}
	d.cores++
	d.MostCores = max(d.MostCores, d.cores)
}

// count is a rate that is a whole number.
func (s *Ship) count(r rig.Rate) int { return min(mostOnDeck, max(1, int(s.RateMedian(r)+0.5))) }
