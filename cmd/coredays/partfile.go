package main

import (
	"compress/gzip"
	"encoding/gob"
	"errors"
	"fmt"
	"io"
	"os"
	"slices"

	"coredays/sim"
)

// partSchema names what a part file holds; it changes with the rows of sim.
const partSchema = "coredays.part/1"

// partFile is a share of a simulation on its way to the others: gob, compressed by gzip.
type partFile struct {
	Schema string
	Call   partCall
	Part   sim.Part
}

// partCall is what the shares of a simulation have in common.
type partCall struct {
	Scenario     []string // the file; none for the demonstration
	Settings     []string
	Anyway       bool
	Seed         uint64
	Replications int // of all shares
}

func (p *partFile) write(w io.Writer) error {
	z := gzip.NewWriter(w)
	return errors.Join(gob.NewEncoder(z).Encode(p), z.Close())
}

func readPart(path string) (p partFile, err error) {
	file, err := os.Open(path)
	if err != nil {
		return p, fmt.Errorf("the part can't be read: %w", err)
	}
	defer file.Close()
	z, err := gzip.NewReader(file)
	if err == nil {
		err = gob.NewDecoder(z).Decode(&p)
	}
	if err != nil || p.Schema != partSchema {
		return p, fmt.Errorf("%s: not a part that \"coredays simulate --shard\" of this version wrote", path)
	}
	return p, nil
}

// readParts reads the shares of one simulation.
func readParts(paths []string) (call partCall, parts []sim.Part, err error) {
	for i, path := range paths {
		p, err := readPart(path)
		if err != nil {
			return call, nil, err
		}
		if i == 0 {
			call = p.Call
		}
		if what := call.unlike(&p.Call); what != "" {
			return call, nil, fmt.Errorf("%s is of another simulation than %s: %s", path, paths[0], what)
		}
		parts = append(parts, p.Part)
	}
	return call, parts, nil
}

// unlike tells in what two calls differ; empty where they don't.
func (c *partCall) unlike(o *partCall) string {
	switch {
	case !slices.Equal(c.Scenario, o.Scenario):
		return fmt.Sprintf("scenario %q, not %q", o.Scenario, c.Scenario)
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
