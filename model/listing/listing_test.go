package listing_test

import (
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strings"
	"testing"
	"time"

	"coredays/model/listing"
	"coredays/model/plan"
	"coredays/scenario"
)

func demonstration(t *testing.T) *plan.Plan {
	t.Helper()
	p, err := scenario.Read("demonstration.yaml", scenario.DemonstrationText())
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// notListed are the fields that bear on no result.
var notListed = regexp.MustCompile(`^File$|^Warnings|Source$|Path$`)

// A plan that differs in any field has another digest: each field of each kind of thing that the demonstration has
// is changed in turn, once.
func TestEveryFieldOfAPlanIsInItsDigest(t *testing.T) {
	p := demonstration(t)
	before := listing.Digest(listing.Of(p))
	seen := map[string]bool{}
	eachLeaf("", reflect.ValueOf(p).Elem(), func(path string, leaf reflect.Value) {
		kind := regexp.MustCompile(`\[\d+\]`).ReplaceAllString(path, "[]")
		if seen[kind] || notListed.MatchString(kind) {
			return
		}
		seen[kind] = true
		old := reflect.New(leaf.Type()).Elem()
		old.Set(leaf)
		change(t, path, leaf)
		if listing.Digest(listing.Of(p)) == before {
			t.Errorf("%s was changed, and the digest was not", path)
		}
		leaf.Set(old)
	})
	if len(seen) < 120 {
		t.Errorf("only %d kinds of figures were changed", len(seen))
	}
	if listing.Digest(listing.Of(p)) != before {
		t.Error("the same plan has another digest")
	}
}

// eachLeaf visits what can be set of a value.
func eachLeaf(path string, v reflect.Value, visit func(string, reflect.Value)) {
	switch {
	case v.Type() == reflect.TypeFor[time.Time]():
		visit(path, v)
		return
	case !v.CanSet():
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			eachLeaf(strings.TrimPrefix(path+"."+v.Type().Field(i).Name, "."), v.Field(i), visit)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			eachLeaf(path+"[]", v.Index(i), visit)
		}
	case reflect.Pointer:
		if !v.IsNil() {
			eachLeaf(path, v.Elem(), visit)
		}
	case reflect.Interface, reflect.Map: // the shape of a spread is changed as a whole below
	default:
		visit(path, v)
	}
}

func change(t *testing.T, path string, leaf reflect.Value) {
	switch {
	case leaf.Type() == reflect.TypeFor[time.Time]():
		leaf.Set(reflect.ValueOf(leaf.Interface().(time.Time).Add(time.Nanosecond)))
	case leaf.CanInt():
		leaf.SetInt(leaf.Int() + 1)
	case leaf.CanFloat():
		leaf.SetFloat(leaf.Float()*(1+1e-15) + 1e-300)
	case leaf.Kind() == reflect.Bool:
		leaf.SetBool(!leaf.Bool())
	case leaf.Kind() == reflect.String:
		leaf.SetString(leaf.String() + "x")
	default:
		t.Fatalf("%s is a %s", path, leaf.Kind())
	}
}

func TestWhatDiffersIsNamedWithBothValues(t *testing.T) {
	for setting, want := range map[string]string{
		"sites[0].layers[0].bottom=181 mbsf":                        "Sites[0].Layers[0].Bottom is ",
		"sites[0].cap=3.8 d":                                        "in the one and 328320 in the other",
		"rates={tripping: 22 stands/h}":                             "Ship.Rates[",
		"sites[0].unusable={because: ice, every: 9 d, lasts: 12 h}": "Unusable",
		"sea_days=55 d":                                             "SeaDays is 4.8384e+06 in the one and 4.752e+06 in the other",
	} {
		other, err := scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", []string{setting})
		if err != nil {
			t.Fatal(err)
		}
		got := listing.Differences(listing.Of(demonstration(t)), listing.Of(other))
		if text := strings.Join(got, "; "); !strings.Contains(text, want) {
			t.Errorf("%s: %q does not hold %q", setting, text, want)
		}
	}
	if got := listing.Differences(listing.Of(demonstration(t)), listing.Of(demonstration(t))); got != nil {
		t.Errorf("the same plan differs: %q", got)
	}
}

// A comment moves the lines of all that follows, and an uncertain rate read twice is the same rate.
func TestWhereAThingStandsInItsFileIsNoDifference(t *testing.T) {
	moved, err := scenario.Read("other.yaml", append([]byte("# one line more\n"), scenario.DemonstrationText()...))
	if err != nil {
		t.Fatal(err)
	}
	if got := listing.Differences(listing.Of(demonstration(t)), listing.Of(moved)); got != nil {
		t.Errorf("%q", got)
	}
}

// A record of the sea is given by what stands in it: one height of thousands that is another makes another plan,
// another name of the file does not.
func TestARecordIsListedByItsHeights(t *testing.T) {
	const hour = 3000
	digests := map[string][32]byte{}
	for name, height := range map[string]float64{"one.csv": 1.5, "again.csv": 1.5, "other.csv": 1.51} {
		dir := t.TempDir()
		var b strings.Builder
		b.WriteString("time,hs_m\n")
		for h := range 24 * 400 {
			hs := 1.5 + float64(h%240)/120
			if h == hour {
				hs = height
			}
			fmt.Fprintf(&b, "%s,%.3f\n", time.Date(2020, 1, 1, h, 0, 0, 0, time.UTC).Format("2006-01-02T15:04Z"), hs)
		}
		if err := os.WriteFile(filepath.Join(dir, name), []byte(b.String()), 0o666); err != nil {
			t.Fatal(err)
		}
		p, err := scenario.WithSettings(scenario.DemonstrationText(), filepath.Join(dir, "plan.yaml"), []string{"sites[0].weather={record: " + name + ", source: a buoy}"})
		if err != nil {
			t.Fatal(err)
		}
		digests[name] = listing.Digest(listing.Of(p))
	}
	if digests["one.csv"] != digests["again.csv"] {
		t.Error("the same record under another name makes another plan")
	}
	if digests["one.csv"] == digests["other.csv"] {
		t.Error("one height differs, and the digest does not")
	}
}

// Spreads of the same three numbers are not the same where their shape or the level at which they live is another.
func TestAShapeAndALevelAreListed(t *testing.T) {
	seen := map[[32]byte]string{}
	for _, spread := range []string{"{low: 20 h, mid: 30 h, high: 50 h}", "{low: 20 h, mid: 30 h, high: 50.001 h}", "{low: 20 h, mid: 30 h, high: 50 h, varies: site}",
		"{low: 20 h, mid: 30 h, high: 50 h, lowest: 1 h}", "30 h"} {
		p, err := scenario.WithSettings(scenario.DemonstrationText(), "plan.yaml", []string{"in_port_before_sailing=" + spread})
		if err != nil {
			t.Fatal(err)
		}
		digest := listing.Digest(listing.Of(p))
		if other, is := seen[digest]; is {
			t.Errorf("%s and %s have one digest", spread, other)
		}
		seen[digest] = spread
	}
}
