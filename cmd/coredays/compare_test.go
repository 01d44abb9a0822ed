package main

import (
	"context"
	"encoding/json"
	"strings"
	"testing"
	"time"

	"coredays/cmd/coredays/call"
)

func TestAComparisonInterruptedAtOnceHasNoAnswer(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	for _, question := range [][]string{{"--orders"}, {"--drop"}, {"--departures", "2027-01-14,2027-02-14"}} {
		code, stdout, _ := called(ctx, append([]string{"compare"}, question...)...)
		// On a busy machine the plan is not even read before the program ends: then it says nothing.
		if code != exitInterrupted || stdout != "" && !strings.Contains(stdout, "there is no answer") || strings.Contains(stdout, "First:") {
			t.Errorf("%v: exit %d: %s", question, code, stdout)
		}
	}
}

func TestAnInterruptedComparisonKeepsWhatIsDone(t *testing.T) {
	ctx := &countdown{Context: t.Context()}
	ctx.left.Store(150) // a dozen replications of one date take some dozen questions of the context
	code, stdout, _ := called(ctx, "compare", "--departures", "2027-01-14..2027-06-14/3d", "--replications", "12", "--json", "-", "--workers", "1")
	var c struct {
		StoppedEarly bool `json:"stopped_early"`
		Alternatives []struct{ Name string }
	}
	if err := json.Unmarshal([]byte(stdout), &c); err != nil {
		t.Fatalf("%v in %q", err, stdout)
	}
	if n := len(c.Alternatives); code != exitInterrupted || !c.StoppedEarly || n < 2 || n > 20 {
		t.Errorf("exit %d, %d of 51 dates are told, stopped early: %v", code, n, c.StoppedEarly)
	}
}

func TestDatesAreListedOrCountedInSteps(t *testing.T) {
	sails := time.Date(2027, 2, 20, 8, 30, 0, 0, time.UTC)
	for text, want := range map[string]string{
		"2027-01-14,2027-02-01T06:00Z":      "2027-01-14T08:30 2027-02-01T06:00",
		"2027-01-14..2027-02-12/14d":        "2027-01-14T08:30 2027-01-28T08:30 2027-02-11T08:30",
		"2027-01-14T00:00+10:00,2028-02-29": "2027-01-13T14:00 2028-02-29T08:30",
	} {
		dates, err := call.ParseDates(text, sails)
		if err != nil {
			t.Error(err)
		}
		var got []string
		for _, at := range dates {
			got = append(got, at.Format("2006-01-02T15:04"))
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: %v, want %s", text, got, want)
		}
	}
}
