package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"runtime"
	"runtime/debug"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/basis"
	"coredays/model/check"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/output"
	"coredays/output/chart"
	"coredays/output/json"
	"coredays/output/page"
	"coredays/output/sheet"
	"coredays/sim"
	"coredays/sim/choice"
	"coredays/sim/sensitivity"
	"coredays/sim/statistics"
)

// files are what a simulation writes beside its answer, for those who want to look at it or to go on
// with it, and the log that it sets beside what was simulated.
type files struct {
	report, charts, csv, workbook, track, log string
	dated                                     call.Dated
	orders                                    bool // look for the best order of the sites, for the report and the tables
}

func (f *files) addFlags(cmd *cobra.Command) {
	named := func(file *call.FileName, flag, usage string) { cmd.Flags().Var(file, flag, usage) }
	named(call.OutFile(&f.report, call.AsPage...), "report", "write a report as one web page to `FILE.html`: charts, tables, check and basis, to read offline or to print")
	f.dated.AddFlag(cmd.Flags())
	named(call.OutFolder(&f.charts), "charts", "write the charts into `DIR`, each as SVG and as PNG")
	cmd.Flags().BoolVar(&f.orders, "orders", false, "with --report: look for the best order of the sites too, and show it on the page")
	named(call.OutFolder(&f.csv), "csv", "write all tables into `DIR` as CSV files, every replication among them, with dictionary.csv telling the columns")
	named(call.OutFile(&f.workbook, call.AsWorkbook...), "xlsx", "write a workbook to `FILE.xlsx`: summary, results, sites, replications, basis")
	named(call.OutFile(&f.track, call.AsMap...), "geojson", "write ports, sites and track as a map to `FILE` (GeoJSON)")
	named(call.InFile(&f.log), "log", "draw what the ship really did over the charts of the sites, and set it beside in the tables, from the log in `FILE.csv`")
}

// wanted reports whether any of them needs the results looked at closely.
func (f *files) wanted() bool {
	return f.report != "" || f.charts != "" || f.csv != "" || f.workbook != ""
}

// write writes what was asked for. One that can't be written does not keep the others from being.
func (f *files) write(ctx context.Context, v *voyage.Voyage, results *statistics.Results, s *result.Summary, log *result.Log, orders *result.Comparison) error {
	var r *output.Report
	if f.wanted() {
		if r = reportOf(ctx, v, results, s); r == nil {
			return fmt.Errorf("the files were not written: %w", call.ErrInterrupted)
		}
		r.Log, r.Orders, r.Dated = log, orders, string(f.dated)
	}
	failed := []error{call.WriteTo(ctx, "report", f.report, func(w io.Writer) error { return page.Report(w, r) }), into(ctx, "charts", f.charts, chart.Files, r)}
	if f.csv != "" || f.workbook != "" {
		r.Replications = results.Columns()
	}
	failed = append(failed, into(ctx, "csv", f.csv, sheet.CSV, r),
		call.WriteTo(ctx, "xlsx", f.workbook, func(w io.Writer) error { return sheet.Workbook(ctx, w, r) }),
		call.WriteTo(ctx, "geojson", f.track, func(w io.Writer) error { return json.Tracks(w, choice.Track(v, s)) }))
	return call.AsFault(errors.Join(failed...))
}

// into writes into the folder that a flag names, if it names one.
func into(ctx context.Context, flag, folder string, write func(context.Context, string, *output.Report) error, r *output.Report) error {
	if folder == "" {
		return nil
	}
	if err := write(ctx, folder, r); err != nil {
		return call.Unwritten(ctx, flag, folder, err)
	}
	return nil
}

// yearsOfSea are made for the chart of the sea by month, as coredays sea makes them.
const yearsOfSea = 100

// reportOf gathers what the files tell; it is nil where the context ends before that.
func reportOf(ctx context.Context, v *voyage.Voyage, results *statistics.Results, s *result.Summary) *output.Report {
	r := &output.Report{Summary: s, Plan: v.Plan, Passages: passages(v), Found: check.Plan(v, sim.Estimate(v)), Basis: basis.Of(v), Program: program()}
	if s.Replications > 1 {
		basis.Weigh(r.Basis, sensitivity.Sensitivity(ctx, results))
	}
	for _, n := range v.Plan.Order {
		q := v.Sea(n)
		q.Years, q.Seed = yearsOfSea, s.Seed
		r.Seas = append(r.Seas, q.Study(ctx))
	}
	if ctx.Err() != nil {
		return nil
	}
	return r
}

// passages are those of the whole programme.
func passages(v *voyage.Voyage) (list []output.Passage) {
	at := voyage.FromPort
	to := func(p voyage.Place) {
		list = append(list, output.Passage{From: v.Name(at), To: v.Name(p), Distance: v.Leg(at, p).Distance})
		at = p
	}
	for _, n := range v.Plan.Order {
		if !v.Sites[n].Alternate {
			to(voyage.SitePlace(n))
		}
	}
	to(voyage.ToPort)
	return list
}

// program is the name and the version of what runs, as far as its build says.
func program() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "coredays"
	}
	version := info.Main.Version
	for _, s := range info.Settings {
		if s.Key == "vcs.revision" && (version == "" || version == "(devel)") {
			version = "revision " + s.Value
		}
	}
	return "coredays " + version
}

// machine is the program with what else may change the last digit of a result: the compiler and the kind of
// processor.
func machine() string { return program() + ", " + runtime.Version() + ", " + runtime.GOARCH }
