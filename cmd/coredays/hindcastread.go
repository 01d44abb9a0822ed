package main

import (
	"bytes"
	"cmp"
	"fmt"
	"io"

	"coredays/cmd/coredays/call"
	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/spread"
	"coredays/model/voyage"
	"coredays/scenario/records"
	"coredays/sim"
	"coredays/sim/hindcast"
	builtin "coredays/testdata/published"
)

// read reads the tables.
func (h *hindcasting) read(file string, run sim.Run, stderr io.Writer) (*readyToScore, error) {
	known, err := records.ParseKnowledge(h.level)
	if err != nil {
		return nil, fmt.Errorf("--level %w", err)
	}
	sites, out, err := holesOf(file)
	if err != nil {
		return nil, call.AsFault(err)
	}
	file = tableName(file)
	if len(sites) == 0 {
		for _, o := range out {
			fmt.Fprintf(stderr, "%s:%d: %s\n", file, o.Row, o.Why)
		}
		return nil, call.AsFault(fmt.Errorf("%s: no site is left to score", file))
	}
	more, err := h.described(sites, known)
	if err != nil {
		return nil, err
	}
	out = append(out, more...)
	f, err := foresee(sites, known)
	if err != nil {
		return nil, call.AsFault(err)
	}
	r := &readyToScore{file: file, known: known, run: run, out: out, f: f, goes: h.goes}
	if known == records.Ground {
		if r.untold, err = foresee(hindcast.WithGround(sites), records.Programme); err != nil {
			return nil, call.AsFault(err)
		}
	}
	if h.cores != "" {
		r.cored, err = readCores(h.cores, sites)
	}
	return r, call.AsFault(err)
}

// described says of sites what lithology was described in them, at the level ground, and what of its table was left out.
func (h *hindcasting) described(sites []record.Site, known records.Knowledge) ([]record.LeftOut, error) {
	switch {
	case known != records.Ground && h.ground != "":
		return nil, fmt.Errorf("--lithology is for --level %s, and the level is %s", records.Ground, known)
	case known != records.Ground:
		return nil, nil
	case h.ground == "":
		return nil, fmt.Errorf("--level %s needs the lithologies: give their table with --lithology FILE", known)
	}
	holes, out, err := records.DescribedIn(h.ground)
	if err != nil {
		return nil, call.AsFault(err)
	}
	if records.Describe(sites, holes) == 0 {
		return nil, call.AsFault(fmt.Errorf("%s: no hole of it is at a site that is scored", h.ground))
	}
	for i := range out {
		out[i].Why = "lithology: " + out[i].Why
	}
	return out, nil
}

// tableName is that of a table of holes, for people.
func tableName(file string) string { return cmp.Or(file, builtInHoles) }

const builtInHoles = "the built-in extract (holes on record, among those that the defaults are fitted to)"

// holesOf reads a table of holes, or the built-in one where none is named.
func holesOf(file string) ([]record.Site, []record.LeftOut, error) {
	if file == "" {
		return records.ReadHoles(builtInHoles, bytes.NewReader(builtin.SiteDays))
	}
	return records.HolesIn(file)
}

// foreseen are sites with the voyages that foresee them.
type foreseen struct {
	sites   []record.Site
	legs    []string
	open    []string        // what the record does not tell
	inLeg   spread.Quantity // what days of a leg's sites have in common
	legTime score.LegTime   // how long legs are on their sites
	voyages []*voyage.Voyage
}

// foresee makes the plans of sites on record and compiles them.
func foresee(sites []record.Site, known records.Knowledge) (*foreseen, error) {
	model, faults := records.Model()
	if len(faults) > 0 {
		return nil, faults
	}
	voyages, err := model.Voyages(sites, known)
	return &foreseen{sites: sites, legs: record.LegNames(sites), voyages: voyages, open: model.Open(), inLeg: model.InLeg, legTime: model.LegTime}, err
}
