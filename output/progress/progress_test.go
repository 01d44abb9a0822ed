package progress

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"testing/synctest"
	"time"
)

// drawn are the lines that were drawn one over the other, without the blanks at their ends.
func drawn(out *bytes.Buffer) (lines []string) {
	for line := range strings.SplitSeq(strings.TrimPrefix(out.String(), "\r"), "\r") {
		lines = append(lines, strings.TrimRight(line, " "))
	}
	return lines
}

// In a bubble time goes on only where everybody waits, so that speeds are what they should be.
func TestProgressShowsSpeedAndTimeLeft(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		var out bytes.Buffer
		l := begin(&out, 10_000, 80)
		time.Sleep(time.Second / 20) // reports come between the lines
		for n := range 40 {
			time.Sleep(time.Second / 10)
			l.Done(100 * (n + 1)) // 1000 a second, so that 6 s are left
		}
		l.Close()
		lines := drawn(&out)
		want := regexp.MustCompile(`^3900 of 10000 replications \[-+>_+\] 1000/s 6s left$`)
		if last := lines[len(lines)-3]; !want.MatchString(last) { // then it is wiped out
			t.Errorf("%q, want %v", last, want)
		}
	})
}

func TestProgressWithoutATotalShowsNoTimeLeft(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		var out bytes.Buffer
		l := begin(&out, 0, 80)
		time.Sleep(time.Second / 20)
		for n := range 40 {
			time.Sleep(time.Second / 10)
			l.Done(25 * (n + 1))
		}
		l.Close()
		lines := drawn(&out)
		want := regexp.MustCompile(`^975 replications \[_+\] 250/s$`)
		if last := lines[len(lines)-3]; !want.MatchString(last) {
			t.Errorf("%q, want %v", last, want)
		}
	})
}

func TestProgressIsDrawnTenTimesASecondAtMost(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		var out bytes.Buffer
		l := begin(&out, 100_000, 80)
		for n := range 100_000 { // 10 s
			time.Sleep(time.Second / 10_000)
			l.Done(n + 1)
		}
		l.Close()
		if n := len(drawn(&out)); n < 98 || n > 103 { // a hundred, and the wiping
			t.Errorf("%d lines in 10 s", n)
		}
	})
}

func TestProgressWipesItsLineOut(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		var out bytes.Buffer
		l := begin(&out, 100, 80)
		l.Done(50)
		time.Sleep(time.Second)
		l.Close()
		l.Close()
		if want := "\r" + strings.Repeat(" ", 79) + "\r"; !strings.HasSuffix(out.String(), want) {
			t.Errorf("%q", out.String())
		}
		if strings.ContainsAny(out.String(), "\x1b\n") {
			t.Errorf("colours or new lines in %q", out.String())
		}
	})
}

func TestProgressStaysOnOneLineOfANarrowTerminal(t *testing.T) {
	for _, width := range []int{1, 2, 20, 60} {
		synctest.Test(t, func(t *testing.T) {
			var out bytes.Buffer
			l := begin(&out, 10_000, width)
			l.Done(4000)
			time.Sleep(2 * time.Second)
			l.Close()
			for line := range strings.SplitSeq(out.String(), "\r") {
				if len(line) > max(1, width-1) {
					t.Errorf("%d columns on a terminal of %d: %q", len(line), width, line)
				}
			}
		})
	}
}

func TestALateReportChangesNothing(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		var out bytes.Buffer
		l := begin(&out, 10, 80)
		l.Done(5)
		l.Done(3)
		time.Sleep(time.Second / 2)
		l.Close()
		if first := drawn(&out)[0]; !strings.HasPrefix(first, "5 of 10 replications ") {
			t.Errorf("%q", first)
		}
	})
}

func TestProgressMayBeReportedFromSeveralGoroutines(t *testing.T) {
	l := begin(io.Discard, 4000, 80)
	var group sync.WaitGroup
	for worker := range 4 {
		group.Go(func() {
			for n := range 1000 {
				l.Done(4*n + worker + 1)
			}
		})
	}
	group.Wait()
	if n := l.bar.Current(); n != 4000 {
		t.Errorf("%d done", n)
	}
	l.Close()
}

func TestNothingIsShownWhereThereIsNoTerminal(t *testing.T) {
	file, err := os.Create(filepath.Join(t.TempDir(), "stderr"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	l := New(file, 10)
	l.Done(5)
	l.Close()
	if info, err := file.Stat(); err != nil || info.Size() != 0 {
		t.Errorf("%d bytes, %v", info.Size(), err)
	}
	New(nil, 10).Done(1)
	var none *Line
	none.Done(1)
	none.Close()
}
