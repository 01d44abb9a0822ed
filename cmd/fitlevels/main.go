// Command fitlevels is the study behind the defaults: it fits core cycles, their spread by level,
// trouble, recovery, refusal, arrival and failed starts from records of cores and holes.
//
//	go run ./cmd/fitlevels -cores DIR/holes/cores.csv -holes DIR/holes/holes.csv
//
// prints tables with units; -json FILE (- for standard output, then no tables) writes every fitted
// value; -extract DIR writes the small extract kept in testdata/published. The extract itself can be
// studied without any outside file:
//
//	go run ./cmd/fitlevels -cores testdata/published/core_cycles.csv
//
// Rows that cannot be read are listed on standard error and left out; nothing is guessed.
// Random numbers (bootstrap, generated recoveries) have fixed seeds.
package main

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"

	"coredays/cmd/fitlevels/refit"
)

func main() {
	if err := run(os.Args[1:], os.Stdout, os.Stderr); err != nil {
		fmt.Fprintln(os.Stderr, "fitlevels:", err)
		os.Exit(exitCode(err))
	}
}

// errCall marks a wrong call (exit 2) against faulty data (exit 1).
var errCall = errors.New("wrong call")

func exitCode(err error) int {
	if errors.Is(err, errCall) {
		return 2
	}
	return 1
}

func run(args []string, out, notes io.Writer) error {
	flags := flag.NewFlagSet("fitlevels", flag.ContinueOnError)
	flags.SetOutput(notes)
	coresFile := flags.String("cores", "", "core record, CSV")
	holesFile := flags.String("holes", "", "hole record, CSV; without it: no arrival, trip and failed-start tables")
	jsonFile := flags.String("json", "", "write every fitted value to this file, - for standard output")
	extractDir := flags.String("extract", "", "write the extract of both records to this directory and stop")
	fitDays := flags.Bool("hindcast", false, "fit what a record of holes leaves open to the days on its sites (takes minutes) and stop")
	legTime := flags.Bool("legtime", false, "with -holes: fit how long legs are on their sites, score by the time of other legs, and stop")
	chartDir := flags.String("charts", "", "with -hindcast: write the charts of forecasts by figures fitted on other legs to this directory")
	legsFile := flags.String("legs", "", "days of legs by class, CSV: with -holes, compare what was lost to weather and repairs, and stop")
	lithologyFile := flags.String("lithology", "", "runs of lithology, CSV, plain or .gz: with -holes, where piston corers were refused, by lithology, and stop")
	recovered := flags.Bool("recovered", false, "with -holes: score metres and cores with the legs scored left out of what they gave, and stop")
	ground := flags.Bool("ground", false, "with -holes and -lithology: fit what lithologies tell of days and metres, score by what other legs tell (takes minutes), and stop")
	if err := flags.Parse(args); err != nil {
		return errors.Join(errCall, err)
	}
	if *fitDays {
		return refit.FitToDays(*holesFile, *chartDir, out, notes)
	}
	if *legTime {
		return refit.LegTime(*holesFile, out)
	}
	if *recovered {
		return refit.Recovered(*holesFile, out)
	}
	if *legsFile != "" {
		return lostTime(*holesFile, *legsFile, out, notes)
	}
	if *lithologyFile != "" && *ground {
		return refit.Ground(*holesFile, *lithologyFile, out, notes)
	}
	if *lithologyFile != "" {
		return refusedIn(*holesFile, *lithologyFile, out, notes)
	}
	if *coresFile == "" {
		return fmt.Errorf("%w: -cores FILE is needed", errCall)
	}
	r, err := openRecords(*coresFile, *holesFile)
	if err != nil {
		return err
	}
	for _, fault := range r.faults {
		fmt.Fprintln(notes, fault)
	}
	if *extractDir != "" {
		return r.extract(*extractDir)
	}
	s := studyOf(r.cores, r.holes)
	s.Faults = r.faults
	if *jsonFile == "-" {
		return writeJSON(out, s)
	}
	if err := report(out, s); err != nil || *jsonFile == "" {
		return err
	}
	return saveJSON(*jsonFile, s)
}

func saveJSON(name string, s Study) error {
	f, err := os.Create(name)
	if err != nil {
		return err
	}
	return errors.Join(writeJSON(f, s), f.Close())
}

func writeJSON(w io.Writer, s Study) error {
	e := json.NewEncoder(w)
	e.SetIndent("", " ")
	if err := e.Encode(s); err != nil {
		// A value without an estimate prints as a dash in the tables; JSON has no word for it.
		return fmt.Errorf("too few records for every estimate, see the tables: %w", err)
	}
	return nil
}
