package sim

import (
	"fmt"
	"testing"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// holesOf is a site of so many piston holes to 100 m, each begun 3 m higher than the one before.
func holesOf(n int) *plan.Plan {
	var items []plan.Item
	for i := range n {
		hole := simtest.PistonHole(string(rune('A'+i)), 100)
		hole.Hole.StartOffset = unit.Length(3 * i)
		items = append(items, hole)
	}
	return simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, items...))
}

// By hand, a metre missing at the top of each core but the first: hole A cores to 5 m, then every
// 9.5 m, the last to 100 m: eleven cores, ten gaps, 90 of 100 m. Hole B begins 3 m higher, so that
// its gaps lie inside the cores of A and A's inside those of B: nothing is missing.
func TestCoverageOfOneAndTwoHolesIsTheHandCount(t *testing.T) {
	for holes, want := range map[int]float64{1: 0.90, 2: 1.00, 3: 1.00} {
		p := holesOf(holes)
		p.Ship.Rates[rig.CoreGap] = simtest.Just(1)
		if got := sailed(t, p, false).Covered(0); !simtest.Near(got, want) {
			t.Errorf("%d holes cover %.3f of the section, by hand %.2f", holes, got, want)
		}
	}
}

// Half of each core is recovered, from the top of what was cut: one hole covers half. The cores of the
// second begin 3 m higher, so of each 9.5 m it adds the 3 m before the other's core begins.
func TestCoverageOfHalfRecoveryIsTheHandCount(t *testing.T) {
	for holes, want := range map[int]float64{1: 0.5, 2: 0.5 + 3/9.5} {
		p := holesOf(holes)
		for l := range p.Sites[0].Layers[0].Lithology.Recovery {
			p.Sites[0].Layers[0].Lithology.Recovery[l] = simtest.Just(0.5)
		}
		if got := sailed(t, p, false).Covered(0); got < want-0.05 || got > want+0.05 {
			t.Errorf("%d holes cover %.3f of the section, by hand %.3f apart from the ends and half-metre bins", holes, got, want)
		}
	}
}

func TestMoreHolesNeverCoverLess(t *testing.T) {
	var before []float64
	for holes := 1; holes <= 4; holes++ {
		p := holesOf(holes)
		p.Ship.Rates[rig.CoreGap], p.Ship.Rates[rig.DepthMismatch] = simtest.Wide(0.8, 2), simtest.Wide(1, 2)
		for l := range p.Sites[0].Layers[0].Lithology.Recovery {
			p.Sites[0].Layers[0].Lithology.Recovery[l] = simtest.Wide(0.8, 1.4)
		}
		r := replicated(t, p, 50, 2)
		now := r.Column(r.Unconstrained, r.Layout.Site(0, statistics.SiteCovered))
		for n := range before {
			if now[n] < before[n] {
				t.Fatalf("replication %d: %d holes cover %.3f, one fewer %.3f", n, holes, now[n], before[n])
			}
		}
		before = now
	}
	if fmt.Sprint(before[0]) == "1" && fmt.Sprint(before[1]) == "1" {
		t.Error("everything is covered: the test shows nothing")
	}
}
