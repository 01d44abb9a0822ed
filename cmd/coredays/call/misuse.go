package call

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"coredays/scenario/fault"
)

// wantedOf says what values a kind of flag takes.
var wantedOf = map[string]string{
	"int":    "a whole number",
	"uint32": "a whole number from 0 to 4294967295",
	"uint64": "a whole number of 0 or more",
	"bool":   "true or false",
	"name":   "the name of a file or folder; - is for --json alone",
	"words":  "a value, or leave the flag out",
	"date":   "a date such as 2026-11-26",

	"name or -":               "the name of a file that ends in .json, or -",
	"name ending in .html":    "the name of a file that ends in .html",
	"name ending in .csv":     "the name of a file that ends in .csv",
	"name ending in .xlsx":    "the name of a file that ends in .xlsx",
	"name ending in .geojson": "the name of a file that ends in .geojson",
}

// WrongFlag says people what a flag wants rather than what the parser of numbers says, and names the flag that an
// unknown one is like.
func WrongFlag(cmd *cobra.Command, err error) error {
	if unknown, is := errors.AsType[*pflag.NotExistError](err); is {
		var known []string
		cmd.Flags().VisitAll(func(f *pflag.Flag) { known = append(known, f.Name) })
		if _, meant := fault.Suggest(unknown.GetSpecifiedName(), known, "flag"); meant != "" {
			return fmt.Errorf("%w; did you mean --%s?", err, meant)
		}
		return err
	}
	invalid, ok := errors.AsType[*pflag.InvalidValueError](err)
	if !ok {
		return err
	}
	flag := invalid.GetFlag()
	wanted, known := wantedOf[flag.Value.Type()]
	if !known {
		return err
	}
	return fmt.Errorf("--%s %q: give %s", flag.Name, invalid.GetValue(), wanted)
}

// OneScenario refuses more than one file.
func OneScenario(cmd *cobra.Command, args []string) error {
	if len(args) > 1 {
		return fmt.Errorf("%s takes one scenario, and %d are given: %q", cmd.Name(), len(args), args)
	}
	return nil
}

// Taking wants so many arguments, which are what it says.
func Taking(least, most int, what string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		if len(args) < least || len(args) > most {
			return fmt.Errorf("%s takes %s, and %q is given", cmd.Name(), what, args)
		}
		return nil
	}
}

// NoArguments refuses any.
func NoArguments(cmd *cobra.Command, args []string) error {
	if len(args) > 0 {
		return fmt.Errorf("%s takes nothing beside its flags, and %q is given", cmd.Name(), args)
	}
	return nil
}

// KnownTopic has help refuse a command that there isn't, as any other call of it is refused.
func KnownTopic(cmd *cobra.Command, args []string) error {
	_, _, err := cmd.Root().Find(args)
	return err
}
