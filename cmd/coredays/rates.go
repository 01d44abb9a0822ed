package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/plan"
	"coredays/model/rates"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/output/json"
	"coredays/output/page"
	"coredays/output/text/crewrates"
	"coredays/scenario"
	"coredays/scenario/document"
	"coredays/scenario/rigfile"
	"coredays/sim"
)

// ratesCall is a call of rates.
type ratesCall struct {
	chosen
	words, yaml  string
	report       string
	dated        call.Dated
	zone         string
	starter      bool
	replications int
	seed         uint64
	call.Answer
}

func newRates() *cobra.Command {
	var r ratesCall
	cmd := &cobra.Command{
		Use:   "rates [SCENARIO] FILE…",
		Short: "Rates with spreads from what the rig writes down",
		Long: `Rates reads operations logs, core tables and recordings of the rig's channels (CSV, TSV or workbook; each is
known by its heading) and says what they tell of the ship's rates: how many observations, the log's own
values, the ship's figures, and the spread to use, between the two as far as the data go. Weather and
trouble are taken out of the pace; trouble is counted. What is wrong with the files is listed with file,
line and cure, and each day's hours are added up.

With a scenario (.yaml, .yml, .toml, .json) its ship's figures are the ones to begin with, and the page
says what the rates learned do to the days needed. --yaml writes a file that a scenario takes as
  rates: {file: rates.yaml}

Words of the ship's own are given their meaning by --words FILE; --words-starter prints one to begin with.`,
		Example: `  coredays rates log.csv cores.csv
  coredays rates plan.yaml cores.csv --yaml rates.yaml
  coredays rates --words-starter > words.yaml`,
		RunE: func(cmd *cobra.Command, args []string) error {
			return r.execute(cmd.Context(), args, cmd.OutOrStdout(), cmd.ErrOrStderr())
		},
	}
	r.chosen.addFlags(cmd)
	r.Answer.AddFlags(cmd)
	cmd.Flags().Var(call.InFile(&r.words), "words", "take the meaning of the log's words from the word list in `FILE`")
	cmd.Flags().BoolVar(&r.starter, "words-starter", false, "print a commented word list to begin with, and do nothing else")
	cmd.Flags().Var(call.OutFile(&r.yaml, ".yaml", ".yml"), "yaml", "write the rates to use to `FILE.yaml`, for a scenario's rates: {file: …}")
	cmd.Flags().Var(call.OutFile(&r.report, call.AsPage...), "report", "write a web page to `FILE.html`: the table, and a chart of each rate")
	r.dated.AddFlag(cmd.Flags())
	cmd.Flags().Var((*call.FreeText)(&r.zone), "zone", "of local times: how far they are ahead of UTC, as `±hh:mm`")
	cmd.Flags().IntVar(&r.replications, "replications", 500, "with a scenario: how many expeditions to simulate, with the ship's rates and with those learned")
	cmd.Flags().Uint64Var(&r.seed, "seed", 1, "seed of all chance of that simulation")
	return cmd
}

// isScenario tells a scenario from the rig's files by its ending.
func isScenario(name string) bool {
	return slices.Contains([]string{".yaml", ".yml", ".toml", ".json"}, strings.ToLower(filepath.Ext(name)))
}

