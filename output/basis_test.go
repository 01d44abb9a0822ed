package output_test

import (
	"encoding/json"
	"io"
	"testing"

	"coredays/model/result"
	jsonout "coredays/output/json"
	"coredays/output/outputtest"
	"coredays/output/text"
)

func TestBasisIsPrintedByGroup(t *testing.T) {
	matchGolden(t, "basis.txt", printed(t, func(w io.Writer) error { return text.Basis(w, outputtest.SomePlan(), outputtest.SomeEntries(), nil) }))
}

// A number whose share may be chance is not stated among those that matter.
func TestBasisBeginsWithWhatMattersAfterASimulation(t *testing.T) {
	matchGolden(t, "basis_weighed.txt", printed(t, func(w io.Writer) error {
		return text.Basis(w, outputtest.SomePlan(), outputtest.SomeEntries(), outputtest.SomeSimulation())
	}))
}

func TestBasisJSONHasNullWhereThereIsNoShare(t *testing.T) {
	text := printed(t, func(w io.Writer) error {
		return jsonout.Basis(w, outputtest.SomePlan(), outputtest.SomeEntries(), outputtest.SomeSimulation())
	})
	var got struct {
		Schema       string
		Replications int
		Drivers      []result.Driver
		Items        []struct {
			Share  *float64
			Causes []result.Driver
			Memory bool `json:"from_memory"`
		}
	}
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatal(err)
	}
	items := got.Items
	if got.Schema != "coredays.basis/1" || got.Replications != 2000 || items[0].Share != nil || items[0].Causes == nil || *items[3].Share != 0 || !items[2].Memory {
		t.Errorf("%+v", got)
	}
	if want := (result.Driver{Name: "piston coring", Share: 0.15}); *items[1].Share != 0.173 || len(items[1].Causes) != 3 || items[1].Causes[0] != want || got.Drivers[1].Name != want.Name {
		t.Errorf("%+v of %+v", items[1], got.Drivers)
	}
}
