package main

import "slices"

func recoveryOf(cores []Core, tool string) Recovery {
	holes := coredHoles(cores, tool)
	all := slices.Concat(holes...)
	if len(all) == 0 {
		return Recovery{}
	}
	x := column(all, recovered)
	total, _ := lengthShare(all, recovered)
	parts := holeShares(holes, recovered)
	r := Recovery{Cores: len(all), Holes: len(parts), ByLength: total, Holewise: spread(parts),
		Below80: 1 - above(parts, 0.8), Zero: 1 - above(x, 0), Above100: above(x, 1),
		Corewise: spread(x), InHole: spread(inHole(holes))}
	r.LengthErr = legBootstrap(column(all, func(c Core) string { return c.Leg }), func(pick []int) []float64 {
		part, _ := lengthShare(column(pick, func(p int) Core { return all[p] }), recovered)
		return []float64{part}
	})[0]
	r.scoreLevels(all, normalScores(x))
	r.Marginals = []Marginal{marginalOf("each core alike", holes, quantileTable(x), r.Holewise),
		marginalOf("each hole alike", holes, weightedTable(x, holeWeights(holes)), r.Holewise)}
	return r
}

// holeWeights let each hole count once. Long holes recover better than short ones, so a table of all
// cores gives the total by length right and a table of holes alike gives the spread of holes right.
func holeWeights(holes [][]Core) []float64 {
	var weight []float64
	for _, hole := range holes {
		w := 1.0 / float64(len(hole))
		if _, cored := lengthShare(hole, recovered); cored < holeMetres {
			w = 0
		}
		weight = append(weight, slices.Repeat([]float64{w}, len(hole))...)
	}
	return weight
}

func marginalOf(weight string, holes [][]Core, table []float64, wanted Spread) Marginal {
	m := Marginal{Weight: weight, At: marginalAt, Quantiles: table, HoleShare: calibrate(holes, table, wanted)}
	parts, total := generate(holes, table, m.HoleShare, 20)
	m.Holewise, m.Below80, m.ByLength = spread(parts), 1-above(parts, 0.8), total
	return m
}

// inHole is each core's share less that of its whole hole.
func inHole(holes [][]Core) []float64 {
	var rest []float64
	for _, hole := range holes {
		part, cored := lengthShare(hole, recovered)
		if cored < holeMetres {
			continue
		}
		for _, c := range hole {
			rest = append(rest, recovered(c)-part)
		}
	}
	return rest
}

// scoreLevels splits the variance of the normal scores.
func (r *Recovery) scoreLevels(all []Core, z []float64) {
	legs := column(all, func(c Core) string { return c.Leg })
	sites := column(all, func(c Core) string { return c.Site })
	names := column(all, func(c Core) string { return c.Hole })
	r.Shares = shares(nestedVariances(z, legs, names))
	r.SharesSite = shares(nestedVariances(z, legs, sites, names))
	lag := lagPairs{}
	for _, rows := range groupRows(names, len(names)) {
		lag.add(column(rows, func(i int) float64 { return z[i] }))
	}
	r.Lag1 = lag.correlation()
}
