package sim

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/ship"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// The diary of the same replication says when the bit first stood at a depth: each mark of the hole is
// that moment.
func TestMarksAreWhenTheDiaryHasTheHoleAtTheirDepth(t *testing.T) {
	p := holesOf(1)
	v := simtest.Compiled(t, p)
	r := Replicate(t.Context(), v, Run{Seed: 1, Replications: 1})
	s := r.Closely()
	arrived := s.Sites[0].Arrives.P50
	marks := s.Sites[0].Holes[0].Marks
	if len(marks) != statistics.DepthMarks || marks[0].Depth != 0 || marks[statistics.DepthSteps].Depth != 100 {
		t.Fatalf("marks %v, want %d from 0 to 100 m", marks, statistics.DepthMarks)
	}
	diary := Diary(t.Context(), v, 1, 0, false)
	for _, m := range marks[1:] {
		at := math.NaN()
		for _, e := range diary.Entries {
			if float64(e.Depth) >= float64(m.Depth)-ship.Shortest {
				at = e.From.Sub(p.Sails).Seconds() - arrived
				break
			}
		}
		if math.Abs(at-m.P50) > 1.5 { // the diary is to the second
			t.Errorf("%.0f m: marked %.0f s after arriving, the diary has %.0f s", float64(m.Depth), m.P50, at)
		}
		if m.Share != 1 || m.P10 != m.P50 || m.P90 != m.P50 {
			t.Errorf("%.0f m: %+v, want one certain moment", float64(m.Depth), m)
		}
	}
}

// Half of what is cut is recovered, everywhere: 10 m of each slice are cored, 5 m are recovered; with two holes
// twice that.
func TestSlicesHoldWhatIsCutAndHalfOfItWhereHalfComesUp(t *testing.T) {
	for holes := 1; holes <= 2; holes++ {
		p := holesOf(holes)
		for l := range p.Sites[0].Layers[0].Lithology.Recovery {
			p.Sites[0].Layers[0].Lithology.Recovery[l] = simtest.Just(0.5)
		}
		r := Replicate(t.Context(), simtest.Compiled(t, p), Run{Seed: 1, Replications: 3})
		site := r.Closely().Sites[0]
		var cored, covered float64
		for _, c := range site.Section {
			if !simtest.Near(float64(c.Cored), 10*float64(holes)) || math.Abs(float64(c.Recovered)-5*float64(holes)) > 0.03 {
				t.Errorf("%d holes, %.0f to %.0f m: %.2f m cored, %.2f m recovered", holes, float64(c.From), float64(c.To), float64(c.Cored), float64(c.Recovered))
			}
			cored += float64(c.Cored)
			covered += c.Covered * float64(c.To-c.From)
		}
		if !simtest.Near(cored, site.Cored.Mean) || !simtest.Near(covered/100, site.Coverage.Mean) {
			t.Errorf("slices hold %.2f m cored and %.3f of the section; the site %.2f and %.3f", cored, covered/100, site.Cored.Mean, site.Coverage.Mean)
		}
	}
}

func TestWhatChartsDrawIsTheSameForAnyNumberOfWorkers(t *testing.T) {
	p := holesOf(3)
	p.Sites[0].Unusable = plan.Unusable{}
	p.Ship.Rates[rig.CoreGap], p.Ship.Rates[rig.PistonDurationFactor] = simtest.Wide(0.8, 2), simtest.Wide(0.7, 1.5)
	for l := range p.Sites[0].Layers[0].Lithology.Recovery {
		p.Sites[0].Layers[0].Lithology.Recovery[l] = simtest.Wide(0.8, 1.1)
	}
	v := simtest.Compiled(t, p)
	one := Replicate(t.Context(), v, Run{Seed: 3, Replications: 60, Workers: 1}).Closely()
	for _, workers := range []int{2, 7} {
		many := Replicate(t.Context(), v, Run{Seed: 3, Replications: 60, Workers: workers}).Closely()
		if d := cmp.Diff(one, many, cmpopts.EquateNaNs()); d != "" {
			t.Errorf("%d workers (-one +many):\n%s", workers, d)
		}
	}
	if first, last := one.Needed.Curve[0], one.Needed.Curve[statistics.CurveSteps]; first >= last {
		t.Errorf("the curve goes from %g to %g: nothing varies and this shows nothing", first, last)
	}
}

func TestColumnsGiveEveryReplicationItsDays(t *testing.T) {
	p := holesOf(1)
	p.Ship.Rates[rig.PistonDurationFactor] = simtest.Wide(0.7, 1.5)
	r := Replicate(t.Context(), simtest.Compiled(t, p), Run{Seed: 1, Replications: 40})
	list := r.Columns()
	if list.Columns[0].Key != "whole.needed" || len(list.Numbers) != 40 {
		t.Fatalf("first column %q, %d replications", list.Columns[0].Key, len(list.Numbers))
	}
	if got, want := statistics.Summarise(list.Columns[0].Values), r.Summary().Needed.Total; got != want {
		t.Errorf("the column has %v, the summary %v", got, want)
	}
	seen := map[string]bool{}
	for _, c := range list.Columns {
		if seen[c.Key] || c.Meaning == "" || len(c.Values) != 40 {
			t.Errorf("column %q: twice %t, meaning %q, %d values", c.Key, seen[c.Key], c.Meaning, len(c.Values))
		}
		seen[c.Key] = true
	}
}
