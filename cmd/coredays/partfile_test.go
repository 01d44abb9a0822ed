package main

import (
	"bytes"
	"context"
	"errors"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// aShare sails half of a small simulation and gives the bytes of its file.
func aShare(t *testing.T) (path string, whole []byte) {
	t.Helper()
	path = filepath.Join(t.TempDir(), "one")
	if code, _, stderr := called(context.Background(), "simulate", "--replications", "8", "--shard", "1/2", "--part", path); code != exitOK {
		t.Fatal(stderr)
	}
	whole, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return path, whole
}

func TestADamagedShareIsRefused(t *testing.T) {
	path, whole := aShare(t)
	if _, err := readPart(path); err != nil {
		t.Fatal(err)
	}
	random := rand.New(rand.NewPCG(1, 1))
	for range 400 {
		at, bit := random.IntN(len(whole)), random.IntN(8)
		flipped := bytes.Clone(whole)
		flipped[at] ^= 1 << bit
		if _, err := unpacked(flipped); err == nil {
			t.Errorf("bit %d of byte %d is flipped, and nobody notices", bit, at)
		}
	}
	for name, damaged := range map[string][]byte{"without its last byte": whole[:len(whole)-1], "with a byte behind it": append(bytes.Clone(whole), 0),
		"doubled": append(bytes.Clone(whole), whole...), "cut to its half": whole[:len(whole)/2], "empty": nil, "its first line alone": []byte(partMagic)} {
		if _, err := unpacked(damaged); err == nil {
			t.Errorf("a share %s is taken", name)
		}
	}
}

func TestOnlyAnOrdinaryFileIsAShare(t *testing.T) {
	for _, path := range []string{os.DevNull, "/dev/zero", t.TempDir()} {
		if _, err := readPart(path); err == nil || !strings.Contains(err.Error(), "no ordinary file") {
			t.Errorf("%s: %v", path, err)
		}
	}
}

func TestSharesOfAnotherVersionAreRefused(t *testing.T) {
	path, _ := aShare(t)
	p, err := readPart(path)
	if err != nil {
		t.Fatal(err)
	}
	p.Program = "coredays v0.0.0, go1, amd64"
	var other bytes.Buffer
	if err := errors.Join(p.write(&other), os.WriteFile(path, other.Bytes(), 0o666)); err != nil {
		t.Fatal(err)
	}
	code, stdout, stderr := called(t.Context(), "merge", path)
	if code != exitFault || stdout != "" || !strings.Contains(stderr, "sailed by coredays v0.0.0, go1, amd64, and this is "+machine()) {
		t.Errorf("exit %d: %s%s", code, stdout, stderr)
	}
}
