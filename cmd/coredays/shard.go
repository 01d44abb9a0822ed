package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"coredays/model/listing"
	"coredays/sim"
	"coredays/sim/parts"
)

// shard is the share of the replications that one of several machines sails.
type shard struct {
	which string // "3/16"
	part  string // file that it goes to
}

func (s *shard) addFlags(cmd *cobra.Command) {
	cmd.Flags().Var((*freeText)(&s.which), "shard", "sail only one of several equal shares of the replications, such as `3/16`, into --part; \"coredays merge\" puts them together")
	cmd.Flags().Var(outFile(&s.part), "part", "with --shard: the `FILE` that the share goes to")
}

// misused says what is wrong with the call.
func (s *simulation) misused() error {
	switch {
	case s.shard.which == "" && s.shard.part == "":
		return errors.Join(s.files.nowhereToDraw(), s.files.nowhereToShow())
	case s.shard.which == "" || s.shard.part == "":
		return errors.New("--shard and --part go together: --shard 3/16 --part FILE")
	case s.runs.precision != "":
		return errors.New("--precision looks at all replications, which no --shard has")
	case s.jsonFile != "" || s.files != files{}:
		return errors.New("a --shard writes its --part alone; coredays merge writes all other files")
	}
	_, _, err := s.shard.bounds(s.runs.replications)
	return err
}

// bounds are the replications of the share: from the first to before the end.
func (s *shard) bounds(replications int) (first, end int, err error) {
	which, of, _ := strings.Cut(s.which, "/")
	i, bad := strconv.Atoi(which)
	n, worse := strconv.Atoi(of)
	if bad != nil || worse != nil || i < 1 || i > n {
		return 0, 0, fmt.Errorf("--shard %q: give which share of how many, such as 3/16", s.which)
	}
	if n > replications {
		return 0, 0, fmt.Errorf("--shard %q: there are only %d replications to share", s.which, replications)
	}
	return (i - 1) * replications / n, i * replications / n, nil
}

// sailShare sails the share and writes it.
func (s *simulation) sailShare(ctx context.Context, p *prepared, run sim.Run, stdout, stderr io.Writer) error {
	all := run.Replications
	var end int
	run.First, end, _ = s.shard.bounds(run.Replications) // looked at with the call
	run.Replications = end - run.First
	defer watched(&run, run.Replications, stderr)()
	part, err := parts.Sail(ctx, p.v, run)
	if err != nil {
		fmt.Fprintf(stderr, "Stopped: %s was not written.\n", s.shard.part)
		return errInterrupted
	}
	file := partFile{Call: partCall{p.args, s.settings, s.anyway, run.Seed, all}, Program: machine(), Plan: listing.Of(p.v.Plan), Part: *part}
	if err := writeTo(context.WithoutCancel(ctx), "part", s.shard.part, file.write); err != nil { // sailed to its end, it is worth keeping
		return planFault{err}
	}
	_, err = fmt.Fprintf(stdout, "Replications %d to %d of %d are in %s.\n", run.First, end-1, all, s.shard.part)
	return asFault(err)
}
