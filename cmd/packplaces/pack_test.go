package main

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
)

func TestTheEmbeddedFilesAreThoseOfTheTables(t *testing.T) {
	data := os.Getenv("COREDAYS_DATA")
	if data == "" {
		t.Skip("COREDAYS_DATA names no folder of records")
	}
	to := t.TempDir()
	if err := run(filepath.Join(data, "places"), to); err != nil {
		t.Fatal(err)
	}
	for _, table := range tables {
		made, err := opened(to, table.file)
		if err != nil {
			t.Fatal(err)
		}
		embedded, err := opened("../../model/places", table.file)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(made, embedded) {
			t.Errorf("%s is not what its table gives: go generate ./model/places", table.file)
		}
	}
}
