package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// Cores are recovered every 25 to 31 min in 200 m of water and every 55 to 61 min in 4,000 m. A catwalk
// that needs 40 min for each and has room for three fills up in the one and never in the other.
func TestAFullCatwalkDelaysTheRigInShallowWaterOnly(t *testing.T) {
	waited := func(water unit.Length) float64 {
		p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, water, simtest.PistonHole("A", 150)))
		p.Ship.Rates[rig.CatwalkTime] = simtest.Just(40 * simtest.Minutes)
		return sailed(t, p, false).Spent[activity.CatwalkWait]
	}
	if w := waited(4000); w != 0 {
		t.Errorf("in 4,000 m the rig waited %.1f min", w/simtest.Minutes)
	}
	// By hand: 17 cores of 150 m. In the long run the catwalk sets the pace, 40 min a core; the rig
	// alone would need about 19 + 6 min and is ahead by the three places that the catwalk has room for.
	if w := waited(200); w < 100*simtest.Minutes {
		t.Errorf("in 200 m the rig waited only %.1f min", w/simtest.Minutes)
	}
}

func TestASlowBenchSetsThePaceInShallowWater(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 200, simtest.PistonHole("A", 300)))
	p.Ship.Rates[rig.Bench] = simtest.Just(45 * simtest.Minutes)
	s := sailed(t, p, false)
	// 33 cores: the first three barrels are ready, each of the others comes off the bench 45 min after the last.
	cycle := s.Spent[activity.BenchWait] + s.Spent[activity.RunBarrel] + s.Spent[activity.ShootPiston] + s.Spent[activity.PullPiston] +
		s.Spent[activity.FetchCorer] + s.Spent[activity.HandleCorer] + s.Spent[activity.Connection]
	cores := float64(s.Tools[0].Cores)
	// The core before the last gives its barrel back long before the last is run: (cores - 3) barrels
	// are waited for in turn, after the first core has come up.
	low, high := (cores-3)*45*simtest.Minutes, cores*45*simtest.Minutes
	if cycle < low || cycle > high {
		t.Errorf("%g cores took %.1f h, want between %.1f and %.1f", cores, cycle/simtest.Hours, low/simtest.Hours, high/simtest.Hours)
	}
}

// Cores are recovered every 30 min from 22:30 on; each is a minute on the catwalk and 40 min in the laboratory. After
// four of them it is behind by 1 + 4 x 40 - 3 x 30 = 71 min; the one that comes ten hours later finds it
// free. Three came before midnight and two after.
func TestTheLaboratoryFallsBehindByWhatAHandAddsUp(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 100))
	p.Ship.Rates[rig.LaboratoryTime] = simtest.Just(40 * simtest.Minutes)
	s := sailedTo(t, p)
	s.Clock = 22.5 * simtest.Hours
	for _, want := range []float64{41, 51, 61, 71} {
		s.CoreOnDeck()
		if !simtest.Near(s.Deck.Behind, want*simtest.Minutes) {
			t.Errorf("behind by %.2f min, by hand %g", s.Deck.Behind/simtest.Minutes, want)
		}
		s.Clock += 30 * simtest.Minutes
	}
	s.Clock += 10 * simtest.Hours
	s.CoreOnDeck()
	if !simtest.Near(s.Deck.LabFree, s.Clock+41*simtest.Minutes) || !simtest.Near(s.Deck.Behind, 71*simtest.Minutes) {
		t.Errorf("free again after %.2f min, by hand 41; behind by %.2f min at most, by hand 71", (s.Deck.LabFree-s.Clock)/simtest.Minutes, s.Deck.Behind/simtest.Minutes)
	}
	if s.Deck.MostCores != 3 {
		t.Errorf("%d cores on the busiest day, by hand 3", s.Deck.MostCores)
	}
}
