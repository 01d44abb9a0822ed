package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"os/signal"
	"strings"
	"sync/atomic"
	"testing"
	"time"
)

// countdown is a context that ends by itself when it has been asked a number of times.
type countdown struct {
	context.Context
	left atomic.Int64
}

func (c *countdown) Err() error {
	if c.left.Add(-1) < 0 {
		return context.Canceled
	}
	return nil
}

// interruptedAfter40 calls simulate with a context that ends after some 40 replications.
func interruptedAfter40(t *testing.T, args ...string) (code int, stdout, stderr string) {
	ctx := &countdown{Context: t.Context()}
	ctx.left.Store(40)
	return called(ctx, append([]string{"simulate"}, args...)...)
}

func TestAnInterruptedSimulationReportsWhatIsDone(t *testing.T) {
	code, stdout, stderr := interruptedAfter40(t, "--json", "-", "--workers", "3")
	if code != exitInterrupted || stderr != "" {
		t.Errorf("exit %d, %q on standard error", code, stderr)
	}
	o := parsed(t, stdout)
	if !o.StoppedEarly || o.Replications < 10 || o.Replications > 40 {
		t.Fatalf("%+v", o)
	}
	_, stdout, _ = called(t.Context(), "simulate", "--json", "-", "--replications", fmt.Sprint(o.Replications))
	whole := parsed(t, stdout)
	if whole.StoppedEarly || whole.DaysNeeded != o.DaysNeeded {
		t.Errorf("as many replications without interruption give %+v, not %+v", whole, o)
	}
}

func TestAnInterruptedSimulationTellsPeopleSo(t *testing.T) {
	code, stdout, _ := interruptedAfter40(t)
	if text := unwrapped(stdout); code != exitInterrupted || !strings.Contains(text, "replications, stopped early") || !strings.Contains(text, "Days needed") {
		t.Errorf("exit %d: %s", code, stdout)
	}
}

func TestASimulationInterruptedAtOnceHasNoAnswer(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	code, stdout, _ := called(ctx, "simulate")
	if text := unwrapped(stdout); code != exitInterrupted || !strings.Contains(text, "no replication finished") || strings.Contains(text, "Days needed") {
		t.Errorf("exit %d: %s", code, stdout)
	}
	code, stdout, _ = called(ctx, "simulate", "--json", "-")
	if o := parsed(t, stdout); code != exitInterrupted || !o.StoppedEarly || o.Replications != 0 {
		t.Errorf("exit %d, %+v", code, o)
	}
}

// unwrapped is a text without its line breaks.
func unwrapped(text string) string { return strings.Join(strings.Fields(text), " ") }

func TestAnInterruptedDiaryShowsNone(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	if code, stdout, _ := called(ctx, "diary"); code != exitInterrupted || stdout != "" {
		t.Errorf("exit %d: %s", code, stdout)
	}
}

// TestCtrlCEndsALongRunWithItsAnswer sends the real signal until the program has taken it. The
// channel of the test keeps it from ending the test when it comes too early or too late.
func TestCtrlCEndsALongRunWithItsAnswer(t *testing.T) {
	caught := make(chan os.Signal, 1)
	signal.Notify(caught, os.Interrupt)
	defer signal.Stop(caught)
	self, err := os.FindProcess(os.Getpid())
	if err != nil {
		t.Fatal(err)
	}
	var stdout, stderr bytes.Buffer
	ended := make(chan int)
	go func() {
		ended <- interruptible([]string{"simulate", "--replications", "100000", "--json", "-"}, &stdout, &stderr)
	}()
	for {
		select {
		case code := <-ended:
			if o := parsed(t, stdout.String()); code != exitInterrupted || !o.StoppedEarly || o.Replications >= 100_000 {
				t.Errorf("exit %d, %+v", code, o)
			}
			return
		case <-time.After(50 * time.Millisecond):
			if err := self.Signal(os.Interrupt); err != nil {
				t.Skip("this system can't send the signal: ", err)
			}
		}
	}
}
