package sim

import (
	"context"
	"testing"
	"time"

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
	} {
		ctx, cancel := context.WithTimeout(t.Context(), 30*time.Millisecond)
		done, stopped := run(ctx)
		cancel()
		if done != 0 || !stopped {
			t.Errorf("%s: %d replications done, stopped is %v", name, done, stopped)
		}
	}
}

func TestAReplicationIsStoppedWhateverTheShipIsDoing(t *testing.T) {
	for name, p := range endless() {
		endsSoon(t, name, func(ctx context.Context) { Replicate(ctx, compiled(t, p), Run{Replications: 5}) })
	}
}

func TestWhateverSailsIsStopped(t *testing.T) {
	v := compiled(t, endless()["waiting"])
	run, voyages, legs := Run{Replications: 40, Workers: 2}, []*voyage.Voyage{v, v}, []string{"a", "b"}
	columns, slices := newColumns(v), newSlices(v).all
	part := Part{Replications: 1, Needed: make([]float64, columns.width), Bound: make([]float64, columns.width), Marks: make([]float32, v.Items*depthMarks),
		Cut: make([]int64, slices), Recovered: make([]int64, slices), Covered: make([]int64, slices), Visits: make([]int64, len(v.Sites))}
	for name, call := range map[string]func(context.Context) (whole bool){
		"a share": func(ctx context.Context) bool { _, err := SailPart(ctx, v, run, 0); return err == nil },
		"shares": func(ctx context.Context) bool {
			_, err := Join(ctx, v, []Part{part})
			return err != context.DeadlineExceeded
		},
		"a diary":    func(ctx context.Context) bool { return Diary(ctx, v, 1, 0, false) != nil },
		"a hindcast": func(ctx context.Context) bool { return !Hindcast(ctx, voyages, legs, run).Stopped },
		"cores":      func(ctx context.Context) bool { return HindcastCores(ctx, voyages, legs, run) != nil },
	} {
		endsSoon(t, name, func(ctx context.Context) {
			if call(ctx) {
				t.Errorf("%s: what was stopped is taken for whole", name)
			}
		})
	}
}