// execute learns the rates and reports them.
func (r *ratesCall) execute(ctx context.Context, args []string, stdout, stderr io.Writer) error {
	if r.starter {
		_, err := stdout.Write(rigfile.Starter())
		return call.AsFault(err)
	}
	if r.replications < 2 {
		return fmt.Errorf("--replications %d: give 2 at least", r.replications)
	}
	if err := r.dated.Without(r.report); err != nil {
		return err
	}
	var plans, files []string
	for _, a := range args {
		if isScenario(a) {
			plans = append(plans, a)
		} else {
			files = append(files, a)
		}
	}
	switch {
	case len(files) == 0:
		return errors.New("rates takes one or more of the rig's files: an operations log, a core table, a recording")
	case len(plans) > 1:
		return fmt.Errorf("rates takes one scenario at most, and there are %s", strings.Join(plans, " and "))
	case len(plans) == 0 && len(r.settings) > 0:
		return errors.New("--set is for a scenario, and there is none")
	}
	ship, water := scenario.BuiltInRates(), map[string]float64{}
	var p *plan.Plan
	if len(plans) == 1 {
		v, _, err := r.load(plans)
		if err != nil {
			return err
		}
		p, ship = v.Plan, v.Plan.Ship.Rates
		for i := range p.Sites {
			water[p.Sites[i].Name] = float64(p.Sites[i].WaterDepth)
		}
	}
	var papers riglog.Papers
	if err := call.OrInterrupted(ctx, func() error { return r.read(&papers, files) }); err != nil {
		return err
	}
	learned := rates.Learn(ship, &papers, water)
	yaml := crewrates.YAML(learned)
	to, err := scenario.ReadRates("rates.yaml", []byte(yaml), ship)
	if err != nil {
		return call.AsFault(fmt.Errorf("what was learned can't be a plan's rates: %w", err))
	}
	var effect *crewrates.Effect
	if p != nil {
		if effect, err = r.effect(ctx, p, to, stderr); err != nil {
			return err
		}
	}
	written := r.yaml
	if papers.Empty() {
		written = "" // of nothing there are no rates
	}
	if err := call.WriteTo(ctx, "yaml", written, func(w io.Writer) error { _, err := io.WriteString(w, yaml); return err }); err != nil {
		return call.AsFault(err)
	}
	if err := call.WriteTo(ctx, "report", r.report, func(w io.Writer) error { return page.Rates(w, learned, papers.Notes, program(), string(r.dated)) }); err != nil {
		return call.AsFault(err)
	}
	err = r.Give(stdout,
		func(w io.Writer) error { return crewrates.Print(w, learned, papers.Notes, effect) },
		func(w io.Writer) error { return json.Rates(w, learned, papers.Notes, effect) })
	if err == nil && papers.Empty() {
		return call.AsFault(fmt.Errorf("%s: nothing in it could be read; the list above says why", strings.Join(files, ", ")))
	}
	return err
}

// read reads all files; all that can't be read are told at once.
func (r *ratesCall) read(papers *riglog.Papers, files []string) error {
	var reading rigfile.Reading
	if r.zone != "" {
		at, err := time.Parse("-07:00", r.zone)
		if err != nil {
			return fmt.Errorf("--zone %q: write how far local times are ahead of UTC, such as +10:00", r.zone)
		}
		_, ahead := at.Zone()
		reading.Zone = time.FixedZone(r.zone, ahead)
	}
	if r.words != "" {
		data, err := contents(r.words)
		if err != nil {
			return call.AsFault(fmt.Errorf("--words: %w", err))
		}
		if reading.Words, err = rigfile.ReadWords(r.words, data); err != nil {
			return call.AsFault(err)
		}
	}
	var wrong []error
	for _, name := range files {
		data, err := contents(name)
		if err == nil {
			err = reading.Read(papers, name, data)
		}
		wrong = append(wrong, err)
	}
	return call.AsFault(errors.Join(wrong...))
}

// contents are all bytes of an ordinary file.
func contents(name string) ([]byte, error) {
	file, err := document.OpenFile(name)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	return io.ReadAll(file)
}

// effect simulates the plan with the ship's rates and with those learned, with the same random streams.
func (r *ratesCall) effect(ctx context.Context, p *plan.Plan, learned [rig.Rates]spread.Quantity, stderr io.Writer) (*crewrates.Effect, error) {
	e := &crewrates.Effect{Title: p.Title, Replications: r.replications}
	for _, x := range []struct {
		rates    [rig.Rates]spread.Quantity
		p50, p90 *float64
	}{{p.Ship.Rates, &e.ShipP50, &e.ShipP90}, {learned, &e.LearnedP50, &e.LearnedP90}} {
		with := *p
		with.Ship.Rates = x.rates
		v, err := voyage.Compile(&with)
		if err != nil {
			return nil, call.AsFault(fmt.Errorf("%s: %w", p.File, err))
		}
		results := replicate(ctx, v, sim.Run{Seed: r.seed, Replications: r.replications}, stderr)
		if results.Stopped || ctx.Err() != nil {
			return nil, call.ErrInterrupted
		}
		s := results.Summary().Needed.Total
		*x.p50, *x.p90 = s.P50/float64(unit.Day), s.P90/float64(unit.Day)
	}
	return e, nil
}
