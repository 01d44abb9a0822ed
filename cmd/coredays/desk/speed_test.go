package desk

import (
	"testing"

	"coredays/scenario"
	"coredays/sim"
)

func benchmarkAnswer(b *testing.B, replications int) {
	d := New("")
	for b.Loop() {
		now := d.readingOf(string(scenario.DemonstrationText()))
		results := sim.Replicate(b.Context(), now.voyage, sim.Run{Seed: seed, Replications: replications})
		if _, err := d.answerOf(&now, results, replications < refined); err != nil {
			b.Fatal(err)
		}
	}
}
