package main

import (
	"github.com/spf13/cobra"

	"coredays/scenario"
)

func newInit() *cobra.Command {
	return &cobra.Command{
		Use:     "init",
		Short:   "A commented scenario to start from, on standard output",
		Example: `  coredays init > plan.yaml`,
		Args:    noArguments,
		RunE: func(c *cobra.Command, _ []string) error {
			_, err := c.OutOrStdout().Write(scenario.Starter())
			return asFault(err)
		},
	}
}
