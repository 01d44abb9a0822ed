package main

import (
	"context"
	"errors"
	"io/fs"
	"os"
	"strings"
	"testing"
)

func TestAnInterruptedSearchForAnOrderIsToldOnThePage(t *testing.T) {
	for name, left := range map[string]int64{"at once": 0, "in the search": 45} {
		ctx := &countdown{Context: t.Context()}
		ctx.left.Store(left)
		file := t.TempDir() + "/r.html"
		code, _, _ := called(ctx, "simulate", "--replications", "20", "--workers", "1", "--orders", "--report", file)
		html, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if code != exitInterrupted || !strings.Contains(string(html), "Stopped before any alternative was sailed") {
			t.Errorf("%s: exit %d", name, code)
		}
		if whole := strings.Contains(string(html), "No replication finished"); whole != (left == 0) {
			t.Errorf("%s: the simulation itself has no answer: %v", name, whole)
		}
	}
}

func TestAnInterruptedComparisonHasAPage(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	for _, question := range [][]string{{"--orders"}, {"--drop"}, {"--departures", "2027-01-14,2027-02-14"}} {
		file := t.TempDir() + "/r.html"
		code, _, _ := called(ctx, append([]string{"compare", "--report", file}, question...)...)
		html, err := os.ReadFile(file)
		if errors.Is(err, fs.ErrNotExist) && code == exitInterrupted {
			continue // on a busy machine the plan is not even read before the program ends
		}
		if err != nil || code != exitInterrupted || !strings.Contains(string(html), "so there is no answer") {
			t.Errorf("%v: exit %d: %v", question, code, err)
		}
	}
}
