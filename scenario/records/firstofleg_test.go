package records

import (
	"slices"
	"strings"
	"testing"

	"coredays/model/record"
)

// A table that has not all sites of a leg says which is the first; what it says must be yes or no.
func TestATableMaySayWhichSiteIsTheFirstOfItsLeg(t *testing.T) {
	for said, want := range map[string]struct{ first, read bool }{"yes": {true, true}, "": {true, true}, "no": {false, true}, "maybe": {false, false}} {
		sites, out, err := ReadHoles("holes.csv", strings.NewReader(holesHead+",first_of_leg\n"+holeRow(nil)+","+said+"\n"+holeRow(map[string]string{"leg": "2"})+",\n"))
		if err != nil {
			t.Fatal(err)
		}
		refused := slices.ContainsFunc(out, func(o record.LeftOut) bool { return strings.Contains(o.Why, `first_of_leg "maybe"`) })
		if refused == want.read || want.read && (len(sites) != 2 || sites[0].First != want.first) {
			t.Errorf("%q: %d sites, left out %v", said, len(sites), out)
		}
	}
}
