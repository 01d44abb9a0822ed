package lookahead

import (
	"testing"

	"coredays/model/voyage"
	"coredays/sim"
)

func benchmarkPage(b *testing.B, replications int) {
	p, f := expedition(b)
	v, err := voyage.Compile(p)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if _, err := Page(b.Context(), v, f, sim.Run{Seed: 1, Replications: replications}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkFirstPage is the rough answer: log and cores read, learned from, the rest and each choice sailed 100 times.
func BenchmarkFirstPage(b *testing.B) { benchmarkPage(b, 100) }

// BenchmarkWholePage is the answer of thousands.
func BenchmarkWholePage(b *testing.B) { benchmarkPage(b, 3000) }
