package record

import (
	"math"
	"time"

	"golang.org/x/exp/stats"

	"coredays/model/coring"
	"coredays/model/unit"
)

// Core is a core as it was recovered.
type Core struct {
	Number           int // in its hole
	Tool             coring.Tool
	Cored, Recovered unit.Length // Recovered is not a number where the record is blank
	OnDeck           time.Time   // zero where the record is blank
}

// CoreHole names a hole with cores.
type CoreHole struct{ Program, Leg, Site, Hole string }

// leastCores is the fewest cycles, or cores, by which a tool's work in a hole is judged [judgement].
const leastCores = 5

// longestCycle parts a cycle from a bit trip, a logging run or a storm between two cores; a day is
// longer than a round trip of the pipe in any depth of water [judgement].
const longestCycle = 24 * time.Hour

// Cycle is the median time between cores of a tool in a hole, false where there are too few. Cores
// must follow each other, so that another tool or a drilled interval leaves no false cycle.
func Cycle(cores []Core, t coring.Tool) (minutes float64, enough bool) {
	var cycles []float64
	for i := 1; i < len(cores); i++ {
		a, b := cores[i-1], cores[i]
		if a.Tool != t || b.Tool != t || b.Number != a.Number+1 || a.OnDeck.IsZero() || b.OnDeck.IsZero() {
			continue
		}
		if took := b.OnDeck.Sub(a.OnDeck); took > 0 && took <= longestCycle {
			cycles = append(cycles, took.Minutes())
		}
	}
	if len(cycles) < leastCores {
		return 0, false
	}
	return stats.Median(cycles), true
}

// Recovery is the share of what a tool cored in a hole that was recovered, %; false where there are too few cores.
func Recovery(cores []Core, t coring.Tool) (percent float64, enough bool) {
	var cored, recovered float64
	n := 0
	for _, c := range cores {
		if c.Tool == t && c.Cored > 0 && !math.IsNaN(float64(c.Recovered)) {
			cored += float64(c.Cored)
			recovered += float64(c.Recovered)
			n++
		}
	}
	if n < leastCores {
		return 0, false
	}
	return 100 * recovered / cored, true
}
