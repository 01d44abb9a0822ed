package main

import (
	"errors"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"coredays/output"
)

// answer is where a result goes: to people on standard output, and as JSON where that is asked for.
type answer struct{ jsonFile string }

func (a *answer) addFlags(cmd *cobra.Command) {
	file := outFile(&a.jsonFile, asJSON...)
	file.print = true
	cmd.Flags().Var(file, "json", "write the result as JSON to `FILE` too, or to standard output alone for -")
}

// give prints the result and writes the JSON. A file that can't be written does not keep from
// people what may have taken hours.
func (a *answer) give(stdout io.Writer, text, asJSON func(io.Writer) error) error {
	if a.jsonFile == "-" {
		return asFault(asJSON(stdout))
	}
	unwritten := writeTo("json", a.jsonFile, asJSON)
	return asFault(errors.Join(text(stdout), unwritten))
}

// writeTo writes the file that a flag names, if it names one.
func writeTo(flag, file string, write func(io.Writer) error) error {
	if file == "" {
		return nil
	}
	if err := output.WriteFile(file, write); err != nil {
		return fmt.Errorf("--%s %s: %w", flag, file, err)
	}
	return nil
}
