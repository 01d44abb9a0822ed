package lookahead

import (
	"context"
	"math"
	"slices"
	"testing"
	"time"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/state"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
)

// What is in hand has lasted so long already, and lasts on by what is left of its spread beyond that. All else is certain.
//
// A trip: the times of a lognormal rate with the factor 2 from P50 to P90 have a deviation of ln 2 / 1.2816 = 0.5409. One
// that has lasted 1.5 medians is among the longest 1 - Φ(ln 1.5 / 0.5409) = 1 - Φ(0.7496) = 0.2268, and every second of
// these lasts more than exp(0.5409 Φ⁻¹(1 - 0.1134)) = exp(0.5409 · 1.2087) = 1.923 medians in all.
//
// A repair: median 3.2 h, factor 4, deviation ln 4 / 1.2816 = 1.0817. Of those in hand for 6 h, the longest
// 1 - Φ(ln(6/3.2) / 1.0817) = 1 - Φ(0.5811) = 0.2806, every second lasts more than 3.2 exp(1.0817 · 1.0789) = 10.28 h.
func TestWhatIsInHandLastsBeyondItsTimeSoFar(t *testing.T) {
	p, err := scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", nil)
	if err != nil {
		t.Fatal(err)
	}
	certain(p)
	p.Ship.Rates[rig.Filling], p.Ship.Rates[rig.Strapping] = spread.Just(0), spread.Just(0)
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	whole := sim.Diary(context.Background(), v, 1, 0, true)
	trip := slices.IndexFunc(whole.Entries, func(e result.Entry) bool { return e.Kind == activity.RunPipe })
	usual := whole.Entries[trip].To.Sub(whole.Entries[trip].From)
	lognormal := func(median, factor float64) spread.Quantity {
		shape, err := spread.NewLognormal(median, factor)
		if err != nil {
			t.Fatal(err)
		}
		return spread.Quantity{Shape: shape, Shares: spread.All(spread.Run)}
	}
	p.Ship.Rates[rig.Tripping], p.Ship.Rates[rig.RepairTime] = lognormal(p.Ship.Rates[rig.Tripping].Median(), 2), lognormal(3.2*3600, 4)
	if v, err = voyage.Compile(p); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		kind activity.Kind
		so   time.Duration
		want time.Duration
	}{
		{activity.RunPipe, usual * 3 / 2, time.Duration(1.923 * float64(usual))},
		{activity.Breakdown, 6 * time.Hour, time.Duration(10.28 * float64(time.Hour))},
	} {
		d := *whole
		d.Entries = slices.Clone(whole.Entries[:trip+1])
		last := &d.Entries[trip]
		last.Kind = c.kind
		last.To = last.From.Add(c.so)
		st, faults := state.Read(p, papersOf(t, &d), last.To)
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		x := sim.TakeUp(v, st)
		if !x.Known {
			t.Errorf("%v in hand is not told from the log", c.kind)
		}
		var all []float64
		for n := range 200 {
			lasts := c.so
			for _, e := range sim.DiaryFrom(context.Background(), x, 1, n).Entries {
				if e.Kind == c.kind && !e.From.After(last.To.Add(time.Second)) {
					lasts = e.To.Sub(last.From)
				}
			}
			all = append(all, lasts.Hours())
		}
		slices.Sort(all)
		if all[10] < c.so.Hours()+1e-3 {
			t.Errorf("%v: of 200 that have lasted %v 10 end now", c.kind, c.so)
		}
		if got := all[100]; math.Abs(got/c.want.Hours()-1) > 0.08 {
			t.Errorf("%v: every second lasts %.2f h, want %.2f h", c.kind, got, c.want.Hours())
		}
	}
}

