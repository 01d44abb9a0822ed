package output

import (
	"encoding/json"
	"io"
	"math"
	"testing"

	"coredays/model/basis"
)

func someEntries() []basis.Entry {
	return []basis.Entry{
		{Group: "expedition", Name: "sea days", Low: 56, Mid: 56, High: 56, Unit: "d", From: basis.Stated, Source: "plan.yaml:4", Quantity: -1, Share: math.NaN()},
		{Group: "ship and crew", Name: "piston_pace", Low: 66.4, Mid: 100, High: 150.5, Unit: "%", Varies: "35 % expedition, 65 % run", From: basis.OfShip, Source: "core records", Quantity: 1, Share: 0.173},
		{Group: "ship and crew", Name: "barrels", Low: 3, Mid: 3, High: 3, From: basis.OfShip, Memory: true, Source: "from memory", Quantity: 2, Share: math.NaN()},
		{Group: "ground", Site: "SB-01", Name: "drilling rate, chalk to 300 mbsf", Low: 18, Mid: 28.8, High: 46.1, Unit: "m/h", Varies: "100 % site", From: basis.BuiltIn, Source: "ODP Leg 197 Prelim. Report", Quantity: 3, Share: 0.0004},
	}
}

func TestBasisIsPrintedByGroup(t *testing.T) {
	matchGolden(t, "basis.txt", printed(t, func(w io.Writer) error { return Basis(w, somePlan(), someEntries(), 0) }))
}

// A share that 2000 replications of nothing would give too is not told.
func TestBasisIsPrintedByWhatMattersAfterASimulation(t *testing.T) {
	matchGolden(t, "basis_weighed.txt", printed(t, func(w io.Writer) error { return Basis(w, somePlan(), someEntries(), 2000) }))
}

func TestBasisJSONHasNullWhereThereIsNoShare(t *testing.T) {
	text := printed(t, func(w io.Writer) error { return BasisJSON(w, somePlan(), someEntries(), 2000) })
	var got struct {
		Schema       string
		Replications int
		Items        []map[string]any
	}
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatal(err)
	}
	if got.Schema != "coredays.basis/1" || got.Replications != 2000 || got.Items[0]["share"] != nil || got.Items[3]["share"] != 0.0004 || got.Items[2]["from_memory"] != true {
		t.Errorf("%+v", got)
	}
}
