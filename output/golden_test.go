package output_test

import (
	"bytes"
	"flag"
	"io"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"coredays/output/outputtest"
)

var update = flag.Bool("update", false, "write the golden files anew")

// printed collects what a function prints.
func printed(t *testing.T, write func(io.Writer) error) string {
	t.Helper()
	var b bytes.Buffer
	if err := write(&b); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// onPage is the markup of a page as people read it.
func onPage(t *testing.T, write func(io.Writer) error) string {
	t.Helper()
	return outputtest.AsRead(printed(t, write))
}

// matchGolden compares with a file of testdata.
func matchGolden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if difference := cmp.Diff(string(want), got); difference != "" {
		t.Errorf("%s (-want +got):\n%s", path, difference)
	}
}
