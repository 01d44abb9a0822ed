package scenario

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// brokenCase is one case of testdata/broken; the README there says how they are written.
type brokenCase struct {
	name                string
	replace, with, sets []string
	faults              []string
	hasReplace          bool
}

func TestBrokenScenariosGiveLocatedFaults(t *testing.T) {
	base := readTestFile(t, "broken/base.yaml")
	if _, err := Read("base.yaml", []byte(base)); err != nil {
		t.Fatalf("base.yaml must be whole: %v", err)
	}
	files, err := filepath.Glob("testdata/broken/*.txt")
	if err != nil || len(files) == 0 {
		t.Fatal("no cases", err)
	}
	count := 0
	for _, file := range files {
		for _, c := range brokenCases(t, file) {
			count++
			t.Run(c.name, func(t *testing.T) { c.check(t, base) })
		}
	}
	if count < 40 {
		t.Errorf("%d cases, wanted at least 40", count)
	}
}

func (c brokenCase) check(t *testing.T, base string) {
	text := base
	if c.hasReplace {
		old := strings.Join(c.replace, "\n")
		if n := strings.Count(base, old); n != 1 {
			t.Fatalf("%q stands %d times in base.yaml, wanted once", old, n)
		}
		text = strings.Replace(base, old, strings.Join(c.with, "\n"), 1)
	}
	_, err := WithSettings([]byte(text), "base.yaml", c.sets)
	if err == nil {
		t.Fatal("nothing was found wrong")
	}
	if diff := cmp.Diff(c.faults, strings.Split(err.Error(), "\n")); diff != "" {
		t.Errorf("(-want +got)\n%s\nas it came:\nfault: %s", diff, strings.ReplaceAll(err.Error(), "\n", "\nfault: "))
	}
}

// brokenCases reads the cases of a file.
func brokenCases(t *testing.T, file string) (cases []brokenCase) {
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	for line := range strings.Lines(string(data)) {
		line = strings.TrimSuffix(line, "\n")
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		word, rest, found := strings.Cut(line, ": ")
		if word == "case" {
			cases = append(cases, brokenCase{name: rest})
			continue
		}
		c := &cases[len(cases)-1]
		switch {
		case found && word == "replace":
			c.replace, c.hasReplace = append(c.replace, rest), true
		case found && word == "with":
			c.with = append(c.with, rest)
		case found && word == "set":
			c.sets = append(c.sets, rest)
		case found && word == "fault":
			c.faults = append(c.faults, rest)
		default:
			t.Fatalf("%s: %q is none of case, replace, with, set and fault", file, line)
		}
	}
	return cases
}

func readTestFile(t *testing.T, name string) string {
	data, err := os.ReadFile(filepath.Join("testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}
