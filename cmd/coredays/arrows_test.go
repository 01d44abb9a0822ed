package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// top is the folder of the module, seen from this package.
const top = "../.."

// topLevel is all that may stand there, beside names with a dot in front and what git ignores.
var topLevel = []string{"DEVELOPERS.md", "README.md", "cmd", "go.mod", "go.sum", "model", "output", "scenario", "sim", "testdata"}

// mayImport are the parts of the program that each part may import beside its own packages.
var mayImport = map[string][]string{
	"cmd":      {"scenario", "sim", "output", "model", "testdata"}, // testdata: the extract of holes that is built in
	"scenario": {"model"},
	"sim":      {"model"},
	"output":   {"model"},
	"model":    {},
}

// onlyIn are the folders outside of which nobody imports a library, so that it can be replaced.
var onlyIn = map[string][]string{
	"github.com/spf13/viper":              {"scenario", "scenario/document"},
	"github.com/olekukonko/tablewriter":   {"output/text", "output/words", "cmd/fitlevels/printed"},
	"github.com/spf13/cobra":              {"cmd/coredays", "cmd/coredays/call"},
	"github.com/rogpeppe/go-internal":     {"cmd/coredays"},
	"github.com/cheggaaa/pb":              {"output/progress"},
	"gonum.org/v1/plot":                   {"output/chart", "cmd/fitlevels/refit", "cmd/coredays/lookahead"},
	"github.com/go-viper/mapstructure/v2": {"scenario"},
	"github.com/xuri/excelize":            {"output/sheet", "output", "scenario/spreadsheet", "scenario/sitetable", "cmd/coredays"},
	"html/template":                       {"output/page", "output/chart"},
}

// rooms are the packages of scenario, output and sim, and those of the same part that each may import.
var rooms = map[string][]string{
	"scenario/fault":       {},
	"scenario/document":    {"scenario/fault"},
	"scenario/entry":       {"scenario/document", "scenario/fault"},
	"scenario/lithology":   {"scenario/document", "scenario/entry", "scenario/fault"},
	"scenario":             {"scenario/document", "scenario/entry", "scenario/fault", "scenario/lithology"},
	"scenario/dates":       {"scenario/entry"},
	"scenario/study":       {"scenario/dates", "scenario/document", "scenario/entry"},
	"scenario/edit":        {"scenario/document", "scenario/fault"},
	"scenario/spreadsheet": {},
	"scenario/records":     {"scenario", "scenario/document", "scenario/entry", "scenario/fault", "scenario/lithology"},
	"scenario/sitetable":   {"scenario", "scenario/fault", "scenario/spreadsheet"},
	"scenario/rigfile":     {"scenario/spreadsheet"},
	"scenario/statefile":   {"scenario/spreadsheet"},

	"output":          {},
	"output/words":    {},
	"output/progress": {},
	"output/text":     {"output/words"},

	"output/text/alternatives": {"output/text", "output/words"},
	"output/text/crewrates":    {"output/text", "output/words"},
	"output/text/mornings":     {"output/text", "output/words"},
	"output/text/scores":       {"output/text", "output/words"},
	"output/text/seastate":     {"output/text", "output/words"},

	"output/json":       {"output/text", "output/text/alternatives", "output/text/crewrates", "output/words"},
	"output/sheet":      {"output", "output/text", "output/text/alternatives", "output/text/crewrates", "output/words"},
	"output/chart":      {"output", "output/sheet", "output/text", "output/text/alternatives", "output/words"},
	"output/page":       {"output", "output/chart", "output/sheet", "output/text", "output/text/alternatives", "output/text/crewrates", "output/text/mornings", "output/words"},
	"output/outputtest": {"output", "output/words"},

	"sim/random":      {},
	"sim/statistics":  {},
	"sim/ship":        {"sim/random", "sim/statistics"},
	"sim":             {"sim/ship", "sim/random", "sim/statistics"},
	"sim/share":       {},
	"sim/study":       {"sim", "sim/statistics"},
	"sim/parts":       {"sim", "sim/ship", "sim/statistics", "sim/share", "sim/choice", "sim/hindcast", "sim/study"},
	"sim/hindcast":    {"sim", "sim/ship"},
	"sim/sensitivity": {"sim", "sim/random", "sim/statistics"},
	"sim/choice":      {"sim", "sim/ship", "sim/statistics"},
	"sim/lookahead":   {"sim", "sim/ship", "sim/random", "sim/statistics"},
	"sim/simtest":     {},
}

// mostFiles is how many files a folder may hold, tests aside: as many as a newcomer takes in at a glance.
const mostFiles = 30

