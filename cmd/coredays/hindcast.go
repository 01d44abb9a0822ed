package main

import (
	"context"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/record"
	"coredays/model/score"
	"coredays/output/json"
	"coredays/output/text/scores"
	"coredays/scenario/records"
	"coredays/sim"
	"coredays/sim/hindcast"
	"coredays/sim/ship"
)

// hindcasting is a call of hindcast.
type hindcasting struct {
	cores  string
	ground string // the table of lithologies
	level  string
	goes   bool
	runs   call.Runs
	shard  shard
	call.Answer
}

func newHindcast() *cobra.Command {
	var h hindcasting
	cmd := &cobra.Command{
		Use:   "hindcast [HOLES.csv]",
		Short: "The simulator scored against holes really drilled",
		Long: `Hindcast sails every site of a table of holes, or without one of the built-in extract of those on record, with the built-in ship, at its place and date, and scores the
days that it foresees against the days that it took; so too the metres of core and the cores, of each site and of
whole legs, whose sites are summed with the draws that an expedition shares. The defaults are fitted to the legs of the
built-in extract among others: its score is not one of sites never seen.

At the level "programme" it is told of each hole the tools and the depth that each reached; holes that stopped
above 20 m below the sea floor are left out, as the simulator draws failed starts itself. At the level "counts" it is
told the cores of each tool and the failed holes as well. At the level "ground" it is told what a programme tells, and the
lithology described in the holes, by the table of --lithology; the score stands beside that of the same sites untold. With a table of cores it scores core cycles and recovery too.
With --as-it-goes it scores the days of each site of a leg, from the third on, once more, told those of the sites before it.

The table has a row for each hole and a heading with these columns; cells may be empty from cored_m to
cored_other_m, apart from n_cores; lines that begin with # are comments:

  program, leg, site, hole        names; the holes of a site on a leg belong together
  hole_order, holes_at_site       place of the hole in the order drilled, and how many there are
  latitude, longitude             signed degrees, or degrees and minutes with N, S, E, W
  water_depth_m, penetration_m    m; m below the sea floor
  cored_m, n_cores                m cored and cores in all
  recovered_m                     m of core in all; the column may be missing, or a cell empty: not scored then
  n_apc, n_hlapc, n_xcb, n_rcb, n_other         cores by tool
  cored_apc_m, cored_xcb_m, cored_rcb_m, cored_other_m   m cored by tool; without them cores times stroke
  start, end                      UTC, such as 1987-03-18T03:00: from the ship over the first hole of a site (for
                                  others the bit clear of the hole before) until the bit clears the sea floor, for
                                  the last hole the rig floor

and it may have first_of_leg (yes or no), where it has not all sites of a leg: otherwise the first in the table is taken
to be the first of the leg, where rig and tools are tried out.


The table of lithologies has leg, hole (site and letter), top_m, bottom_m (below the sea floor) and lithology, a row for each
stretch of one class; it may be compressed (.gz).

The table of cores has program, leg, site, hole, water_depth_m, core (its number), type (H, F, X or R), top_depth_mbsf,
cored_m, recovered_m and time_on_deck.
Rows that can't be read are listed and left out with their site.`,
		Example: `  coredays hindcast --replications 200
  coredays hindcast holes.csv
  coredays hindcast holes.csv --cores cores.csv --level counts --json score.json
  coredays hindcast holes.csv --shard 3/16 --part share-03.part`,
		Args: oneTable,
		RunE: func(c *cobra.Command, args []string) error {
			file := ""
			if len(args) > 0 {
				file = args[0]
			}
			return h.execute(c.Context(), file, c.OutOrStdout(), c.ErrOrStderr())
		},
	}
	cmd.Flags().Var(call.InFile(&h.cores), "cores", "score core cycles and recovery by this table of cores")
	cmd.Flags().StringVar(&h.level, "level", records.Programme.String(), "what is known of a site: programme, counts or ground")
	cmd.Flags().Var(call.InFile(&h.ground), "lithology", "with --level ground: the lithologies described in the holes, by this table")
	cmd.Flags().IntVar(&h.runs.Replications, "replications", 1000, "how often each site is simulated")
	cmd.Flags().Uint64Var(&h.runs.Seed, "seed", 1, "seed of all chance: the same seed gives the same answer")
	cmd.Flags().IntVar(&h.runs.Workers, "workers", 0, "how many to sail at a time; 0 for one a processor; the answer is the same")
	cmd.Flags().BoolVar(&h.goes, "as-it-goes", false, "score each site of a leg, from the third on, told the days of the sites before it")
	h.shard.addFlags(cmd)
	h.Answer.AddFlags(cmd)
	return cmd
}

