package main

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/scenario"
	"coredays/scenario/document"
	"coredays/scenario/sitetable"
)

func newInit() *cobra.Command {
	var sites string
	cmd := &cobra.Command{
		Use:   "init",
		Short: "A commented scenario to start from, on standard output",
		Long: `Init prints a commented scenario to start from. With a table of sites it is one of these sites: a CSV
file or a workbook with the columns name, latitude and longitude (or position; degrees and minutes in one cell
or a column a piece, with hemispheres or signs), and where known water depth, target and priority, each with
its unit in the heading or the cell. What the place tells is filled in, and said so.`,
		Example: `  coredays init > plan.yaml
  coredays init --sites sites.csv > plan.yaml`,
		Args: call.NoArguments,
		RunE: func(c *cobra.Command, _ []string) error {
			text, err := started(sites)
			if err != nil {
				return call.AsFault(err)
			}
			_, err = c.OutOrStdout().Write(text)
			return call.AsFault(err)
		},
	}
	cmd.Flags().Var(call.InFile(&sites), "sites", "begin with the sites of the table in `FILE` (.csv, .tsv, .xlsx)")
	return cmd
}

// mostSiteTable is far more than a hundred rows take.
const mostSiteTable = 16 << 20

// started is the scenario of a table of sites, or the built-in one without.
func started(sites string) ([]byte, error) {
	if sites == "" {
		return scenario.Starter(), nil
	}
	file, err := document.OpenFile(sites)
	if err != nil {
		return nil, fmt.Errorf("the table of sites can't be read: %w", err)
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, mostSiteTable+1))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", sites, err)
	}
	if len(data) > mostSiteTable {
		return nil, errors.New(sites + ": a table of at most 16 MiB is wanted")
	}
	list, err := sitetable.Read(sites, data)
	if err != nil {
		return nil, err
	}
	return sitetable.Scenario(filepath.Base(sites), list), nil
}
