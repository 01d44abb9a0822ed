package main

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"coredays/sim/parts"
	"coredays/sim/share"
)

func TestSharesOfAnotherVersionAreRefused(t *testing.T) {
	path := filepath.Join(t.TempDir(), "one")
	if code, _, stderr := called(context.Background(), "simulate", "--replications", "8", "--shard", "1/1", "--part", path); code != exitOK {
		t.Fatal(stderr)
	}
	o, err := share.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer o.Close()
	o.Head.Program = "coredays v0.0.0, go1, amd64"
	var part parts.Part
	other, err := share.Pack(&o.Head)
	if err := errors.Join(err, o.Take(&part)); err != nil {
		t.Fatal(err)
	}
	file, err := os.Create(path)
	if err := errors.Join(err, other.Put(part), other.Write(file), file.Close()); err != nil {
		t.Fatal(err)
	}
	code, stdout, stderr := called(t.Context(), "merge", path)
	if code != exitFault || stdout != "" || !strings.Contains(stderr, "sailed by coredays v0.0.0, go1, amd64, and this is "+machine()) {
		t.Errorf("exit %d: %s%s", code, stdout, stderr)
	}
}
