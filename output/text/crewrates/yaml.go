package crewrates

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"coredays/model/rates"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/output/words"
)

// YAML is a file of rates that a scenario takes as rates: {file: …}. Rates that the log does not tell apart are
// left out.
func YAML(r *rates.Result) string {
	var b strings.Builder
	fmt.Fprintf(&b, "# Rates learned from what the rig wrote down: %s\n# A scenario takes this file as  rates: {file: NAME.yaml}\nversion: 1\n", strings.Join(fileNames(r), ", "))
	lines := 0
	for i := range r.Rates {
		x := &r.Rates[i]
		if !x.Identified || x.N == 0 {
			continue
		}
		if lines++; lines == 1 {
			b.WriteString("rates:\n")
		}
		fmt.Fprintf(&b, "  %s: {%s%s,\n      source: %s}\n", x.Of.Of().Key, shapeYAML(x), variesYAML(x), strconv.Quote(SourceOf(r, x)))
	}
	if lines == 0 {
		b.WriteString("# The files say too little of every rate: nothing was learned.\n")
	}
	return b.String()
}

// SourceOf says where a rate comes from: log, number and dates.
func SourceOf(r *rates.Result, x *rates.Rate) string {
	from, to := x.From, x.To
	if from.IsZero() {
		from, to = r.From, r.To
	}
	when := words.Date(from)
	if end := words.Date(to); end != when {
		when += " to " + end
	}
	n := fmt.Sprintf("n = %d", x.N)
	if x.Unit == "stands" {
		n += fmt.Sprintf(" (%.0f stands)", x.Exposure)
	}
	return rig.LogSource + fmt.Sprintf("%s, %s, %s", strings.Join(fileNames(r), ", "), n, when)
}

// fileNames are the files without their folders.
func fileNames(r *rates.Result) (names []string) {
	for _, f := range r.Files {
		names = append(names, f[strings.LastIndexAny(f, `/\`)+1:])
	}
	return names
}

// shapeYAML writes low, mid and high where a spread passes through them, else a lognormal as wide.
func shapeYAML(x *rates.Rate) string {
	unit := x.Of.Of().Unit
	number := func(si float64) string {
		return strings.TrimSpace(strconv.FormatFloat(x.Of.InUnit(si), 'g', 5, 64) + " " + unit)
	}
	low, mid, high := x.Use[0], x.Use[1], x.Use[2]
	if number(low) == number(high) {
		return "value: " + number(mid)
	}
	if _, err := spread.NewMetalog(spread.Triple{Low: low, Mid: mid, High: high}, 0, math.Inf(1)); err == nil && number(low) != number(mid) && number(mid) != number(high) {
		return fmt.Sprintf("low: %s, mid: %s, high: %s", number(low), number(mid), number(high))
	}
	factor := math.Max(1.001, math.Sqrt(high/low))
	return fmt.Sprintf("shape: lognormal, median: %s, factor: %.4g", number(mid), factor)
}

// variesYAML writes the levels; they add up to 1 to the last digit written.
func variesYAML(x *rates.Rate) string {
	if x.Use[0] == x.Use[2] {
		return ""
	}
	var parts []string
	left, last := 10000, -1
	for l, s := range x.Shares {
		if s > 0 {
			last = l
		}
	}
	for l, s := range x.Shares {
		part := int(math.Round(s * 10000))
		if l == last {
			part = left
		}
		left -= part
		if part > 0 {
			parts = append(parts, fmt.Sprintf("%s: %s", spread.Level(l), strconv.FormatFloat(float64(part)/10000, 'f', -1, 64)))
		}
	}
	text := ", varies: {" + strings.Join(parts, ", ") + "}"
	if x.Persists != 0 {
		text += fmt.Sprintf(", persistence: %.3g", x.Persists)
	}
	return text + ", common: 0"
}
