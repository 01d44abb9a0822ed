package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"testing"
	"time"

	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/model/state"
	"coredays/model/voyage"
	"coredays/output/sheet"
	"coredays/scenario"
	"coredays/scenario/rigfile"
	"coredays/sim"
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
	for _, r := range []rig.Rate{rig.FailedStart, rig.WaterCore, rig.MissedMudline, rig.Bridge, rig.FunnelLost, rig.BreakdownEvery} {
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
				fix(&s.Items[n].Task.Takes)
			}
		}
		s.Unusable = plan.Unusable{}
		for m := range s.Climate.Mean {
			s.Climate.Mean[m], s.Climate.Variation[m] = 0.1, 0.01
		}
		s.Likeness = nil
	}
}

// logOf is a diary as the log that a crew would keep, read as any other.
func logOf(t *testing.T, d *result.Diary) *riglog.Papers {
	t.Helper()
	var table bytes.Buffer
	if err := sheet.Diary(&table, d); err != nil {
		t.Fatal(err)
	}
	var papers riglog.Papers
	if err := new(rigfile.Reading).Read(&papers, "log.csv", table.Bytes()); err != nil {
		t.Fatal(err)
	}
	return &papers
}

func TestShipGoesOnFromAnyStateWithoutAJump(t *testing.T) {
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
	papers := logOf(t, whole)
	bad := 0
	step := 5
	if os.Getenv("ALL") != "" {
		step = 1
	}
	for i := 3; i < len(whole.Entries)-2; i += step {
		e := &whole.Entries[i]
		at := e.From.Add(e.To.Sub(e.From) / 2).Round(time.Second)
		st, faults := state.Read(p, papers, at)
		if len(faults) > 0 {
			t.Fatalf("%v %v", e, faults)
		}
		x := sim.TakeUp(v, st)
		d := sim.DiaryFrom(context.Background(), x, 1, 0)
		end := d.Entries[len(d.Entries)-1].To
		want := whole.Entries[len(whole.Entries)-1].To
		if diff := end.Sub(want); diff.Abs() > 2*time.Second {
			bad++
			if bad < 40 {
				fmt.Println(i, e.From.Format("01-02T15:04:05"), e.Kind, e.Place, x.Known, diff)
			}
		}
	}
	fmt.Println(bad, "of", len(whole.Entries))
}

func TestDebugState(t *testing.T) {
	p, _ := scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", nil)
	certain(p)
	v, _ := voyage.Compile(p)
	whole := sim.Diary(context.Background(), v, 1, 0, true)
	papers := logOf(t, whole)
	for _, i := range []int{958, 963, 1243, 1348, 1553} {
		e := &whole.Entries[i]
		at := e.From.Add(e.To.Sub(e.From) / 2).Round(time.Second)
		st, _ := state.Read(p, papers, at)
		fmt.Printf("== %d %v %v\n", i, e.Kind, e.Place)
		for k := i - 4; k < i+6; k++ {
			x := whole.Entries[k]
			fmt.Println("   w", x.From.Format("15:04:05"), x.Kind, x.Depth, x.Bottom, x.Note)
		}
		for _, s := range st.Steps[len(st.Steps)-5:] {
			fmt.Println("  ", s.From.Format("15:04:05"), s.Kind, s.Worked, s.Idle, s.Before.Bit, s.Before.Assembly, s.Before.Rotated, s.Before.Hole)
		}
		x := sim.TakeUp(v, st)
		d := sim.DiaryFrom(context.Background(), x, 1, 0)
		for k := range 7 {
			x := d.Entries[k]
			fmt.Println("   d", x.From.Format("15:04:05"), x.Kind, x.Depth, x.Bottom, x.Note)
		}
	}
}