func TestNoFolderIsCrowded(t *testing.T) {
	files := map[string]int{}
	err := filepath.WalkDir(top, func(name string, _ fs.DirEntry, err error) error {
		if strings.HasSuffix(name, ".go") && !strings.HasSuffix(name, "_test.go") {
			files[filepath.Dir(name)]++
		}
		return err
	})
	if err != nil || len(files) < len(rooms) {
		t.Fatalf("%d folders with files, %v", len(files), err)
	}
	for folder, n := range files {
		if n > mostFiles {
			t.Errorf("%s has %d files, of %d at most: find what does not hang on the rest", folder, n, mostFiles)
		}
	}
}

// largestFile is how large a file of the project may be, bytes: a compiled program is larger, and has no business here.
const largestFile = 2 << 20

func TestNoFileIsLarge(t *testing.T) {
	err := filepath.WalkDir(top, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			if d != nil && d.Name() == ".git" {
				return fs.SkipDir
			}
			return err
		}
		if info, err := d.Info(); err != nil || info.Size() > largestFile && !ignored(t, d.Name()) {
			t.Errorf("%s has %d bytes, of %d at most: %v", name, info.Size(), largestFile, err)
		}
		return nil
	})
	if err != nil {
		t.Error(err)
	}
}

func TestTheTopLevelHoldsTheFixedFoldersAndFiles(t *testing.T) {
	entries, err := os.ReadDir(top)
	if err != nil {
		t.Fatal(err)
	}
	var found []string
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") && !ignored(t, e.Name()) {
			found = append(found, e.Name())
		}
	}
	if !slices.Equal(found, topLevel) {
		t.Errorf("the top level holds\n%q, want\n%q", found, topLevel)
	}
}

// ignored reports whether git is given to ignore a name at the top level.
func ignored(t *testing.T, name string) bool {
	list, err := os.ReadFile(top + "/.gitignore")
	if err != nil {
		t.Fatal(err)
	}
	return slices.ContainsFunc(strings.Fields(string(list)), func(pattern string) bool {
		matched, err := path.Match(strings.Trim(pattern, "/"), name)
		return err == nil && matched
	})
}

func TestArrowsRunFromCmdThroughTheMiddleThreeToModel(t *testing.T) {
	seen := map[string]int{}
	eachImport(t, func(file, imported string) {
		part := part(file)
		rest, ours := strings.CutPrefix(imported, "coredays/")
		if !ours || strings.HasSuffix(file, "_test.go") && (part == "cmd" || part == "model") {
			return
		}
		seen[part]++
		if to, _, _ := strings.Cut(rest, "/"); to != part && !slices.Contains(mayImport[part], to) {
			t.Errorf("%s imports %s", file, imported)
		}
	})
	for part := range mayImport {
		if seen[part] == 0 {
			t.Errorf("no import of ours was found in %s: this tests nothing", part)
		}
	}
}

func TestArrowsAmongTheRoomsRunOneWay(t *testing.T) {
	found := map[string]bool{}
	eachImport(t, func(file, imported string) {
		room, to := path.Dir(file), strings.TrimPrefix(imported, "coredays/")
		if !slices.Contains([]string{"output", "scenario", "sim"}, part(file)) || strings.HasSuffix(file, "_test.go") {
			return
		}
		found[room] = true
		if _, another := rooms[to]; another && !slices.Contains(rooms[room], to) {
			t.Errorf("%s imports %s", file, imported)
		}
	})
	for room := range found {
		if _, named := rooms[room]; !named {
			t.Errorf("%s is no room of the plan", room)
		}
	}
	if len(found) != len(rooms) {
		t.Errorf("%d rooms have files, of %d", len(found), len(rooms))
	}
}

func TestEachLibraryStaysBehindThePackageThatIsForIt(t *testing.T) {
	eachImport(t, func(file, imported string) {
		for library, folders := range onlyIn {
			if imported != library && !strings.HasPrefix(imported, library+"/") {
				continue
			}
			if !slices.Contains(folders, path.Dir(file)) {
				t.Errorf("%s imports %s, which is for %q alone", file, imported, folders)
			}
		}
	})
}

// part is the first folder of a path.
func part(file string) string {
	first, _, _ := strings.Cut(file, "/")
	return first
}

// eachImport visits every import of every Go file of the module; file is its path from the top.
func eachImport(t *testing.T, visit func(file, imported string)) {
	t.Helper()
	err := fs.WalkDir(os.DirFS(top), ".", func(file string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && file != "." && (entry.Name()[0] == '.' || entry.Name() == "testdata"):
			return fs.SkipDir
		case entry.IsDir() || path.Ext(file) != ".go":
			return nil
		}
		parsed, err := parser.ParseFile(token.NewFileSet(), filepath.Join(top, file), nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		for _, spec := range parsed.Imports {
			imported, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				return err
			}
			visit(file, imported)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}
