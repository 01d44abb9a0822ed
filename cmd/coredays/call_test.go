package main

import (
	"bytes"
	"context"
	"encoding/json"
	"testing"
)

// called carries out a command line in this process.
func called(ctx context.Context, args ...string) (code int, stdout, stderr string) {
	var out, errs bytes.Buffer
	code = run(ctx, args, &out, &errs)
	return code, out.String(), errs.String()
}

// outcome is what the tests look at in the JSON of a simulation.
type outcome struct {
	Replications int
	StoppedEarly bool `json:"stopped_early"`
	DaysNeeded   struct {
		Total struct {
			P90   float64
			P90CI [2]float64 `json:"p90_ci"`
		}
	} `json:"days_needed"`
}

func parsed(t *testing.T, text string) (o outcome) {
	t.Helper()
	if err := json.Unmarshal([]byte(text), &o); err != nil {
		t.Fatalf("%v in %q", err, text)
	}
	return o
}
