package main

import (
	"context"
	"errors"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/listing"
	"coredays/model/voyage"
	"coredays/sim/share"
)

// shard is the share of the work that one of several machines does.
type shard struct {
	asked string // "3/16"
	part  string // file that it goes to
	which share.Which
}

func (s *shard) addFlags(cmd *cobra.Command) {
	cmd.Flags().Var((*call.FreeText)(&s.asked), "shard", "sail only one of several equal shares of the work, such as `3/16`, into --part; \"coredays merge\" puts them together")
	cmd.Flags().Var(call.OutFile(&s.part), "part", "with --shard: the `FILE` that the share goes to")
}

// misused says what is wrong with the call; others are whether it names other files to write.
func (s *shard) misused(replications int, others bool) (err error) {
	switch {
	case s.asked == "" && s.part == "":
		return nil
	case s.asked == "" || s.part == "":
		return errors.New("--shard and --part go together: --shard 3/16 --part FILE")
	case others:
		return errors.New("a --shard writes its --part alone; coredays merge writes all other files")
	}
	if s.which, err = share.ParseWhich(s.asked); err != nil {
		return fmt.Errorf("--shard %w", err)
	}
	if s.which.Of > replications {
		return fmt.Errorf("--shard %q: there are only %d replications to share", s.asked, replications)
	}
	return nil
}

// sail does the share and writes it when all is done.
func (s *shard) sail(ctx context.Context, shared share.Call, plans [][]listing.Line, sail func(put func(any) error) error, stdout, stderr io.Writer) error {
	packed, err := share.Pack(&share.Head{Call: shared, Program: machine(), Which: s.which, Plans: plans})
	if err == nil {
		err = sail(packed.Put)
	}
	if ctx.Err() != nil && err != nil {
		fmt.Fprintf(stderr, "Stopped: %s was not written.\n", s.part)
		return call.ErrInterrupted
	}
	if err != nil {
		return call.AsFault(err)
	}
	if err := call.WriteTo(context.WithoutCancel(ctx), "part", s.part, packed.Write); err != nil { // sailed to its end, it is worth keeping
		return call.AsFault(err)
	}
	_, err = fmt.Fprintf(stdout, "Share %s is in %s.\n", s.which, s.part)
	return call.AsFault(err)
}

// listed are the plans of voyages, figure by figure.
func listed(voyages ...*voyage.Voyage) (plans [][]listing.Line) {
	for _, v := range voyages {
		plans = append(plans, listing.Of(v.Plan))
	}
	return plans
}
