package main

import (
	"context"
	"errors"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/output"
)

// answer is where a result goes: to people on standard output, and as JSON where that is asked for.
type answer struct{ jsonFile string }

func (a *answer) addFlags(cmd *cobra.Command) {
	file := call.OutFileOrPrint(&a.jsonFile, call.AsJSON...)
	cmd.Flags().Var(file, "json", "write the result as JSON to `FILE` too, or to standard output alone for -")
}

// give prints the result and writes the JSON. A file that can't be written does not keep from
// people what may have taken hours.
func (a *answer) give(stdout io.Writer, text, asJSON func(io.Writer) error) error {
	if a.jsonFile == "-" {
		return asFault(asJSON(stdout))
	}
	failed := writeTo(context.Background(), "json", a.jsonFile, asJSON) // it takes no time
	return asFault(errors.Join(text(stdout), failed))
}

// writeTo writes the file that a flag names, if it names one.
func writeTo(ctx context.Context, flag, file string, write func(io.Writer) error) error {
	if file == "" {
		return nil
	}
	if err := output.WriteFile(ctx, file, write); err != nil {
		return unwritten(ctx, flag, file, err)
	}
	return nil
}

// unwritten says why what a flag names was not written, or not all of it.
func unwritten(ctx context.Context, flag, name string, why error) error {
	if ended := ctx.Err(); ended != nil && errors.Is(why, ended) {
		return fmt.Errorf("--%s %s was not written to its end: %w", flag, name, errInterrupted)
	}
	return fmt.Errorf("--%s %s: %w", flag, name, why)
}

// evenIf is the context under which the answer of a run is written: where the run was interrupted, what was done is
// written all the same, and a second Ctrl-C ends the program.
func evenIf(interrupted bool, ctx context.Context) context.Context {
	if interrupted {
		return context.WithoutCancel(ctx)
	}
	return ctx
}
