package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/rig"
	"coredays/model/unit"
)

// Cores come up every 25 to 31 min in 200 m of water and every 55 to 61 min in 4,000 m. A catwalk
// that needs 40 min for each and has room for three fills up in the one and never in the other.
func TestAFullCatwalkDelaysTheRigInShallowWaterOnly(t *testing.T) {
	waited := func(water unit.Length) float64 {
		p := expedition(site("S", geo.Position{Longitude: 1}, water, pistonHole("A", 150)))
		p.Ship.Rates[rig.CatwalkTime] = just(40 * minutes)
		return sailed(t, p, false).spent[activity.CatwalkWait]
	}
	if w := waited(4000); w != 0 {
		t.Errorf("in 4,000 m the rig waited %.1f min", w/minutes)
	}
	// By hand: 17 cores of 150 m. In the long run the catwalk sets the pace, 40 min a core; the rig
	// alone would need about 19 + 6 min and is ahead by the three places that the catwalk has room for.
	if w := waited(200); w < 100*minutes {
		t.Errorf("in 200 m the rig waited only %.1f min", w/minutes)
	}
}

func TestASlowBenchSetsThePaceInShallowWater(t *testing.T) {
	p := expedition(site("S", geo.Position{Longitude: 1}, 200, pistonHole("A", 300)))
	p.Ship.Rates[rig.Bench] = just(45 * minutes)
	s := sailed(t, p, false)
	// 33 cores: the first three barrels are ready, each of the others comes off the bench 45 min after the last.
	cycle := s.spent[activity.BenchWait] + s.spent[activity.RunBarrel] + s.spent[activity.ShootPiston] + s.spent[activity.PullPiston] +
		s.spent[activity.FetchCorer] + s.spent[activity.HandleCorer] + s.spent[activity.Connection]
	cores := float64(s.tools[0].cores)
	// The core before the last gives its barrel back long before the last is run: (cores - 3) barrels
	// are waited for in turn, after the first core has come up.
	low, high := (cores-3)*45*minutes, cores*45*minutes
	if cycle < low || cycle > high {
		t.Errorf("%g cores took %.1f h, want between %.1f and %.1f", cores, cycle/hours, low/hours, high/hours)
	}
}

// Cores come up every 30 min from 22:30 on; each is a minute on the catwalk and 40 min in the laboratory. After
// four of them it is behind by 1 + 4 x 40 - 3 x 30 = 71 min; the one that comes ten hours later finds it
// free. Three came before midnight and two after.
func TestTheLaboratoryFallsBehindByWhatAHandAddsUp(t *testing.T) {
	p := oneSite(pistonHole("A", 100))
	p.Ship.Rates[rig.LaboratoryTime] = just(40 * minutes)
	s := sailedTo(t, p)
	s.clock = 22.5 * hours
	for _, want := range []float64{41, 51, 61, 71} {
		s.land()
		if !near(s.deck.behind, want*minutes) {
			t.Errorf("behind by %.2f min, by hand %g", s.deck.behind/minutes, want)
		}
		s.clock += 30 * minutes
	}
	s.clock += 10 * hours
	s.land()
	if !near(s.deck.labFree, s.clock+41*minutes) || !near(s.deck.behind, 71*minutes) {
		t.Errorf("free again after %.2f min, by hand 41; behind by %.2f min at most, by hand 71", (s.deck.labFree-s.clock)/minutes, s.deck.behind/minutes)
	}
	if s.deck.mostCores != 3 {
		t.Errorf("%d cores on the busiest day, by hand 3", s.deck.mostCores)
	}
}
