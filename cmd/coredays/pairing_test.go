package main

import (
	"testing"

	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
	"coredays/sim/choice"
)

// demonstrated compiles the demonstration with settings.
func demonstrated(t *testing.T, settings ...string) *voyage.Voyage {
	t.Helper()
	p, err := scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", settings)
	if err != nil {
		t.Fatal(err)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// Sharing random stream and sea makes the error of the difference at least three times smaller, that is, does
// the work of nine times as many replications, where the plans are alike but for one thing.
func TestTheSameLuckCutsTheErrorOfDifferencesThreefold(t *testing.T) {
	planned := demonstrated(t)
	for what, setting := range map[string]string{
		"faster trips":             "rates.tripping={low: 21 stands/h, mid: 24 stands/h, high: 26 stands/h, varies: expedition}",
		"faster connections":       "rates.connection={low: 3 min, mid: 5 min, high: 8 min, varies: run}",
		"deeper water":             "sites[SB-03].water_depth=1390 m",
		"one hole less deep":       "sites[SB-04].holes[C].core=[{with: RCB, to: 220 mbsf}]",
		"fewer logging runs":       "sites[SB-01].holes[D].logging=[density-resistivity]",
		"sailing half a day later": "sails=2027-02-20T20:00Z",
	} {
		c := choice.Compare(t.Context(), []choice.Alternative{{Name: "planned", Voyage: planned}, {Name: what, Voyage: demonstrated(t, setting)}}, sim.Run{Seed: 1, Replications: 400})
		t.Logf("%s: %.1f", what, c.Differences[0].Pairing)
		if gain := c.Differences[0].Pairing; !(gain >= 3) {
			t.Errorf("%s: the error is only %.2f times smaller", what, gain)
		}
	}
}
