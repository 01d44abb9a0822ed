package parts_test

import (
	"errors"
	option "flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"sync/atomic"
	"testing"
	"time"

	gocmp "github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/parts"
	"coredays/sim/share"
	"coredays/sim/simtest"
	"coredays/sim/study"
)

var long = option.Bool("long", false, "merge 10 million rows, which takes some minutes and 500 MB of disk")

// ofSeaDays are plans that differ in their days.
func ofSeaDays(t *testing.T, days ...unit.Duration) (list []study.Plan) {
	t.Helper()
	p := simtest.Uncertain()
	v, work := simtest.Compiled(t, p), study.WorkOf(p)
	for _, d := range days {
		list = append(list, study.Plan{Work: work, Voyage: func() (*voyage.Voyage, error) { return v.WithDays(d * unit.Day), nil }})
	}
	return list
}

// write puts a share into a file.
func write(t *testing.T, path string, which share.Which, sail func(put func(any) error) error) {
	t.Helper()
	packed, err := share.Pack(&share.Head{Which: which})
	if err == nil {
		err = sail(packed.Put)
	}
	if err != nil {
		t.Fatal(err)
	}
	file, err := os.Create(path)
	if err == nil {
		err = errors.Join(packed.Write(file), file.Close())
	}
	if err != nil {
		t.Fatal(err)
	}
}

func TestSharesOfAStudyAreTheStudyOfOneMachine(t *testing.T) {
	list, run := ofSeaDays(t, 18, 20, 22, 24, 30), sim.Run{Seed: 2, Replications: 30}
	whole := study.Gather(run.Replications)
	if err := study.Sail(t.Context(), list, run, 0, 5*run.Replications, whole.Add); err != nil {
		t.Fatal(err)
	}
	for _, of := range []int{1, 3, 8} {
		dir := t.TempDir()
		var paths []string
		for n := of; n >= 1; n-- {
			paths = append(paths, filepath.Join(dir, fmt.Sprint(n)))
			write(t, paths[len(paths)-1], share.Which{Number: n, Of: of}, func(put func(any) error) error {
				return parts.SailStudy(t.Context(), list, run, share.Which{Number: n, Of: of}, put)
			})
		}
		all, err := share.OpenAll(paths)
		if err != nil {
			t.Fatal(err)
		}
		figures, err := parts.JoinStudy(t.Context(), list, run, all)
		all.Close()
		if err != nil {
			t.Fatal(err)
		}
		if d := gocmp.Diff(whole.Plans, figures, cmpopts.EquateNaNs()); d != "" {
			t.Errorf("%d shares (-one machine +shares):\n%s", of, d)
		}
	}
}

// A thousand plans with ten thousand replications each, in eight shares: the rows are made up, but for the first of each
// share, which is sailed again.
func TestTenMillionRowsAreMergedInLittleMemory(t *testing.T) {
	if !*long {
		t.Skip("10 million rows take some minutes: with -long")
	}
	const planned, shares = 1000, 8
	days := make([]unit.Duration, planned)
	for i := range days {
		days[i] = 18 + unit.Duration(i)/50
	}
	list, run, dir := ofSeaDays(t, days...), sim.Run{Seed: 2, Replications: 10_000}, t.TempDir()
	var paths []string
	for n := 1; n <= shares; n++ {
		which := share.Which{Number: n, Of: shares}
		paths = append(paths, filepath.Join(dir, fmt.Sprint(n)))
		write(t, paths[n-1], which, func(put func(any) error) error { return madeUp(t, list, run, which, put) })
	}
	var size int64
	for _, path := range paths {
		info, err := os.Stat(path)
		if err != nil {
			t.Fatal(err)
		}
		size += info.Size()
	}
	runtime.GC()
	most, stop := watchMemory()
	all, err := share.OpenAll(paths)
	if err != nil {
		t.Fatal(err)
	}
	defer all.Close()
	figures, err := parts.JoinStudy(t.Context(), list, run, all)
	stop()
	if err != nil || len(figures) != planned {
		t.Fatalf("%d plans: %v", len(figures), err)
	}
	t.Logf("10 million rows in %d MB of files: at most %d MB of memory", size>>20, most.Load()>>20)
	if most.Load() > 500<<20 {
		t.Errorf("it took %d MB of memory, wanted less than 500", most.Load()>>20)
	}
}

// madeUp puts a share whose first replication alone was sailed.
func madeUp(t *testing.T, list []study.Plan, run sim.Run, which share.Which, put func(any) error) error {
	first, end := parts.StudyRange(list, run.Replications, which)
	random := rand.New(rand.NewPCG(1, uint64(which.Number)))
	var sailed *study.Piece
	if err := study.Sail(t.Context(), list, run, first, first+1, func(p *study.Piece) error { one := *p; sailed = &one; return nil }); err != nil {
		return err
	}
	for first < end {
		plan, from := first/run.Replications, first%run.Replications
		p := &study.Piece{Plan: plan, First: from, End: min(run.Replications, from+4000, from+end-first)}
		for len(p.Rows) < (p.End-p.First)*len(sailed.Rows) {
			p.Rows = append(p.Rows, random.NormFloat64())
		}
		if p.Plan == sailed.Plan && p.First == sailed.First {
			copy(p.Rows, sailed.Rows)
		}
		if err := put(p); err != nil {
			return err
		}
		first += p.End - p.First
	}
	return nil
}

// watchMemory notes the most memory that the program has from the system, until it is stopped.
func watchMemory() (most *atomic.Uint64, stop func()) {
	most = new(atomic.Uint64)
	ended, done := make(chan struct{}), make(chan struct{})
	go func() {
		defer close(done)
		for {
			var m runtime.MemStats
			runtime.ReadMemStats(&m)
			most.Store(max(most.Load(), m.Sys-m.HeapReleased))
			select {
			case <-ended:
				return
			case <-time.After(20 * time.Millisecond):
			}
		}
	}()
	return most, func() { close(ended); <-done }
}
