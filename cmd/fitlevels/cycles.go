package main

import (
	"cmp"
	"math"
	"slices"

	"golang.org/x/exp/stats"
)

// tools are the three coring tools of the study, in the order of their use down a hole.
var tools = []string{"H", "X", "R"}

var toolName = map[string]string{"H": "piston", "X": "extended barrel", "R": "rotary"}

// longestCycle separates a cycle from a bit trip, logging run or storm between two cores, in minutes.
// One day is longer than a round trip of the pipe in any water depth of the record (judgement).
const longestCycle = 24 * 60

// Cycle is the time between two consecutive cores on deck with the same tool.
type Cycle struct {
	Leg, Site, Hole string
	Tool            string
	Water           float64 // km
	Depth           float64 // km below sea floor, bottom of the later core
	Cored           float64 // m, by the later core
	Minutes         float64
}

// Skipped counts the pairs of cores that make no cycle.
type Skipped struct {
	NotAfter int `json:"zero_or_negative"`
	OverADay int `json:"over_24_h"`
}

// cyclesOf pairs the cores of each hole. The numbers must follow each other, so that a drilled
// interval, a lost core or another tool between the two leaves no false cycle.
func cyclesOf(cores []Core) (cycles []Cycle, skipped Skipped) {
	for i := 1; i < len(cores); i++ {
		a, b := cores[i-1], cores[i]
		follows := a.Hole == b.Hole && a.Tool == b.Tool && b.Number == a.Number+1
		if !follows || a.OnDeck.IsZero() || b.OnDeck.IsZero() || !slices.Contains(tools, b.Tool) {
			continue
		}
		switch minutes := b.OnDeck.Sub(a.OnDeck).Minutes(); {
		case minutes <= 0:
			skipped.NotAfter++
		case minutes > longestCycle:
			skipped.OverADay++
		default:
			cycles = append(cycles, Cycle{Leg: b.Leg, Site: b.Site, Hole: b.Hole, Tool: b.Tool, Water: b.Water / 1000,
				Depth: b.Bottom() / 1000, Cored: b.Cored, Minutes: minutes})
		}
	}
	return cycles, skipped
}

func withTool(cycles []Cycle, tool string) []Cycle {
	var kept []Cycle
	for _, c := range cycles {
		if c.Tool == tool {
			kept = append(kept, c)
		}
	}
	return kept
}

// byHole groups the cycles hole by hole in file order and leaves out holes with fewer than least.
func byHole(cycles []Cycle, least int) [][]Cycle {
	var holes [][]Cycle
	for start := 0; start < len(cycles); {
		end := start + 1
		for end < len(cycles) && cycles[end].Hole == cycles[start].Hole {
			end++
		}
		if end-start >= least {
			holes = append(holes, cycles[start:end])
		}
		start = end
	}
	return holes
}

func minutes(cycles []Cycle) []float64 {
	m := make([]float64, len(cycles))
	for i, c := range cycles {
		m[i] = c.Minutes
	}
	return m
}

// holeMedians has one cycle a hole: its median time at its median depth and length cored.
func holeMedians(holes [][]Cycle) []Cycle {
	medians := make([]Cycle, len(holes))
	for i, hole := range holes {
		medians[i] = hole[0]
		medians[i].Minutes = stats.Median(minutes(hole))
		medians[i].Depth = stats.Median(column(hole, func(c Cycle) float64 { return c.Depth }))
		medians[i].Cored = stats.Median(column(hole, func(c Cycle) float64 { return c.Cored }))
	}
	return medians
}

// column takes one value of each row.
func column[T, V any](rows []T, of func(T) V) []V {
	x := make([]V, len(rows))
	for i, r := range rows {
		x[i] = of(r)
	}
	return x
}

// Class is a median in a class of water depth.
type Class struct {
	From    float64 `json:"from_km"`
	Water   float64 `json:"mean_water_depth_km"`
	Holes   int     `json:"holes"`
	Cycles  int     `json:"cycles"`
	Minutes float64 `json:"median_of_hole_medians_min"`
	All     float64 `json:"median_of_all_cycles_min"`
}

func waterClasses(holes [][]Cycle) []Class {
	inClass := map[float64][][]Cycle{}
	for _, h := range holes {
		from := math.Floor(h[0].Water)
		inClass[from] = append(inClass[from], h)
	}
	var classes []Class
	for from, members := range inClass {
		all := slices.Concat(members...)
		classes = append(classes, Class{From: from, Holes: len(members), Cycles: len(all),
			Water:   stats.Mean(column(members, func(h []Cycle) float64 { return h[0].Water })),
			Minutes: stats.Median(minutes(holeMedians(members))), All: stats.Median(minutes(all))})
	}
	slices.SortFunc(classes, func(a, b Class) int { return cmp.Compare(a.From, b.From) })
	return classes
}
