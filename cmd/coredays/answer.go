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
	cmd.Flags().Func("json", "write the result as JSON to `FILE` too, or to standard output alone for -", func(file string) error {
		if file == "" {
			return errors.New("no name")
		}
		a.jsonFile = file
		return nil
	})
}

// give prints the result and writes the JSON. A file that can't be written does not keep from
// people what may have taken hours.
func (a *answer) give(stdout io.Writer, text, asJSON func(io.Writer) error) error {
	if a.jsonFile == "-" {
		return asFault(asJSON(stdout))
	}
	var unwritten error
	if a.jsonFile != "" {
		if err := output.WriteFile(a.jsonFile, asJSON); err != nil {
			unwritten = fmt.Errorf("--json %s: %w", a.jsonFile, err)
		}
	}
	return asFault(errors.Join(text(stdout), unwritten))
}
