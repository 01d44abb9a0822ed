package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"coredays/model/result"
)

// ofTheFirst are the warnings of the first alternative that are not of its plan.
func ofTheFirst(compared *result.Comparison, known []string) (more []string) {
	if len(compared.Alternatives) == 0 {
		return nil
	}
	best := &compared.Alternatives[compared.Best]
	for _, w := range best.Summary.Warnings {
		if !slices.ContainsFunc(known, func(k string) bool { return strings.HasSuffix(k, w) }) {
			more = append(more, best.Name+": "+w)
		}
	}
	return more
}

// wanted says what is wrong with the call.
func (c *comparison) wanted(args []string) error {
	asked := 0
	for _, on := range []bool{c.orders, c.departures != "", c.drop} {
		if on {
			asked++
		}
	}
	switch {
	case asked > 1:
		return errors.New("give one of --orders, --departures and --drop")
	case asked == 0 && len(args) < 2:
		return errors.New("give two scenarios or more to compare, or one of --orders, --departures and --drop")
	case asked == 1 && len(args) > 1:
		return fmt.Errorf("--orders, --departures and --drop take one scenario, and %d are given: %q", len(args), args)
	}
	return nil
}

// named are the files; one that is given twice has a number.
func named(args []string) []string {
	names := slices.Clone(args)
	for i, name := range args {
		if n := count(args[:i], name); n > 0 {
			names[i] = fmt.Sprintf("%s (%d)", name, n+1)
		}
	}
	return names
}

func count(list []string, what string) (n int) {
	for _, s := range list {
		if s == what {
			n++
		}
	}
	return n
}

// call is what was given, but for seed and replications.
func (c *comparison) call(args []string) (words []string) {
	switch {
	case c.orders:
		words = append(words, "--orders")
	case c.drop:
		words = append(words, "--drop")
	case c.departures != "":
		words = append(words, "--departures", c.departures)
	}
	words = append(words, args...)
	for _, s := range c.settings {
		words = append(words, "--set", s)
	}
	if c.anyway {
		words = append(words, "--anyway")
	}
	return words
}
