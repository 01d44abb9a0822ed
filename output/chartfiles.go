package output

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
)

// charts are all charts of a report, in its order; those that have nothing to draw are left out.
func charts(r *Report) []*chart {
	s := r.Summary
	var list []*chart
	if s.Replications > 0 {
		list = append(list, calendarChart(r), curveChart(s), doneChart(s), classesChart(s))
		for i := range s.Sites {
			list = append(list, siteChart(r, i))
		}
	}
	list = append(list, seaChart(r), driversChart(s))
	var there []*chart
	for _, c := range list {
		if c != nil {
			there = append(there, c)
		}
	}
	return there
}

// Charts writes all charts into a folder, each as SVG and as PNG, until the context ends.
func Charts(ctx context.Context, folder string, r *Report) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return err
	}
	var failed []error
	for _, bare := range append(charts(r), alternativesCharts(r.Orders)...) {
		if ctx.Err() != nil {
			return ctx.Err()
		}
		c := bare.framed(sourceLine(r))
		failed = append(failed, WriteFile(ctx, filepath.Join(folder, c.name+".svg"), c.svgFile), WriteFile(ctx, filepath.Join(folder, c.name+".png"), c.pngFile))
	}
	return errors.Join(failed...)
}

// sourceLine says what a chart is of.
func sourceLine(r *Report) string {
	s := r.Summary
	return fmt.Sprintf("%s%s; %s; seed %d; %s. An estimate, not a clearance.", orElse(s.Scenario, "Unnamed scenario"), invented(s), simulated(s), s.Seed, r.Program)
}
