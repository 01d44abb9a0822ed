package main

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/binary"
	"encoding/gob"
	"errors"
	"fmt"
	"io"
	"os"
	"slices"
	"strings"

	"coredays/model/listing"
	"coredays/sim/parts"
)

// A part file is a share of a simulation on its way to the others: a line that says what it is, the length of
// what follows in eight bytes, the share (gob, compressed by gzip), and the SHA-256 of all before. It is read
// to its end and held against that before anything in it is believed.
const partMagic = "coredays part 2\n"

// partFile is what it holds.
type partFile struct {
	Call    partCall
	Program string         // name, version and machine of what sailed it
	Plan    []listing.Line // the plan as it was understood, ship, ground and records among it
	Part    parts.Part
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
	var packed bytes.Buffer
	z := gzip.NewWriter(&packed)
	if err := errors.Join(gob.NewEncoder(z).Encode(p), z.Close()); err != nil {
		return err
	}
	whole := binary.BigEndian.AppendUint64([]byte(partMagic), uint64(packed.Len()))
	whole = append(whole, packed.Bytes()...)
	sum := sha256.Sum256(whole)
	_, err := w.Write(append(whole, sum[:]...))
	return err
}

// readPart reads a share.
func readPart(path string) (*partFile, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, fmt.Errorf("the part can't be read: %w", err)
	}
	if !info.Mode().IsRegular() {
		return nil, fmt.Errorf("%s: no ordinary file, so no part", path)
	}
	whole, err := os.ReadFile(path)
	if err != nil {
		return nil, fmt.Errorf("the part can't be read: %w", err)
	}
	p, err := unpacked(whole)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	return p, nil
}

// unpacked is the share in the bytes of its file.
func unpacked(whole []byte) (*partFile, error) {
	const head, tail = len(partMagic) + 8, sha256.Size
	if !bytes.HasPrefix(whole, []byte(partMagic)) || len(whole) < head+tail {
		return nil, errors.New(`not a part that "coredays simulate --shard" of this version wrote`)
	}
	length, body := binary.BigEndian.Uint64(whole[len(partMagic):]), whole[:len(whole)-tail]
	sum := sha256.Sum256(body)
	if length != uint64(len(body)-head) || !bytes.Equal(sum[:], whole[len(body):]) {
		return nil, errors.New("the part is damaged: copy it again, or sail this share again")
	}
	z, err := gzip.NewReader(bytes.NewReader(body[head:]))
	if err != nil {
		return nil, err
	}
	var p partFile
	return &p, gob.NewDecoder(z).Decode(&p)
}

// readParts reads the shares of one simulation.
func readParts(paths []string) (files []*partFile, err error) {
	for i, path := range paths {
		p, err := readPart(path)
		if err != nil {
			return nil, err
		}
		files = append(files, p)
		if what := files[0].unlike(p); what != "" {
			return nil, fmt.Errorf("%s is of another simulation than %s: %s", paths[i], paths[0], what)
		}
	}
	return files, nil
}

// unlike says in what two shares differ that should not; empty where they don't.
func (p *partFile) unlike(o *partFile) string {
	if what := p.Call.unlike(&o.Call); what != "" {
		return what
	}
	if p.Program != o.Program {
		return fmt.Sprintf("sailed by %s, not by %s", o.Program, p.Program)
	}
	return inWhatPlansDiffer(p.Plan, o.Plan)
}

// unlike says in what two calls differ; empty where they don't.
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

// inWhatPlansDiffer says that of two lists of plans in words.
func inWhatPlansDiffer(one, other []listing.Line) string {
	if listing.Digest(one) == listing.Digest(other) {
		return ""
	}
	return "the plans differ (figures in SI units): " + strings.Join(listing.Differences(one, other), "; ")
}
