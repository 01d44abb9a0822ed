package call

import (
	"context"
	"errors"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"coredays/output"
)

// Answer is where a result goes: to people on standard output, and as JSON where that is asked for.
type Answer struct{ JSONFile string }

// AddFlags adds --json.
func (a *Answer) AddFlags(cmd *cobra.Command) {
	file := OutFileOrPrint(&a.JSONFile, AsJSON...)
	cmd.Flags().Var(file, "json", "write the result as JSON to `FILE` too, or to standard output alone for -")
}

// Give prints the result and writes the JSON. A file that can't be written does not keep from
// people what may have taken hours.
func (a *Answer) Give(stdout io.Writer, text, asJSON func(io.Writer) error) error {
	if a.JSONFile == "-" {
		return AsFault(asJSON(stdout))
	}
	failed := WriteTo(context.Background(), "json", a.JSONFile, asJSON) // it takes no time
	return AsFault(errors.Join(text(stdout), failed))
}

// WriteTo writes the file that a flag names, if it names one.
func WriteTo(ctx context.Context, flag, file string, write func(io.Writer) error) error {
	if file == "" {
		return nil
	}
	if err := output.WriteFile(ctx, file, write); err != nil {
		return Unwritten(ctx, flag, file, err)
	}
	return nil
}

// Unwritten says why what a flag names was not written, or not all of it.
func Unwritten(ctx context.Context, flag, name string, why error) error {
	if ended := ctx.Err(); ended != nil && errors.Is(why, ended) {
		return fmt.Errorf("--%s %s was not written to its end: %w", flag, name, ErrInterrupted)
	}
	return fmt.Errorf("--%s %s: %w", flag, name, why)
}

// EvenIf is the context under which the answer of a run is written: where the run was interrupted, what was done is
// written all the same, and a second Ctrl-C ends the program.
func EvenIf(interrupted bool, ctx context.Context) context.Context {
	if interrupted {
		return context.WithoutCancel(ctx)
	}
	return ctx
}
