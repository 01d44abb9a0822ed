package listing_test

import (
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
var notListed = regexp.MustCompile(`^File$|^Warnings|Source$`)

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
