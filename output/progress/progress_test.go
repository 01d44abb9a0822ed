package progress

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"
)

// seconds is a clock that a test sets.
type seconds struct{ at float64 }

func (s *seconds) now() time.Time { return time.Unix(0, int64(s.at*1e9)) }

func TestProgressTellsRateAndTimeLeft(t *testing.T) {
	var out bytes.Buffer
	clock := &seconds{}
	p := newProgress(&out, 10_000, 80, clock.now)
	clock.at = 2
	p.Done(4000) // 2000 a second, so the other 6000 take 3 s
	if got, want := out.String(), "\r4000 of 10000 replications, 2000/s, 3 s left"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestProgressWipesItsLineOut(t *testing.T) {
	var out bytes.Buffer
	clock := &seconds{}
	p := newProgress(&out, 100, 80, clock.now)
	clock.at = 1
	p.Done(50)
	line := len(out.String()) - 1
	out.Reset()
	p.Close()
	if want := "\r" + strings.Repeat(" ", line) + "\r"; out.String() != want {
		t.Errorf("%q, want %q", out.String(), want)
	}
}

func TestProgressIsThrottledByCount(t *testing.T) {
	for _, total := range []int{100_000, 0} {
		var out bytes.Buffer
		clock := &seconds{}
		p := newProgress(&out, total, 80, clock.now)
		for n := 1; n <= 100_000; n++ {
			clock.at += 1e-4
			p.Done(n)
		}
		// Known: a hundredth of 100,000 a line. Unknown: a hundredth more each, ln(100,000)/0.01 lines at most.
		if lines := strings.Count(out.String(), "\r"); lines < 90 || lines > 1200 {
			t.Errorf("total %d: %d lines", total, lines)
		}
	}
}

func TestProgressWithoutATotalTellsNoTimeLeft(t *testing.T) {
	var out bytes.Buffer
	clock := &seconds{}
	p := newProgress(&out, 0, 80, clock.now)
	clock.at = 4
	p.Done(1000)
	if got, want := out.String(), "\r1000 replications, 250/s"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestProgressStaysOnOneLineOfANarrowTerminal(t *testing.T) {
	var out bytes.Buffer
	clock := &seconds{}
	p := newProgress(&out, 10_000, 20, clock.now)
	clock.at = 2
	p.Done(4000)
	if got := strings.TrimPrefix(out.String(), "\r"); len(got) != 19 {
		t.Errorf("%d columns: %q", len(got), got)
	}
}

func TestProgressBearsAStoppedClockAndLateReports(t *testing.T) {
	var out bytes.Buffer
	clock := &seconds{}
	p := newProgress(&out, 10, 80, clock.now)
	p.Done(5)
	p.Done(3)
	if got, want := out.String(), "\r5 of 10 replications"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestProgressMayBeToldFromSeveralGoroutines(t *testing.T) {
	clock := &seconds{at: 1}
	p := newProgress(io.Discard, 4000, 80, clock.now)
	var group sync.WaitGroup
	for worker := range 4 {
		group.Go(func() {
			for n := range 1000 {
				p.Done(4*n + worker + 1)
			}
		})
	}
	group.Wait()
	if p.done != 4000 {
		t.Errorf("%d done", p.done)
	}
}

func TestNothingIsToldWhereThereIsNoTerminal(t *testing.T) {
	file, err := os.Create(filepath.Join(t.TempDir(), "stderr"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	p := New(file, 10)
	p.Done(5)
	p.Close()
	if info, err := file.Stat(); err != nil || info.Size() != 0 {
		t.Errorf("%d bytes, %v", info.Size(), err)
	}
	New(nil, 10).Done(1)
	var none *Line
	none.Done(1)
	none.Close()
}

func TestWaitingIsToldInOneUnit(t *testing.T) {
	for given, want := range map[float64]string{0.2: "<1 s", 3: "3 s", 89: "89 s", 90: "2 min", 3000: "50 min", 7200: "2 h"} {
		if got := wait(given); got != want {
			t.Errorf("%g s: %q, want %q", given, got, want)
		}
	}
}
