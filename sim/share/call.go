package share

import (
	"fmt"
	"slices"
)

// Call is what the shares of one piece of work have in common: what was asked for.
type Call struct {
	Command      string   // simulate, compare, hindcast or study
	Files        []string // that it was asked of; none for the demonstration
	Options      []string // what was asked, beside the following
	Settings     []string
	Anyway       bool
	Seed         uint64
	Replications int // of all shares
}

// unlike says in what two calls differ; empty where they don't.
func (c *Call) unlike(o *Call) string {
	switch {
	case c.Command != o.Command:
		return fmt.Sprintf("of coredays %s, not of coredays %s", o.Command, c.Command)
	case !slices.Equal(c.Files, o.Files):
		return fmt.Sprintf("of %q, not of %q", o.Files, c.Files)
	case !slices.Equal(c.Options, o.Options):
		return fmt.Sprintf("with %q, not with %q", o.Options, c.Options)
	case !slices.Equal(c.Settings, o.Settings):
		return fmt.Sprintf("--set %q, not %q", o.Settings, c.Settings)
	case c.Anyway != o.Anyway:
		return "one was sailed with --anyway, the other without"
	case c.Seed != o.Seed:
		return fmt.Sprintf("seed %d, not %d", o.Seed, c.Seed)
	case c.Replications != o.Replications:
		return fmt.Sprintf("of %d replications, not %d", o.Replications, c.Replications)
	}
	return ""
}
