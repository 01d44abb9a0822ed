package main

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
)

// Exit codes.
const (
	exitOK          = 0
	exitFault       = 1   // the plan or the data is at fault
	exitUsage       = 2   // the call is
	exitInterrupted = 130 // Ctrl-C; what was done is reported
)

// run carries out a command line and returns the exit code.
func run(ctx context.Context, args []string, stdout, stderr io.Writer) int {
	screen := screenOn(stdout)
	root := newRoot(screen, stderr)
	root.SetArgs(args)
	err := root.ExecuteContext(ctx)
	if failed := screen.end(); err == nil && failed != nil {
		err = call.AsFault(failed)
	}
	switch {
	case err == nil:
		return exitOK
	case errors.Is(err, call.ErrInterrupted):
		if err != call.ErrInterrupted { // it says what is missing
			fmt.Fprintln(stderr, err)
		}
		return exitInterrupted
	}
	fmt.Fprintln(stderr, err)
	if _, ok := errors.AsType[call.Fault](err); ok {
		return exitFault
	}
	fmt.Fprintln(stderr, `"coredays help" lists the commands; "coredays COMMAND --help" explains one.`)
	return exitUsage
}

// newRoot is the program without a command.
func newRoot(screen *screen, stderr io.Writer) *cobra.Command {
	root := &cobra.Command{
		Use:   "coredays",
		Short: "Plan a scientific coring expedition: days, core and how sure that is",
		Long: `Coredays simulates a whole coring expedition on a riserless drillship, thousands of times, hour by hour:
how many days each site will really take, how much core will come up, and how sure that is.

A plan is an estimate, not a clearance. Site safety review, the master and the driller decide.`,
		Version:       strings.TrimPrefix(program(), "coredays "),
		SilenceErrors: true,
		SilenceUsage:  true,
		RunE:          func(c *cobra.Command, _ []string) error { return c.Help() },

		PersistentPreRunE: func(c *cobra.Command, args []string) error {
			return cmp.Or(screen.begin(c), call.SparesItsFiles(c, args), call.AsFault(call.CanWriteItsFiles(c)))
		},
	}
	root.SetOut(screen)
	screen.addFlags(root)
	root.SetErr(stderr)
	root.SetFlagErrorFunc(call.WrongFlag)
	root.AddCommand(newSimulate(), newDiary(), newCheck(), newSea(), newBasis(), newCompare(), newStudy(), newInit(), newRates(), newLookahead(), newHindcast(), newMerge(), newDesk(), newMan())
	root.InitDefaultHelpCmd()
	usual := root.HelpFunc()
	root.SetHelpFunc(func(c *cobra.Command, args []string) {
		if c == root {
			helpOfRoot(c.OutOrStdout(), root)
			return
		}
		usual(c, args)
	})
	if help, _, err := root.Find([]string{"help"}); err == nil {
		help.Args = call.KnownTopic
	}
	return root
}
