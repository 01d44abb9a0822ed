package scenario

import (
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/pelletier/go-toml/v2"
	"go.yaml.in/yaml/v3"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/scenario/document"
	"coredays/scenario/fault"
)

// samePlan compares plans but for where things were read.
var samePlan = cmp.Options{
	cmp.Comparer(func(a, b spread.Shape) bool { return reflect.DeepEqual(a, b) }),
	cmp.FilterPath(func(p cmp.Path) bool {
		name := p.Last().String()
		return name == ".Source" || name == ".File" || name == ".Where"
	}, cmp.Ignore()),
}

func mustRead(t *testing.T, name string, data []byte, settings ...string) *plan.Plan {
	t.Helper()
	p, err := WithSettings(data, name, settings)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func TestTheSameScenarioInThreeFormatsGivesOnePlan(t *testing.T) {
	for name, text := range map[string][]byte{"demonstration": DemonstrationText(), "starter": Starter(), "base": []byte(readTestFile(t, "broken/base.yaml"))} {
		tree := map[string]any{}
		if err := yaml.Unmarshal(text, &tree); err != nil {
			t.Fatal(err)
		}
		asJSON, err := json.Marshal(tree)
		if err != nil {
			t.Fatal(err)
		}
		asTOML, err := toml.Marshal(tree)
		if err != nil {
			t.Fatal(err)
		}
		want := mustRead(t, name+".yaml", text)
		for ext, data := range map[string][]byte{".json": asJSON, ".toml": asTOML, ".yml": text} {
			if diff := cmp.Diff(want, mustRead(t, name+ext, data), samePlan); diff != "" {
				t.Errorf("%s%s (-yaml +%s)\n%s", name, ext, ext, diff)
			}
		}
	}
}

func TestTOMLMayHaveDatesAndBooleansOfItsOwn(t *testing.T) {
	p := mustRead(t, "dates.toml", []byte(readTestFile(t, "dates.toml")))
	if want := time.Date(2027, 1, 14, 8, 0, 0, 0, time.UTC); !p.Sails.Equal(want) {
		t.Errorf("sails %v, want %v", p.Sails, want)
	}
	if !p.Sites[0].Items[0].Hole.Oriented || p.Ship.Rates[rig.Barrels].Median() != 4 || p.Ship.Rates[rig.WaterCore].Median() != 0.2 {
		t.Error("bare values were not read")
	}
	if p.Title != "dates" {
		t.Errorf("title %q, want the name of the file", p.Title)
	}
}

func TestEveryFaultOfAFileCanBeTakenApart(t *testing.T) {
	text := strings.Replace(string(DemonstrationText()), "water_depth: 3420 m", "water_depth: 3420", 1)
	_, err := Read("plan.yaml", []byte(strings.Replace(text, "cap: 12 d", "cap: never", 1)))
	var faults fault.List
	var fault fault.Fault
	if !errors.As(err, &faults) || len(faults) != 2 || !errors.As(err, &fault) {
		t.Fatalf("got %v, want two faults", err)
	}
	if fault.File != "plan.yaml" || fault.Line == 0 || fault.Path != "sites[0].water_depth" || fault.Value != "3420" || fault.Wanted == "" {
		t.Errorf("got %+v", fault)
	}
}

func TestFilesThatCannotBeReadSaySo(t *testing.T) {
	if _, err := Open(filepath.Join(t.TempDir(), "none.yaml")); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("a missing file gave %v", err)
	}
	if _, err := Open(t.TempDir()); err == nil {
		t.Error("a folder was read as a scenario")
	}
	for name, data := range map[string]string{"plan.txt": "version: 1", "plan.yaml": "", "empty.json": "", "list.json": "[1]", "empty.toml": "", "list.yaml": "- 1",
		"word.yaml": "word", "bad.json": "{\n\"version\": 1,\n}", "bad.toml": "version = 1\nversion = 2\n", "loop.yaml": "a: &a [*a]\n", "keys.yaml": "? [a]\n: b\n"} {
		_, err := Read(name, []byte(data))
		var faults fault.List
		if !errors.As(err, &faults) || !strings.HasPrefix(err.Error(), name) {
			t.Errorf("%s: got %v, want a fault", name, err)
		}
	}
}

