package main

import (
	"errors"
	"fmt"
	"io"
	"slices"

	"coredays/cmd/fitlevels/printed"
)

// report prints the study as tables.
func report(w io.Writer, s Study) error {
	fmt.Fprintf(w, "%d cores read; pairs left out: %d with no time between, %d over 24 h\n",
		s.Cores, s.Skipped.NotAfter, s.Skipped.OverADay)
	return errors.Join(reportLines(w, s), reportClasses(w, s), reportLevels(w, s), reportTrouble(w, s), reportPairs(w, s),
		reportRotary(w, s), reportRecovery(w, s), reportMarginals(w, s), reportRefusal(w, s.Refusal), reportMoves(w, s), reportFailed(w, s.Failed))
}

// inOrder visits the tools that were fitted.
func (s Study) inOrder(visit func(ToolFit, Recovery)) {
	for _, tool := range tools {
		if f, ok := s.Tools[tool]; ok {
			visit(f, s.Recovery[tool])
		}
	}
}

func reportLines(w io.Writer, s Study) error {
	var rows [][]string
	s.inOrder(func(f ToolFit, _ Recovery) {
		for _, fit := range []struct {
			name string
			Fit
		}{{"hole medians on water depth", f.Line}, {"  and on depth below sea floor", f.Deeper}, {"cores less their hole's median", f.InHole}} {
			for i, term := range fit.Terms {
				rows = append(rows, []string{f.Tool, fit.name, term, printed.Figure(fit.Value[i]), printed.Figure(fit.StdErr[i]), fmt.Sprint(fit.Holes)})
			}
		}
	})
	return printed.Table(w, "Core cycle: median lines (least absolute deviations; standard errors over legs)",
		[]string{"tool", "line", "term", "value", "std. error", "rows"}, rows)
}

func reportClasses(w io.Writer, s Study) error {
	var rows [][]string
	s.inOrder(func(f ToolFit, _ Recovery) {
		for _, c := range f.Classes {
			rows = append(rows, []string{f.Tool, fmt.Sprintf("%.0f-%.0f", c.From, c.From+1), printed.Figure(c.Water), fmt.Sprint(c.Holes),
				fmt.Sprint(c.Cycles), printed.Figure(c.Minutes), printed.Figure(c.All)})
		}
	})
	return printed.Table(w, "Core cycle by water depth: median, minutes",
		[]string{"tool", "water km", "mean km", "holes", "cycles", "of hole medians", "of all cycles"}, rows)
}

func reportLevels(w io.Writer, s Study) error {
	var rows [][]string
	s.inOrder(func(f ToolFit, _ Recovery) {
		for _, p := range f.Splits {
			l := p.Levels
			rows = append(rows, slices.Concat([]string{f.Tool, p.Rule}, figures(l.SD...), percents(l.Shares...),
				percents(l.SharesSite[1]), figures(l.Robust...), figures(l.Lag1, l.MeanRatio)))
		}
	})
	return printed.Table(w, "Spread of ln(cycle) about the line on water depth, trouble left out: moments; share of variance in %; robust, trouble left in",
		[]string{"tool", "trouble is", "sd leg", "hole", "run", "% leg", "hole", "run", "(site)", "rob. legs", "all holes", "run", "lag 1", "mean/median"}, rows)
}

func reportTrouble(w io.Writer, s Study) error {
	var rows [][]string
	s.inOrder(func(f ToolFit, _ Recovery) {
		for _, p := range f.Splits {
			t := p.Trouble
			rows = append(rows, slices.Concat([]string{f.Tool, p.Rule}, percents(t.Chance, t.ChanceErr), figures(t.MeanHours),
				t.Hours.figures()[1:], figures(t.MeanRatio), t.Ratio.figures()[1:], figures(t.TotalRatio)))
		}
	})
	return printed.Table(w, "Trouble: chance a core, and time lost beyond the hole's median",
		[]string{"tool", "trouble is", "% of cores", "std. error", "mean h", "P10 h", "P50 h", "P90 h", "mean x median", "P10", "P50", "P90", "all cycles"}, rows)
}

func reportPairs(w io.Writer, s Study) error {
	var rows [][]string
	for _, p := range s.Pairs {
		rows = append(rows, []string{toolName[p.A], toolName[p.B], fmt.Sprint(p.Legs), printed.Figure(p.Correlation)})
	}
	return printed.Table(w, "Leg effects: correlation between tools", []string{"tool", "with", "legs", "correlation"}, rows)
}

func reportRotary(w io.Writer, s Study) error {
	var errs []error
	for _, r := range s.Rotary {
		var rows [][]string
		add := func(of string, classes ...RateClass) {
			for _, c := range classes {
				q := c.Quantiles
				rows = append(rows, slices.Concat([]string{of, fmt.Sprintf("%g-%g", c.From, c.To), fmt.Sprint(c.Holes), fmt.Sprint(c.Cores.N)},
					figures(q[0], c.Cores.P10, q[1], c.Cores.P50, q[2], c.Cores.P90), percents(c.Fast), c.HoleMed.figures()[1:]))
			}
		}
		add("all", r.All)
		add("water km", r.ByWater...)
		add("below sea floor km", r.ByDepth...)
		errs = append(errs, printed.Table(w, fmt.Sprintf("Rotary cutting rate, m/h, after %g min/km of wire and %.3g min of handling (sd of ln rate leg/hole/core %.2g/%.2g/%.2g, lag 1 %.2g)",
			r.Wire, r.Handling, r.SD[0], r.SD[1], r.SD[2], r.Lag1),
			[]string{"class", "from-to", "holes", "cores", "P5", "P10", "P25", "P50", "P75", "P90", "% over 20", "holes P10", "P50", "P90"}, rows))
	}
	return errors.Join(errs...)
}
