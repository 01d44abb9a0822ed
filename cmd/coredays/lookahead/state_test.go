package lookahead

import (
	"context"
	"slices"
	"testing"
	"time"

	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/state"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
	"coredays/sim/statistics"
)

// certain takes all chance out of a plan: every quantity has its median, nothing goes wrong, the sea is calm.
func certain(p *plan.Plan) {
	fix := func(q *spread.Quantity) {
		if q.Given() {
			*q = spread.Quantity{Shape: spread.Fixed(q.Median())}
		}
	}
	for r := range p.Ship.Rates {
		fix(&p.Ship.Rates[r])
	}
	for _, r := range []rig.Rate{rig.FailedStart, rig.WaterCore, rig.MissedMudline, rig.Bridge, rig.FunnelLost, rig.BreakdownEvery, rig.SlowdownPerMetre} {
		p.Ship.Rates[r] = spread.Quantity{Shape: spread.Fixed(0)}
	}
	p.NoTrouble = true
	fix(&p.InPort)
	for i := range p.Sites {
		s := &p.Sites[i]
		for l := range s.Layers {
			lith := &s.Layers[l].Lithology
			fix(&lith.Strength)
			fix(&lith.Rate)
			fix(&lith.Ahead)
			for t := range lith.Recovery {
				fix(&lith.Recovery[t])
			}
		}
		for n := range s.Items {
			if s.Items[n].Task != nil {
				for k := range s.Items[n].Task.Steps {
					fix(&s.Items[n].Task.Steps[k].Takes)
				}
			}
		}
		s.Unusable = plan.Unusable{}
		for m := range s.Climate.Mean {
			s.Climate.Mean[m], s.Climate.Variation[m] = 0.1, 0.01
		}
		s.Likeness = nil
	}
}

// goesHome holds that a ship that leaves what she has in hand needs the way to port at her speed, and besides no more than
// a core in hand, two trips of pipe, an assembly, a filled hole, rig service and pilotage take: less than two days.
func goesHome(t *testing.T, v *voyage.Voyage, x *sim.Start, doing activity.Kind, distance float64) {
	t.Helper()
	way := distance / v.Quantities[rig.SailingSpeed].Median
	o := sim.GoOn(context.Background(), x, sim.Choice{Home: true}, sim.Run{Seed: 1, Replications: 1})
	if took := o.Column(o.Constrained, statistics.ColDays)[0] - x.At; took < way || took > way+2*86400 {
		t.Errorf("home from %s takes %.2f d, and the way alone %.2f d", doing, took/86400, way/86400)
	}
}

// certainDiary is the demonstration with no chance left, and the diary of it.
func certainDiary(t *testing.T) (*plan.Plan, *voyage.Voyage, *result.Diary) {
	t.Helper()
	p, err := scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", nil)
	if err != nil {
		t.Fatal(err)
	}
	certain(p)
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	whole := sim.Diary(context.Background(), v, 1, 0, true)
	return p, v, whole
}

// Where no chance is left, a ship taken from her log in the midst of anything comes home to the second when the diary
// has her there, with the same depth and the same core: one state for every kind of activity that the diary has.
func TestShipGoesOnFromAnyStateWithoutAJump(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates many expeditions")
	}
	p, v, whole := certainDiary(t)
	last := &whole.Entries[len(whole.Entries)-1]
	seen := map[activity.Kind]int{}
	states := 0
	for i := range whole.Entries[:len(whole.Entries)-1] {
		e := &whole.Entries[i]
		if seen[e.Kind]++; seen[e.Kind] != 2 { // the second of a kind: the first is often of a first hole
			continue
		}
		states++
		at := e.From.Add(e.To.Sub(e.From) / 2).Round(time.Second)
		st, faults := state.Read(p, papersOf(t, whole), at)
		if len(faults) > 0 {
			t.Fatal(e.Kind, faults)
		}
		x := sim.TakeUp(v, st)
		if n := st.Now.Site; n != state.None {
			goesHome(t, v, x, e.Kind, v.Leg(voyage.SitePlace(n), voyage.ToPort).Distance)
		}
		d := sim.DiaryFrom(context.Background(), x, 1, 0)
		if end := &d.Entries[len(d.Entries)-1]; end.To.Sub(last.To).Abs() > 2*time.Second {
			t.Errorf("%s of %s at %s: home %s later than the diary has it", e.Kind, e.Place, at.Format(time.RFC3339), end.To.Sub(last.To))
		}
	}
	if states < 25 {
		t.Errorf("%d kinds of activity, want 25 states", states)
	}
}

// A ship under way knows how far she has to go. By hand: of a passage at her speed in calm, 50 nautical miles short of the
// end of it are sailed in 50 nmi over the speed, whatever the hours in the log would make of it. At a site she has no way to go.
func TestTheWayToGoIsThatOfTheState(t *testing.T) {
	p, v, whole := certainDiary(t)
	for i := range whole.Entries {
		e := &whole.Entries[i]
		if e.Kind != activity.Passage && e.Kind != activity.CutCore {
			continue
		}
		at := e.From.Add(e.To.Sub(e.From) / 2).Round(time.Second)
		st, faults := state.Read(p, papersOf(t, whole), at)
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		c := state.NoCorrection()
		c.ToGo = 50
		wrong := c.Apply(p, st)
		if e.Kind == activity.CutCore {
			if len(wrong) != 1 {
				t.Errorf("at a site: %q", wrong)
			}
			return
		}
		if len(wrong) > 0 {
			t.Fatal(wrong)
		}
		d := sim.DiaryFrom(context.Background(), sim.TakeUp(v, st), 1, 0)
		want := time.Duration(50 * 1852 / v.Quantities[rig.SailingSpeed].Median * float64(time.Second))
		passage := slices.IndexFunc(d.Entries, func(e result.Entry) bool { return e.Kind == activity.Passage })
		if left := d.Entries[passage].To.Sub(at); (left - want).Abs() > want/100 {
			t.Errorf("the passage ends %s from now, want %s", left, want)
		}
	}
}
