package chart

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"coredays/output"
	"coredays/output/words"
)

// Of are all charts of a report, in its order; those that have nothing to draw are left out.
func Of(r *output.Report) []*Chart {
	s := r.Summary
	var list []*Chart
	if s.Replications > 0 {
		list = append(list, calendarChart(r), curveChart(s), DoneChart(s), classesChart(s))
		for i := range s.Sites {
			list = append(list, siteChart(r, i))
		}
	}
	list = append(list, trackChart(r), Sea(r), driversChart(s))
	var there []*Chart
	for _, c := range list {
		if c != nil {
			there = append(there, c)
		}
	}
	return there
}

// Files writes all charts into a folder, each as SVG and as PNG, until the context ends.
func Files(ctx context.Context, folder string, r *output.Report) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return err
	}
	var failed []error
	for _, bare := range append(Of(r), Alternatives(r.Orders)...) {
		if ctx.Err() != nil {
			return ctx.Err()
		}
		c := bare.framed(sourceLine(r))
		failed = append(failed, output.WriteFile(ctx, filepath.Join(folder, c.Name+".svg"), c.svgFile), output.WriteFile(ctx, filepath.Join(folder, c.Name+".png"), c.pngFile))
	}
	return errors.Join(failed...)
}

// sourceLine says what a chart is of.
func sourceLine(r *output.Report) string {
	s := r.Summary
	return fmt.Sprintf("%s%s; %s; seed %d; %s. An estimate, not a clearance.", words.OrElse(s.Scenario, "Unnamed scenario"), words.Invented(s), words.Simulated(s), s.Seed, r.Program)
}
