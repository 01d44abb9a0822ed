package main

import (
	"errors"
	"fmt"
	"io"
	"slices"

	"coredays/cmd/fitlevels/printed"
)

func reportRecovery(w io.Writer, s Study) error {
	var rows, levels [][]string
	s.inOrder(func(f ToolFit, r Recovery) {
		rows = append(rows, slices.Concat([]string{f.Tool, fmt.Sprint(r.Cores)}, percents(r.ByLength), r.Holewise.percents(),
			percents(r.Below80), r.Corewise.percents()[1:], percents(r.Zero, r.Above100), r.InHole.percents()[1:]))
		levels = append(levels, slices.Concat([]string{f.Tool}, percents(r.Shares...), percents(r.SharesSite...), figures(r.Lag1)))
	})
	return errors.Join(
		printed.Table(w, "Recovery, % of length cored", []string{"tool", "cores", "total", "holes", "P10", "P50", "P90", "% under 80",
			"cores P10", "P50", "P90", "% zero", "% over 100", "core less hole P10", "P50", "P90"}, rows),
		printed.Table(w, "Variance of the normal score of a core's recovery, %", []string{"tool", "leg", "hole", "core", "or: leg", "site",
			"hole", "core", "lag 1"}, levels))
}

func reportMarginals(w io.Writer, s Study) error {
	head := []string{"generator", "hole share %"}
	var tableRows, checks [][]string
	s.inOrder(func(f ToolFit, r Recovery) {
		for _, m := range r.Marginals {
			name := f.Tool + ", " + m.Weight
			tableRows = append(tableRows, slices.Concat([]string{name}, percents(m.HoleShare), percents(m.Quantiles...)))
			checks = append(checks, slices.Concat([]string{name}, percents(r.ByLength, m.ByLength), r.Holewise.percents()[1:],
				m.Holewise.percents()[1:], percents(r.Below80, m.Below80)))
		}
	})
	for _, p := range marginalAt {
		head = append(head, "P"+printed.Figure(100*p))
	}
	return errors.Join(printed.Table(w, "Recovery of a core, % of its length: quantiles of the marginal, and the share of its normal score common to a hole", head, tableRows),
		printed.Table(w, "Recovery generated from them beside the records, %", []string{"generator", "total", "generated", "holes P10", "P50", "P90",
			"generated P10", "P50", "P90", "% under 80", "generated"}, checks))
}

func reportRefusal(w io.Writer, r Refusal) error {
	return errors.Join(
		printed.Table(w, fmt.Sprintf("Refusal of the piston, m below sea floor: %d holes, %d changes to the extended barrel", r.Holes, r.Changes),
			[]string{"estimate", "holes", "P10", "P50", "P90"}, [][]string{
				append([]string{"changes alone (refuses too early)"}, r.Alone.figures()...),
				append([]string{"survival curve (upper bound)"}, r.Survival.figures()...),
				append([]string{"lognormal, censored"}, r.Lognormal.figures()...)}),
		printed.Table(w, "Refusal: spread of ln(depth)", []string{"estimate", "sd between sites", "between holes of a site", "% between sites"}, [][]string{
			append([]string{"censored likelihood"}, figures(r.SDSite, r.SDHole, 100*r.SiteShare)...),
			append([]string{"changes alone, moments"}, "", "", printed.Percent(r.AloneShare))}))
}

func reportMoves(w io.Writer, s Study) error {
	if len(s.Moves) == 0 {
		return nil
	}
	var rows, lines [][]string
	for _, m := range s.Moves {
		for i, c := range m.Classes {
			rows = append(rows, append([]string{m.Name, fmt.Sprintf("%g-%g", c.From, arrivalEdges[i+1])}, c.Hours.figures()...))
		}
		rows = append(rows, append([]string{m.Name, "all"}, m.All.figures()...))
		for i, term := range m.Line.Terms {
			lines = append(lines, []string{m.Name, term, printed.Figure(m.Line.Value[i]), printed.Figure(m.Line.StdErr[i]), fmt.Sprint(m.Line.Holes)})
		}
	}
	return errors.Join(
		printed.Table(w, fmt.Sprintf("Before the first core and after the last, hours (%d holes left out: times missing or in the wrong order)", s.LeftOut),
			[]string{"what", "water km", "holes", "P10", "P50", "P90"}, rows),
		printed.Table(w, "Before and after: median lines", []string{"what", "term", "value", "std. error", "holes"}, lines))
}

func reportFailed(w io.Writer, f *Failed) error {
	if f == nil {
		return nil
	}
	rows := [][]string{
		{"holes that stop above 20 m, %", printed.Percent(f.Share), printed.Percent(f.ShareErr)},
		{"sites with such a hole, %", printed.Percent(f.SitesWith), ""},
		{"first of several holes, %", printed.Percent(f.ByOrder.First), ""},
		{"middle holes, %", printed.Percent(f.ByOrder.Middle), ""},
		{"last of several, %", printed.Percent(f.ByOrder.Last), ""},
		{"only hole of a site, %", printed.Percent(f.ByOrder.Only), ""},
		{"right after a failed hole, %", printed.Percent(f.AndNext), ""},
		{"holes without cores", fmt.Sprint(f.WithoutCore), ""},
	}
	for n, sites := range f.PerSite {
		rows = append(rows, []string{fmt.Sprintf("sites with %d such holes (the last: or more)", n), fmt.Sprint(sites), ""})
	}
	return printed.Table(w, fmt.Sprintf("Failed starts: %d holes of %d sites", f.Holes, f.Sites), []string{"what", "value", "std. error"}, rows)
}
