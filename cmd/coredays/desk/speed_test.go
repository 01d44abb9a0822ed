package desk

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"coredays/scenario"
	"coredays/sim"
)

// minutes are those of a latitude.
var minutes = regexp.MustCompile(`\d\d\.\dS`)

// twentySites is the demonstration with its sites four times, some miles apart.
func twentySites(tb testing.TB) string {
	text := string(scenario.DemonstrationText())
	head, rest, found := strings.Cut(text, "sites:\n")
	sites, _, foundToo := strings.Cut(rest, "\n# The ship comes back")
	if !found || !foundToo {
		tb.Fatal("the demonstration is written otherwise")
	}
	all := head + "sites:\n"
	for i := range 4 {
		moved := strings.ReplaceAll(sites, "SB-", fmt.Sprintf("S%d-", i))
		all += minutes.ReplaceAllStringFunc(moved, func(south string) string {
			var m float64
			_, _ = fmt.Sscanf(south, "%fS", &m)
			return fmt.Sprintf("%04.1fS", math.Mod(m+7*float64(i), 60))
		}) + "\n"
	}
	return strings.Replace(all, "sea_days: 56 d", "sea_days: 75 d", 1)
}

func TestTheTwentySitesAreAPlan(t *testing.T) {
	if now := New("").readingOf(twentySites(t)); !now.sails() || len(now.voyage.Sites) != 20 {
		t.Errorf("%+v %v", now.Faults, now.Stops)
	}
}

func benchmarkAnswer(b *testing.B, text string, replications int) {
	d := New("")
	for b.Loop() {
		now := d.readingOf(text)
		if !now.sails() {
			b.Fatal(now.Faults, now.Stops)
		}
		results := sim.Replicate(b.Context(), now.voyage, sim.Run{Seed: seed, Replications: replications})
		if _, err := d.answerOf(&now, results, replications < refined); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkFirstAnswer is what lies between an edit and the first answer to it: reading, checking, sailing.
func BenchmarkFirstAnswer(b *testing.B) {
	b.Run("demonstration", func(b *testing.B) { benchmarkAnswer(b, string(scenario.DemonstrationText()), roughly) })
	b.Run("20 sites", func(b *testing.B) { benchmarkAnswer(b, twentySites(b), roughly) })
}

// BenchmarkRefinedAnswer is the answer of 2,000 replications by itself.
func BenchmarkRefinedAnswer(b *testing.B) {
	b.Run("demonstration", func(b *testing.B) { benchmarkAnswer(b, string(scenario.DemonstrationText()), refined) })
	b.Run("20 sites", func(b *testing.B) { benchmarkAnswer(b, twentySites(b), refined) })
}
