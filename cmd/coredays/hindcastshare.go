package main

import (
	"cmp"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"io"
	"strconv"

	"coredays/cmd/coredays/call"
	"coredays/model/listing"
	"coredays/scenario/document"
	"coredays/sim/hindcast"
	"coredays/sim/parts"
	"coredays/sim/share"
	"coredays/sim/ship"
	builtin "coredays/testdata/published"
)

// workAtASite is the work of a site beside that of its cores, in cores: trips and the beginning of a replication. By
// processor time of the sites on record.
const workAtASite = 10

// shared are the sites as shares are cut from them.
func (f *foreseen) shared() parts.Sites {
	s := parts.Sites{Voyages: f.voyages, Legs: f.legs}
	for i := range f.sites {
		s.Work = append(s.Work, f.sites[i].AllCores()+workAtASite)
	}
	return s
}

// tables are the tables of a hindcast, each with the digest of its bytes: what is made of them is up to the program.
func (h *hindcasting) tables(file string) (plans [][]listing.Line, err error) {
	if file == builtInHoles {
		sum := sha256.Sum256(builtin.SiteDays)
		plans = append(plans, []listing.Line{{Path: file, Value: hex.EncodeToString(sum[:8])}})
		file = ""
	}
	for _, name := range []string{file, h.cores, h.ground} {
		if name == "" {
			continue
		}
		r, err := document.OpenFile(name)
		if err != nil {
			return nil, err
		}
		sum := sha256.New()
		_, err = io.Copy(sum, r)
		if err := cmp.Or(err, r.Close()); err != nil {
			return nil, err
		}
		plans = append(plans, []listing.Line{{Path: "the table " + name, Value: hex.EncodeToString(sum.Sum(nil)[:8])}})
	}
	return plans, nil
}

// sailShare sails the share and writes it.
func (h *hindcasting) sailShare(ctx context.Context, r *readyToScore, stdout, stderr io.Writer) error {
	tables, err := h.tables(r.file)
	if err != nil {
		return call.AsFault(err)
	}
	var files []string
	if r.file != builtInHoles {
		files = []string{r.file}
	}
	shared := share.Call{Command: "hindcast", Files: files, Options: []string{"--level", h.level, "--cores", h.cores, "--lithology", h.ground, "--as-it-goes", strconv.FormatBool(h.goes)}, Seed: r.run.Seed, Replications: r.run.Replications}
	return h.shard.sail(ctx, shared, tables, func(put func(any) error) error {
		err := parts.SailHindcast(ctx, r.f.shared(), r.run, h.shard.which, put)
		if err == nil && r.untold != nil {
			err = parts.SailHindcast(ctx, r.untold.shared(), r.run, h.shard.which, put)
		}
		if err == nil && r.cored != nil {
			err = parts.SailCores(ctx, r.cored.f.shared(), coreRun(r.run), h.shard.which, put)
		}
		return err
	}, stdout, stderr)
}

// hindcast puts together what hindcast sailed.
func (m *merging) hindcast(ctx context.Context, all share.All) (joined, error) {
	shared := &all[0].Head.Call
	h := &hindcasting{level: shared.Options[1], cores: shared.Options[3], ground: shared.Options[5], goes: shared.Options[7] == strconv.FormatBool(true), Answer: m.Answer}
	file := ""
	if len(shared.Files) > 0 {
		file = shared.Files[0]
	}
	r, err := h.read(file, runOf(shared), io.Discard)
	if err != nil {
		return nil, err
	}
	tables, err := h.tables(r.file)
	if err == nil {
		err = asSailed(all, r.file, tables)
	}
	if err != nil {
		return nil, call.AsFault(err)
	}
	visits, err := parts.JoinHindcast(ctx, r.f.shared(), r.run, all)
	if err != nil {
		return nil, call.AsFault(err)
	}
	untold := &hindcast.Visits{}
	if r.untold != nil {
		if untold, err = parts.JoinHindcast(ctx, r.untold.shared(), r.run, all); err != nil {
			return nil, call.AsFault(err)
		}
	}
	var cores [][][]ship.Core
	if r.cored != nil {
		cores, err = parts.JoinCores(r.cored.f.shared(), coreRun(r.run), all)
	}
	return func(_ context.Context, stdout, _ io.Writer) error {
		result, err := r.judge(visits, untold, cores)
		if err != nil {
			return err
		}
		return h.tell(result, stdout)
	}, call.AsFault(err)
}
