package sim

import (
	"context"
	"testing"
	"time"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// A task of three million years, hour by hour: the run is stopped in the midst of its first replication, which is
// dropped rather than counted half. Without that it would sail on for minutes.
func TestARunIsStoppedInTheMidstOfAReplication(t *testing.T) {
	p := tasks(spread.Just(3e10 * hours))
	v := compiled(t, p)
	for name, run := range map[string]func(context.Context) (done int, stopped bool){
		"simulation": func(ctx context.Context) (int, bool) {
			r := Replicate(ctx, v, Run{Seed: 1, Replications: 4, Workers: 2})
			return len(r.column(r.needed, colDays)), r.Stopped
		},
		"hindcast": func(ctx context.Context) (int, bool) {
			r := HindcastCores(ctx, []*voyage.Voyage{v}, []string{"a"}, Run{Replications: 1})
			return len(r), r == nil
		},
		"candidate": func(ctx context.Context) (int, bool) {
			c := candidate{v: v}
			unlessHalted(func() { c.sail(ctx, 1, 1) })
			return len(c.outcomes), ctx.Err() != nil
		},
	} {
		ctx, cancel := context.WithTimeout(t.Context(), 30*time.Millisecond)
		done, stopped := run(ctx)
		cancel()
		if done != 0 || !stopped {
			t.Errorf("%s: %d replications done, stopped is %v", name, done, stopped)
		}
	}
}

// endless are plans of which one replication takes minutes, each in another loop of the engine.
func endless() map[string]*plan.Plan {
	waits := oneSite(pistonHole("A", 100))
	waits.Sites[0].Unusable = plan.Unusable{Because: "ice", Every: just(1e-3), Lasts: just(1e-3)}
	works := tasks(just(3e10 * hours))
	repairs := oneSite(pistonHole("A", 100))
	repairs.Ship.Rates[rig.BreakdownEvery], repairs.Ship.Rates[rig.RepairTime] = just(1), just(3e10*hours)
	sails := oneSite(pistonHole("A", 100))
	sails.Ship.Rates[rig.SailingSpeed] = just(1e-9)
	return map[string]*plan.Plan{"waiting": waits, "working": works, "repairing": repairs, "sailing": sails}
}

// endsSoon fails where a call goes on for a second after its context has ended; it takes a hundredth of that.
func endsSoon(t *testing.T, name string, call func(context.Context)) {
	t.Helper()
	const soon = 30 * time.Millisecond
	ctx, cancel := context.WithTimeout(t.Context(), soon)
	defer cancel()
	began := time.Now()
	call(ctx)
	if took := time.Since(began); took < soon/2 || took > soon+time.Second {
		t.Errorf("%s ended after %v; its context had ended after %v", name, took, soon)
	}
}

func TestAReplicationIsStoppedWhateverTheShipIsDoing(t *testing.T) {
	for name, p := range endless() {
		endsSoon(t, name, func(ctx context.Context) { Replicate(ctx, compiled(t, p), Run{Replications: 5}) })
	}
}

func TestWhateverSailsIsStopped(t *testing.T) {
	v, quick := compiled(t, endless()["waiting"]), compiled(t, oneSite(pistonHole("A", 100)))
	run, voyages, legs := Run{Replications: 40, Workers: 2}, []*voyage.Voyage{v, v}, []string{"a", "b"}
	columns, slices := newColumns(v), newSlices(v).all
	part := Part{Replications: 1, Needed: make([]float64, columns.width), Bound: make([]float64, columns.width), Marks: make([]float32, v.Items*depthMarks),
		Cut: make([]int64, slices), Recovered: make([]int64, slices), Covered: make([]int64, slices), Visits: make([]int64, len(v.Sites))}
	sailed := Replicate(t.Context(), quick, run)
	sailed.columns.voyage = v
	for name, call := range map[string]func(context.Context) (whole bool){
		"a share": func(ctx context.Context) bool { _, err := SailPart(ctx, v, run, 0); return err == nil },
		"shares": func(ctx context.Context) bool {
			_, err := Join(ctx, v, []Part{part})
			return err != context.DeadlineExceeded
		},
		"a diary":    func(ctx context.Context) bool { return Diary(ctx, v, 1, 0, false) != nil },
		"a hindcast": func(ctx context.Context) bool { return !Hindcast(ctx, voyages, legs, run).Stopped },
		"cores":      func(ctx context.Context) bool { return HindcastCores(ctx, voyages, legs, run) != nil },
		"a comparison": func(ctx context.Context) bool {
			return !Compare(ctx, []Alternative{{"a", v}, {"b", v}}, run).StoppedEarly
		},
		"cuts":         func(ctx context.Context) bool { c, _ := Cuts(ctx, v, run); return !c.StoppedEarly },
		"orders":       func(ctx context.Context) bool { return !BestOrder(ctx, v, run).StoppedEarly },
		"a visit book": func(ctx context.Context) bool { newVisitBook(ctx, v, 1, 4, 2); return false },
		"sensitivity":  func(ctx context.Context) bool { Sensitivity(ctx, sailed); return false },
		"a stage":      func(ctx context.Context) bool { return unlessHalted(func() { (&candidate{v: v}).sail(ctx, 1, 3) }) },
		"a stage of 1e9": func(ctx context.Context) bool {
			return unlessHalted(func() { (&candidate{v: quick}).sail(ctx, 1, 1e9) })
		},
	} {
		endsSoon(t, name, func(ctx context.Context) {
			if call(ctx) {
				t.Errorf("%s: what was stopped is taken for whole", name)
			}
		})
	}
}

func TestOtherPanicsAreNotSwallowed(t *testing.T) {
	defer func() {
		if recover() != "a fault" {
			t.Error("a fault of the program was swallowed")
		}
	}()
	unlessHalted(func() { panic("a fault") })
}
