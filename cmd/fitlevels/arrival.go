package main

import (
	"math"
	"slices"
)

// mudlineDepth parts a hole cored from the sea floor from one drilled ahead, in m below sea floor.
const mudlineDepth = 1

// Visit joins a hole's start and end with its first and last core on deck.
type Visit struct {
	Hole
	Before float64 // h, start to first core on deck
	After  float64 // h, last core on deck to end
	Bottom float64 // km below sea floor
	Ahead  bool    // drilled before the first core
	Tool   string  // of the first core
	Exit   string  // tool of the last core
}

// visits needs a start, an end and cores between them; other holes are counted as left out.
func visits(holes []Hole, cores []Core) (list []Visit, leftOut int) {
	first, last := map[string]Core{}, map[string]Core{}
	deep := map[string]float64{}
	for _, c := range cores {
		if c.OnDeck.IsZero() || !slices.Contains(tools, c.Tool) {
			continue
		}
		if _, seen := first[c.Hole]; !seen {
			first[c.Hole] = c
		}
		last[c.Hole] = c
		deep[c.Hole] = math.Max(deep[c.Hole], c.Bottom())
	}
	for _, h := range holes {
		a, ok := first[h.Name]
		if !ok {
			continue
		}
		v := Visit{Hole: h, Before: a.OnDeck.Sub(h.Start).Hours(), After: h.End.Sub(last[h.Name].OnDeck).Hours(),
			Bottom: deep[h.Name] / 1000, Ahead: a.Top > mudlineDepth, Tool: a.Tool, Exit: last[h.Name].Tool}
		if h.Start.IsZero() || h.End.IsZero() || v.Before <= 0 || v.After < 0 {
			leftOut++
			continue
		}
		list = append(list, v)
	}
	return list, leftOut
}

// Span is the time of a kind of move in a class of water depth, in hours.
type Span struct {
	From  float64 `json:"from_km"`
	Hours Spread  `json:"hours"`
}

// Move is one kind of time outside coring: by class, and as a median line.
type Move struct {
	Name    string `json:"name"`
	Classes []Span `json:"by_water_depth"`
	All     Spread `json:"all_hours"`
	Line    Fit    `json:"median_line_hours"`
}

// arrivalEdges are the water depth classes of the published table, km.
var arrivalEdges = []float64{0, 0.5, 1.5, 2.5, 3.5, 4.5, 7}

func moveOf(name string, list []Visit, keep func(Visit) bool, hours func(Visit) float64, terms []string, row func(Visit) []float64) Move {
	var kept []Visit
	for _, v := range list {
		if keep(v) && !math.IsNaN(v.Water) {
			kept = append(kept, v)
		}
	}
	m := Move{Name: name, All: spread(column(kept, hours))}
	for i := 1; i < len(arrivalEdges); i++ {
		var in []float64
		for _, v := range kept {
			if v.Water >= 1000*arrivalEdges[i-1] && v.Water < 1000*arrivalEdges[i] {
				in = append(in, hours(v))
			}
		}
		m.Classes = append(m.Classes, Span{arrivalEdges[i-1], spread(in)})
	}
	rows := make([][]float64, len(kept))
	for i, v := range kept {
		rows[i] = row(v)
	}
	if len(kept) > 10 {
		m.Line = fitMedianLine(terms, column(kept, func(v Visit) string { return v.Leg }), rows, column(kept, hours))
	}
	return m
}

// movesOf lists the times before and after coring. The clock of a first hole starts with the ship over
// the site, of a later one with the bit out of the hole before; it stops when the bit clears the sea
// floor, for the last hole the rig floor.
func movesOf(list []Visit) []Move {
	before, after := func(v Visit) float64 { return v.Before }, func(v Visit) float64 { return v.After }
	byWater := func(v Visit) []float64 { return []float64{1, v.Water / 1000} }
	byPipe := func(v Visit) []float64 { return []float64{1, v.Water / 1000, v.Bottom} }
	water := []string{"constant h", "h per km of water"}
	pipe := append(slices.Clone(water), "h per km below sea floor")
	shallow := func(v Visit) bool { return v.Bottom < 0.25 } // seldom logged
	return []Move{
		moveOf("first hole, all", list, func(v Visit) bool { return v.First() }, before, water, byWater),
		moveOf("first hole, cored from the sea floor", list, func(v Visit) bool { return v.First() && !v.Ahead }, before, water, byWater),
		moveOf("first hole, first core by piston", list, func(v Visit) bool { return v.First() && !v.Ahead && v.Tool == "H" }, before, water, byWater),
		moveOf("first hole, first core by rotary", list, func(v Visit) bool { return v.First() && !v.Ahead && v.Tool == "R" }, before, water, byWater),
		moveOf("later hole, first core by piston or extended", list, func(v Visit) bool { return !v.First() && !v.Ahead && v.Tool != "R" }, before, water, byWater),
		moveOf("later hole, first core by rotary", list, func(v Visit) bool { return !v.First() && !v.Ahead && v.Tool == "R" }, before, water, byWater),
		moveOf("later hole, drilled ahead", list, func(v Visit) bool { return !v.First() && v.Ahead }, before, pipe, byPipe),
		moveOf("later hole, all", list, func(v Visit) bool { return !v.First() }, before, water, byWater),
		moveOf("last hole, last core to end (trip out)", list, func(v Visit) bool { return v.Last() }, after, pipe, byPipe),
		moveOf("last hole, under 250 mbsf", list, func(v Visit) bool { return v.Last() && shallow(v) }, after, pipe, byPipe),
		moveOf("other hole, last core to end", list, func(v Visit) bool { return !v.Last() }, after, pipe, byPipe),
		moveOf("other hole, under 250 mbsf", list, func(v Visit) bool { return !v.Last() && shallow(v) }, after, pipe, byPipe),
	}
}
