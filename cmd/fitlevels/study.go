package main

import (
	"slices"
)

// ToolFit is the core cycle of one tool.
type ToolFit struct {
	Tool    string  `json:"tool"`
	Line    Fit     `json:"median_line_min"`
	Deeper  Fit     `json:"median_line_with_depth_min"`
	InHole  Fit     `json:"slope_in_hole_min"`
	Classes []Class `json:"by_water_depth"`
	Splits  []Split `json:"spread_and_trouble"`
}

// Study is everything fitted.
type Study struct {
	Cores    int                 `json:"cores"`
	Skipped  Skipped             `json:"pairs_left_out"`
	Tools    map[string]ToolFit  `json:"cycles"`
	Pairs    []Pair              `json:"leg_effects"`
	Rotary   []Rotary            `json:"rotary_rate"`
	Recovery map[string]Recovery `json:"recovery"`
	Refusal  Refusal             `json:"refusal"`
	Moves    []Move              `json:"moves,omitempty"`
	LeftOut  int                 `json:"holes_left_out_of_moves"`
	Failed   *Failed             `json:"failed,omitempty"`
	Faults   []string            `json:"faults"`
}

var waterTerms = []string{"constant min", "min per km of water"}

// studyOf fits all that the cores alone can tell; holes may be empty.
func studyOf(cores []Core, holes []Hole) Study {
	s := Study{Cores: len(cores), Tools: map[string]ToolFit{}, Recovery: map[string]Recovery{}}
	cycles, skipped := cyclesOf(cores)
	s.Skipped = skipped
	effects := map[string]map[string]float64{}
	var legs []string
	for _, tool := range tools {
		grouped := byHole(withTool(cycles, tool), leastCycles)
		if len(grouped) < 3 {
			continue
		}
		fit, deviations := toolFit(tool, grouped)
		s.Tools[tool], effects[tool] = fit, legEffects(deviations)
		for leg := range effects[tool] {
			legs = append(legs, leg)
		}
		s.Recovery[tool] = recoveryOf(cores, tool)
	}
	slices.Sort(legs)
	s.Pairs = legPairs(effects, slices.Compact(legs))
	if _, ok := s.Tools["R"]; ok {
		for _, wire := range wireSlopes {
			s.Rotary = append(s.Rotary, rotaryOf(byHole(withTool(cycles, "R"), leastCycles), wire))
		}
	}
	if len(holes) > 0 {
		list, leftOut := visits(holes, cores)
		failed := failedOf(holes)
		s.Moves, s.LeftOut, s.Failed = movesOf(list), leftOut, &failed
	}
	s.Refusal = refusalOf(pistonStops(cores))
	return s
}

// toolFit fits one tool: holes weigh alike, so that a long hole does not decide the line.
func toolFit(tool string, grouped [][]Cycle) (ToolFit, [][]residual) {
	medians := holeMedians(grouped)
	water := func(c Cycle) []float64 { return []float64{1, c.Water} }
	deep := func(c Cycle) []float64 { return []float64{1, c.Water, c.Depth} }
	f := ToolFit{Tool: toolName[tool], Classes: waterClasses(grouped),
		Line:   fitCycles(waterTerms, medians, water),
		Deeper: fitCycles(append(slices.Clone(waterTerms), "min per km below sea floor"), medians, deep),
		InHole: inHoleSlope(grouped)}
	about := residualsOf(grouped, func(c Cycle) float64 { return f.Line.At(water(c)) })
	f.Splits = splitsOf(about)
	return f, about
}

func fitCycles(terms []string, medians []Cycle, row func(Cycle) []float64) Fit {
	rows := make([][]float64, len(medians))
	for i, c := range medians {
		rows[i] = row(c)
	}
	return fitMedianLine(terms, column(medians, func(c Cycle) string { return c.Leg }), rows, minutes(medians))
}

// inHoleSlope is how much slower a core is a kilometre deeper in the same hole: cycle and depth less
// their hole medians, so that differences between holes cannot pass for depth.
func inHoleSlope(grouped [][]Cycle) Fit {
	var rest []Cycle
	for i, m := range holeMedians(grouped) {
		for _, c := range grouped[i] {
			c.Minutes, c.Depth, c.Cored = c.Minutes-m.Minutes, c.Depth-m.Depth, c.Cored-m.Cored
			rest = append(rest, c)
		}
	}
	return fitCycles([]string{"constant min", "min per km below sea floor", "min per m cored"}, rest,
		func(c Cycle) []float64 { return []float64{1, c.Depth, c.Cored} })
}
