package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/plan"
	"coredays/model/voyage"
	"coredays/scenario"
)

// chosen is the scenario that a command works on: a file and the values set on the command line,
// or the built-in demonstration.
type chosen struct {
	settings []string
	cmd      *cobra.Command
}

func (c *chosen) addFlags(cmd *cobra.Command) {
	c.cmd = cmd
	cmd.Flags().StringArrayVar(&c.settings, "set", nil, "set a value of the scenario, as `path=value`, such as sites[0].cap=\"9 d\"; may be given more than once")
}

// load reads the plan and compiles it. invented says that it is the demonstration.
func (c *chosen) load(args []string) (v *voyage.Voyage, invented bool, err error) {
	p, err := c.read(args)
	if err != nil {
		return nil, false, call.AsFault(err)
	}
	if err := call.SparesInputs(c.cmd, p.Reads); err != nil {
		return nil, false, err
	}
	v, err = voyage.Compile(p)
	if err != nil {
		return nil, false, call.AsFault(fmt.Errorf("%s: %w", p.File, err))
	}
	return v, len(args) == 0, nil
}

// read reads the plan.
func (c *chosen) read(args []string) (*plan.Plan, error) {
	if len(args) == 0 {
		return scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", c.settings)
	}
	return scenario.Open(args[0], c.settings...)
}