// oneTable wants one file at most.
func oneTable(_ *cobra.Command, args []string) error {
	if len(args) > 1 {
		return fmt.Errorf("hindcast takes one table of holes, and %d are given", len(args))
	}
	return nil
}

func (h *hindcasting) execute(ctx context.Context, file string, stdout, stderr io.Writer) error {
	run, err := h.runs.Run()
	if err != nil {
		return err
	}
	if err := h.shard.misused(run.Replications, h.JSONFile != ""); err != nil {
		return err
	}
	var score *score.Hindcast
	err = call.OrInterrupted(ctx, func() error {
		r, err := h.read(file, run, stderr)
		if err != nil {
			return err
		}
		if h.shard.asked != "" {
			return h.sailShare(ctx, r, stdout, stderr)
		}
		score, err = r.sail(ctx)
		return err
	})
	if err != nil || score == nil {
		return err
	}
	return h.tell(score, stdout)
}

// tell prints the score and writes the JSON.
func (h *hindcasting) tell(result *score.Hindcast, stdout io.Writer) error {
	return h.Give(stdout,
		func(w io.Writer) error { return scores.Print(w, result) },
		func(w io.Writer) error { return json.Hindcast(w, result) })
}

// readyToScore is a hindcast that is ready to be sailed.
type readyToScore struct {
	file   string
	known  records.Knowledge
	run    sim.Run
	out    []record.LeftOut
	f      *foreseen
	cored  *cored    // nil without a table of cores
	untold *foreseen // at the level ground: the sites of which it is told, untold
	goes   bool
}

// sail sails all sites and judges.
func (r *readyToScore) sail(ctx context.Context) (*score.Hindcast, error) {
	visits := hindcast.Sail(ctx, r.f.voyages, r.f.legs, r.run)
	if visits.Stopped {
		return nil, call.ErrInterrupted
	}
	untold := &hindcast.Visits{}
	if r.untold != nil {
		if untold = hindcast.Sail(ctx, r.untold.voyages, r.untold.legs, r.run); untold.Stopped {
			return nil, call.ErrInterrupted
		}
	}
	if r.cored == nil {
		return r.judge(visits, untold, nil)
	}
	cores := hindcast.SailCores(ctx, r.cored.f.voyages, r.cored.f.legs, coreRun(r.run))
	if ctx.Err() != nil {
		return nil, call.ErrInterrupted
	}
	return r.judge(visits, untold, cores)
}

// judge scores what was sailed.
func (r *readyToScore) judge(visits, untold *hindcast.Visits, cores [][][]ship.Core) (*score.Hindcast, error) {
	result := hindcast.Judge(r.f.sites, visits, r.f.legTime)
	result.Open = r.f.open
	if r.untold != nil {
		result.Ground = hindcast.ToldGround(r.f.sites, visits, untold)
	}
	if r.goes {
		told, err := hindcast.AsItGoes(r.f.sites, hindcast.Cases(r.f.sites, visits), r.f.inLeg)
		if err != nil {
			return nil, call.AsFault(err)
		}
		if len(told) == 0 {
			return nil, call.AsFault(fmt.Errorf("%s: no leg has three sites, so none can be told of two before it", r.file))
		}
		result.AsItGoes = score.JudgeTold(told)
	}
	result.File, result.Level, result.Seed, result.Replications, result.LeftOut = r.file, r.known.String(), r.run.Seed, r.run.Replications, r.out
	if r.cored != nil {
		r.cored.score(result, cores)
	}
	return result, nil
}