// A trouble in hand whose time is certain ends to the second when that is up, and the ship goes on: with the next of what
// she was doing, or where the string was severed by pulling what is left of it.
func TestTroubleInHandGoesOnWithoutAJump(t *testing.T) {
	p, err := scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", nil)
	if err != nil {
		t.Fatal(err)
	}
	certain(p)
	p.Ship.Rates[rig.LostBHA] = spread.Just(0)
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	whole := sim.Diary(context.Background(), v, 1, 0, true)
	last, cores := 0, 0
	for i := range whole.Entries {
		if whole.Entries[i].Kind == activity.Connection && whole.Entries[i+1].Kind == activity.RunBarrel {
			if last, cores = i, cores+1; cores == 5 {
				break
			}
		}
	}
	for _, c := range []struct {
		kind activity.Kind
		rate rig.Rate
		next activity.Kind
	}{
		{activity.Breakdown, rig.RepairTime, activity.RunBarrel},
		{activity.StuckPipe, rig.StuckTime, activity.RunBarrel},
		{activity.PartedLine, rig.PistonTroubleTime, activity.RunBarrel},
		{activity.SeverPipe, rig.Severing, activity.PullPipe},
	} {
		d := *whole
		d.Entries = slices.Clone(whole.Entries[:last+2])
		whole := time.Duration(p.Ship.Rates[c.rate].Median() * float64(time.Second))
		line := &d.Entries[last+1]
		line.Kind, line.To, line.Note = c.kind, line.From.Add(whole/2), ""
		st, faults := state.Read(p, papersOf(t, &d), line.To)
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		x := sim.TakeUp(v, st)
		after := sim.DiaryFrom(context.Background(), x, 1, 0).Entries
		n := slices.IndexFunc(after, func(e result.Entry) bool { return e.Kind == c.kind })
		if n < 0 || !x.Known {
			t.Errorf("%v in hand is not gone on with: %v", c.kind, after[0].Kind)
			continue
		}
		if off := after[n].To.Sub(line.From.Add(whole)).Abs(); off > 2*time.Second {
			t.Errorf("%v ends %v off", c.kind, off)
		}
		n++
		if after[n].To.Sub(after[n].From) < 2*time.Second { // of a connection that was done to the second
			n++
		}
		if got := after[n]; got.Kind != c.next || got.Bottom != line.Bottom {
			t.Errorf("after %v comes %v in a hole of %.1f m, want %v in one of %.1f m", c.kind, got.Kind, float64(got.Bottom), c.next, float64(line.Bottom))
		}
	}
}

// A logging run that a breakdown stopped half way begins again after the repair, and the rig does not break down while it
// is repaired, however often it does.
func TestWhatARepairStoppedBeginsAgainWhereItMust(t *testing.T) {
	p, v, d := certainDiary(t)
	n := slices.IndexFunc(d.Entries, func(e result.Entry) bool { return e.Kind == activity.RunString })
	run := d.Entries[n]
	whole, repair := run.To.Sub(run.From), time.Duration(p.Ship.Rates[rig.RepairTime].Median()*float64(time.Second))
	stopped := run.From.Add(whole / 2)
	d.Entries = append(d.Entries[:n+1], run)
	d.Entries[n].To = stopped
	last := &d.Entries[n+1]
	last.Kind, last.From, last.To = activity.Breakdown, stopped, stopped.Add(repair/2)
	st, faults := state.Read(p, papersOf(t, d), last.To)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	want := stopped.Add(repair).Add(whole)
	after := sim.DiaryFrom(context.Background(), sim.TakeUp(v, st), 1, 0).Entries
	again := slices.IndexFunc(after, func(e result.Entry) bool { return e.Kind == activity.RunString && e.From.After(last.To) })
	if again < 0 || after[again].To.Sub(want).Abs() > 2*time.Second {
		t.Fatalf("run %d, until %v, want %v", again, after[max(0, again)].To, want)
	}

	p.NoTrouble = false
	p.Ship.Rates[rig.BreakdownEvery] = spread.Just(3600)
	breaking, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	x := sim.TakeUp(breaking, st)
	for i := range 30 {
		for _, e := range sim.DiaryFrom(context.Background(), x, 1, i).Entries {
			if e.Kind == activity.Breakdown && e.To.After(last.To) {
				if off := e.To.Sub(stopped.Add(repair)); off.Abs() > 2*time.Second {
					t.Errorf("replication %d: the repair ends %v off", i, off)
				}
				break
			}
		}
	}
}