func TestAliasesThatGrowWithoutEndAreRefused(t *testing.T) {
	bomb := "a0: &a0 [x, x, x, x, x, x, x, x, x]\n"
	for i := 1; i < 9; i++ {
		bomb += fmt.Sprintf("a%d: &a%d [%s]\n", i, i, strings.TrimSuffix(strings.Repeat(fmt.Sprintf("*a%d, ", i-1), 9), ", "))
	}
	for name, text := range map[string]string{"wide.yaml": bomb, "deep.yaml": "a: " + strings.Repeat("[", 500) + strings.Repeat("]", 500), "round.yaml": "a: &a [*a, *a]\n"} {
		if _, err := Read(name, []byte(text)); err == nil || len(err.Error()) > 500 {
			t.Errorf("%s: got %.500v", name, err)
		}
	}
}

func TestFaultsOfSyntaxHaveTheirLine(t *testing.T) {
	for name, data := range map[string]string{"bad.json": "{\n\"version\": 1,\n}", "bad.toml": "sea_days = \"1 d\"\nversion = 1\nsails = = 2\n"} {
		_, err := Read(name, []byte(data))
		var fault fault.Fault
		if !errors.As(err, &fault) || fault.Line != 3 {
			t.Errorf("%s: got %v, want line 3", name, err)
		}
	}
}

// JSON is YAML too, but for a few escapes and for colons on a line of their own.
func TestFaultsOfJSONHaveTheirLines(t *testing.T) {
	data := "{\"version\":1,\n\t\"title\": \"\\ud83d\\ude00 \\/ \\u00e9\",\n\t\"sea_days\": null,\n\t\"\\ud83d\\ude00\": 1,\n\"Version\"\n: 1e0, \"ports\": {}}"
	_, err := Read("plan.json", []byte(data))
	var faults fault.List
	if !errors.As(err, &faults) {
		t.Fatal(err)
	}
	got := err.Error()
	for _, want := range []string{"plan.json:3: sea_days: " + document.WantedValue, "plan.json:5: version: " + document.WantedOnce, "plan.json:6: ports: " + document.WantedValue} {
		if !strings.Contains(got, want) {
			t.Errorf("got\n%s\nwant %q", got, want)
		}
	}
	if p, err := Read("plan.json", []byte(strings.Replace(formats[".json"], "Bouée", `\ud83d\ude00`, 1))); err != nil || p.Title != "😀" {
		t.Errorf("a character in two halves: %v", err)
	}
}

func TestAnOpenedFileFindsItsShipBesideIt(t *testing.T) {
	folder := t.TempDir()
	ship := strings.Replace(string(drillshipText), "rig_floor: 11 m", "rig_floor: 20 m", 1)
	text := strings.Replace(string(DemonstrationText()), "ship: riserless drillship", "ship: ships/mine.yaml", 1)
	for name, data := range map[string]string{"ships/mine.yaml": ship, "plan.yaml": text} {
		path := filepath.Join(folder, name)
		if err := errors.Join(os.MkdirAll(filepath.Dir(path), 0o755), os.WriteFile(path, []byte(data), 0o644)); err != nil {
			t.Fatal(err)
		}
	}
	p, err := Open(filepath.Join(folder, "plan.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	if p.Ship.RigFloor != 20 || p.Sites[2].WaterDepth != 1290-20 {
		t.Errorf("rig floor %v, water %v, want 20 m and 1270 m", p.Ship.RigFloor, p.Sites[2].WaterDepth)
	}
}

func TestFaultsOfAShipFileNameThatFile(t *testing.T) {
	folder := t.TempDir()
	ship := strings.Replace(string(drillshipText), "stand_length: {value: 28.5 m, source: ODP Legacy ship page}", "stand_length: {value: 28.5 m}", 1)
	path := filepath.Join(folder, "mine.yaml")
	if err := os.WriteFile(path, []byte(strings.Replace(ship, "  shot:", "  shots:", 1)), 0o644); err != nil {
		t.Fatal(err)
	}
	_, err := WithSettings(DemonstrationText(), filepath.Join(folder, "plan.yaml"), []string{"ship=mine.yaml"})
	var faults fault.List
	if !errors.As(err, &faults) {
		t.Fatalf("got %v", err)
	}
	got := map[string]string{}
	for _, f := range faults {
		if f.File != path {
			t.Errorf("%v is not in the ship file", f)
		}
		got[f.Path] = f.Wanted
	}
	want := map[string]string{
		"rates.stand_length.source": "where the value comes from",
		"rates.shot":                "every ship file to state it: landing, pressuring up, shearing the pins",
		"rates.shots":               `there is no such rate; did you mean "shot"?`,
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}
