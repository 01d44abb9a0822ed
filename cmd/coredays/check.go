package main

import (
	"context"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/check"
	"coredays/model/plan"
	"coredays/model/voyage"
	"coredays/output/json"
	"coredays/output/text"
	"coredays/scenario"
	"coredays/scenario/fault"
	"coredays/sim"
)

// checking is a call of check.
type checking struct {
	chosen
	call.Answer
	call.Detail
}

func newCheck() *cobra.Command {
	var c checking
	cmd := &cobra.Command{
		Use:   "check [SCENARIO]",
		Short: "Can it be done: each site and hole against ship, string, ground and sea",
		Long: `Check holds a plan against what the ship, her string, the ground and the sea allow, without simulating
it: pass, caution or stop, each with its figure, its limit and where the limit comes from. What breaks
a rating, an approval or a law of nature is a stop; what is unlikely is a caution, with its chance
where that is known. It ends with exit code 1 where anything stops the plan. Without a file it checks the built-in demonstration.`,
		Example: `  coredays check
  coredays check plan.yaml --json findings.json
  coredays check plan.yaml --set "string.collars=8"`,
		Args: call.OneScenario,
		RunE: func(cmd *cobra.Command, args []string) error {
			return c.execute(cmd.Context(), args, cmd.OutOrStdout())
		},
	}
	c.chosen.addFlags(cmd)
	c.Answer.AddFlags(cmd)
	c.Detail.AddFlags(cmd)
	return cmd
}

// execute checks and reports.
func (c *checking) execute(ctx context.Context, args []string, stdout io.Writer) error {
	var p *plan.Plan
	var found []check.Finding
	err := call.OrInterrupted(ctx, func() (err error) {
		p, found, err = c.check(args)
		return err
	})
	if err != nil {
		return err
	}
	err = c.Give(stdout,
		func(w io.Writer) error { return text.Check(w, p, found, c.Detail.Detail) },
		func(w io.Writer) error { return json.Check(w, p, found) })
	if err != nil {
		return err
	}
	if n := len(check.Of(found, check.Stop)); n > 0 {
		return call.AsFault(fmt.Errorf("%s can't be done as it stands: the check stops it (stops: %d)", p.File, n))
	}
	return nil
}

// check reads a plan and checks it.
func (c *checking) check(args []string) (*plan.Plan, []check.Finding, error) {
	p, infeasible, err := c.readToCheck(args)
	if err != nil {
		return nil, nil, call.AsFault(err)
	}
	if err := call.SparesInputs(c.cmd, p.Reads); err != nil {
		return nil, nil, err
	}
	v, err := voyage.Compile(p)
	if err != nil {
		return nil, nil, call.AsFault(fmt.Errorf("%s: %w", p.File, err))
	}
	var estimated voyage.QuickEstimate // tools that can't follow one another can't be estimated with
	if len(infeasible) == 0 {
		estimated = sim.Estimate(v)
	}
	return p, check.Plan(v, estimated), nil
}

// readToCheck reads a plan that may ask for what can't be done.
func (c *chosen) readToCheck(args []string) (*plan.Plan, fault.List, error) {
	if len(args) == 0 {
		return scenario.ToCheck(scenario.DemonstrationText(), "demonstration.yaml", c.settings)
	}
	return scenario.OpenToCheck(args[0], c.settings...)
}
