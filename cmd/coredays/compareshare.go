package main

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io"

	"coredays/cmd/coredays/call"
	"coredays/model/result"
	"coredays/sim"
	"coredays/sim/choice"
	"coredays/sim/parts"
	"coredays/sim/share"
)

// misused says what is wrong with the call of a share.
func (c *comparison) misused() error {
	if c.round != "" && (!c.orders || c.shard.asked == "") {
		return errors.New("--round goes with --orders and --shard: a search on one machine needs none")
	}
	return c.shard.misused(c.runs.Replications, c.JSONFile != "" || c.tracks != "" || c.page != "" || c.csv != "" || c.workbook != "")
}

// shared is what the shares of a comparison have in common, or of a round of a search.
func (c *comparison) shared(args []string, run sim.Run, round string) share.Call {
	shared := share.Call{Command: "compare", Files: args, Settings: c.settings, Anyway: c.anyway, Seed: run.Seed, Replications: run.Replications}
	switch {
	case c.orders:
		shared.Options = []string{"--orders", round}
	case c.drop:
		shared.Options = []string{"--drop"}
	case c.departures != "":
		shared.Options = []string{"--departures", c.departures}
	}
	return shared
}

// takeOptions sets what shared gave.
func (c *comparison) takeOptions(shared *share.Call) {
	c.settings, c.anyway = shared.Settings, shared.Anyway
	if o := shared.Options; len(o) > 0 {
		c.orders, c.drop = o[0] == "--orders", o[0] == "--drop"
		if o[0] == "--departures" {
			c.departures = o[1]
		}
	}
}

// sailShare sails the share and writes it.
func (c *comparison) sailShare(ctx context.Context, r *readyToCompare, run sim.Run, stdout, stderr io.Writer) error {
	round := ""
	of := 0 // nobody knows how many there will be
	if r.trial != nil {
		of = len(r.trial.Alternatives) * run.Replications / c.shard.which.Of
	}
	defer watched(&run, of, stderr)()
	sail := func(put func(any) error) error { return parts.SailTrial(ctx, r.trial, run, c.shard.which, put) }
	if r.search != nil {
		round = parts.RoundOf(r.search)
		sail = func(put func(any) error) error { return parts.SailRound(ctx, r.search, run, c.shard.which, put) }
	}
	return c.shard.sail(ctx, c.shared(r.args, run, round), listed(r.voyages...), sail, stdout, stderr)
}

// roundHead is the head of the file in which a search travels from round to round.
func (c *comparison) roundHead(r *readyToCompare, run sim.Run) *share.Head {
	return &share.Head{Call: c.shared(r.args, run, "between rounds"), Program: machine(), Plans: listed(r.voyages...)}
}

// resume goes on with a search from the file of its round, where one is given.
func (c *comparison) resume(r *readyToCompare, run sim.Run) error {
	if c.round == "" {
		return nil
	}
	opened, err := share.Open(c.round)
	if err != nil {
		return call.AsFault(fmt.Errorf("--round: %w", err))
	}
	defer opened.Close()
	if what := opened.Head.Unlike(c.roundHead(r, run)); what != "" {
		return call.AsFault(fmt.Errorf("--round %s is of another search: %s", c.round, what))
	}
	var state choice.SearchState
	if err := opened.Take(&state); err != nil {
		return call.AsFault(err)
	}
	r.search.Resume(state)
	return nil
}

// comparison puts together what compare sailed.
func (m *merging) comparison(ctx context.Context, all share.All) (joined, error) {
	shared, run := &all[0].Head.Call, runOf(&all[0].Head.Call)
	c := &comparison{chosen: chosen{cmd: m.cmd}, Answer: m.Answer, tracks: m.files.track, page: m.files.report, csv: m.files.csv, workbook: m.files.workbook, dated: m.files.dated}
	c.takeOptions(shared)
	if c.orders == (m.round == "") {
		return nil, errors.New("--round FILE goes with the shares of a search for the best order, and with no others: it takes the next round")
	}
	r, err := c.prepare(shared.Files, run)
	if err != nil {
		return nil, err
	}
	if err := cmp.Or(asSailed(all, r.voyages[0].Plan.File, listed(r.voyages...)), c.make(r)); err != nil {
		return nil, err
	}
	var compared *result.Comparison
	if c.orders {
		r.search, compared, err = parts.JoinRound(ctx, r.voyages[0], run, all)
	} else {
		compared, err = parts.JoinTrial(ctx, r.trial, run, all)
	}
	return func(ctx context.Context, stdout, _ io.Writer) error {
		if compared == nil {
			return c.nextRound(ctx, r, run, m.round, stdout)
		}
		return c.conclude(ctx, r, compared, stdout)
	}, call.AsFault(err)
}

// nextRound writes the round that a search has come to.
func (c *comparison) nextRound(ctx context.Context, r *readyToCompare, run sim.Run, file string, stdout io.Writer) error {
	state := r.search.State()
	packed, err := share.Pack(c.roundHead(r, run))
	if err == nil {
		err = packed.Put(state)
	}
	if err == nil {
		err = call.WriteTo(ctx, "round", file, packed.Write)
	}
	if err != nil {
		return call.AsFault(err)
	}
	what := fmt.Sprintf("sails %d orders up to %d replications", len(state.Orders), state.UpTo)
	if state.Final {
		what = fmt.Sprintf("is the last and sails %d orders with %d replications anew", len(r.search.Trial().Alternatives), run.Replications)
	}
	_, err = fmt.Fprintf(stdout, "Round %d of the search is done. Round %d %s; it is in %s, for \"coredays compare --round\".\n", state.Round-1, state.Round, what, file)
	return call.AsFault(err)
}
