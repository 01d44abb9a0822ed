package main

import "testing"

func TestPrecisionGoesOnUntilP90OfDaysNeededIsKnownSoWell(t *testing.T) {
	half := func(o outcome) float64 { return (o.DaysNeeded.Total.P90CI[1] - o.DaysNeeded.Total.P90CI[0]) / 2 }
	simulated := func(more ...string) outcome {
		code, stdout, stderr := called(t.Context(), append([]string{"simulate", "--replications", "100", "--json", "-"}, more...)...)
		if code != exitOK {
			t.Fatalf("exit %d: %s", code, stderr)
		}
		return parsed(t, stdout)
	}
	const wanted = 1 // d
	first := simulated()
	if half(first) <= wanted {
		t.Fatalf("100 replications are precise enough, ±%g d: this tests nothing", half(first))
	}
	if o := simulated("--precision", "24h"); half(o) > wanted || o.Replications <= 100 {
		t.Errorf("±%g d after %d replications, want at most ±%d d", half(o), o.Replications, wanted)
	}
	if o := simulated("--precision", "100d"); o.Replications != 100 {
		t.Errorf("%d replications, want the 100 that were enough", o.Replications)
	}
}
