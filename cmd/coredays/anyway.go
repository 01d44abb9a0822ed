package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/check"
	"coredays/model/voyage"
	"coredays/output/text"
	"coredays/sim"
)

// gate keeps a plan that the check stops from being simulated, unless stated otherwise.
type gate struct{ anyway bool }

func (g *gate) addFlags(cmd *cobra.Command) {
	cmd.Flags().BoolVar(&g.anyway, "anyway", false, "simulate a plan even where check says that it can't be done; the result says so")
}

// pass checks a plan, and says in a sentence what was found. What stops it is an error, or with anyway a warning
// for each; what is hardly likely is a warning.
func (g *gate) pass(v *voyage.Voyage) (checked string, warnings []string, err error) {
	found := check.Plan(v, sim.Estimate(v))
	checked = strings.TrimSpace(text.CheckedWords(found) + " " + text.HardestWords(found))
	for _, line := range text.Unlikely(found) {
		warnings = append(warnings, "Unlikely: "+line)
	}
	stops := text.Stops(found)
	if len(stops) == 0 {
		return checked, warnings, nil
	}
	if !g.anyway {
		return checked, nil, call.AsFault(fmt.Errorf("%s can't be done as it stands:\n  %s\n\"coredays check\" tells more; --anyway simulates it all the same",
			v.Plan.File, strings.Join(stops, "\n  ")))
	}
	for _, stop := range stops {
		warnings = append(warnings, "Simulated anyway though the check stops it: "+stop)
	}
	return checked, warnings, nil
}
