package check_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"coredays/model/check"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/scenario/records"
)

// The deepest piston cores of holes on record (core records, doi:10.5281/zenodo.10498831), m below the sea floor: Holes
// 1093A, 1209B, 1085A, 1225A, 1085B, 1226E, 1093D, 1210B. All are of ooze.
func TestPistonHolesOnRecordAreUnlikelyAndNotStopped(t *testing.T) {
	last := 1.0
	for _, depth := range []float64{275.4, 297.6, 305, 313.2, 321.2, 326, 329.6, 377} {
		f := the(t, checked(t, "sites[0].approved_to=400 mbsf", "sites[0].layers=[{bottom: 400 mbsf, lithology: nannofossil ooze}]",
			fmt.Sprintf("sites[0].holes[A].core=[{with: APC, to: %g mbsf}]", depth)), "APC gets to its depth")
		if f.Verdict != check.Caution || f.Chance == nil || *f.Chance > last || *f.Chance < 0.01 {
			t.Fatalf("%g m: %s, chance %v", depth, f.Verdict, *f.Chance)
		}
		last = *f.Chance
	}
}

// Of 380 holes with piston cores on record 131, 61, 16 and 8 have them below 150, 200, 250 and 300 m (the same
// records), and many of the others were not asked to go deeper: the chances are at least such shares.
func TestChancesOfPistonHolesAreThoseOfTheRecords(t *testing.T) {
	for depth, holes := range map[float64]float64{150: 131, 200: 61, 250: 16, 300: 8} {
		f := the(t, checked(t, "sites[0].layers=[{bottom: 400 mbsf, lithology: nannofossil ooze}]", fmt.Sprintf("sites[0].holes[A].core=[{with: APC, to: %g mbsf}]", depth)), "APC gets to its depth")
		if share := holes / 380; *f.Chance < share || *f.Chance > share+0.4 {
			t.Errorf("to %g m: chance %.3g, on record %.3g", depth, *f.Chance, share)
		}
	}
}

// Sites on record, without the funnels that a hindcast gives them: they were done, so that nothing may stop them but
// two assemblies in one hole, between which the string was pulled and the hole found again.
func TestNothingStopsSitesOnRecord(t *testing.T) {
	file, err := os.Open("../../testdata/published/site_days.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	sites, _, err := records.ReadHoles(file.Name(), file)
	if err != nil || len(sites) < 60 {
		t.Fatal(len(sites), err)
	}
	model, faults := records.Model()
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	for n := 0; n < len(sites); n += 3 {
		p, err := model.Plan(sites[n], records.Programme)
		if err != nil {
			t.Fatal(err)
		}
		p.SeaDays = 56 * unit.Day
		p.Sites[0].Refusal = plan.Refusal{Overpull: 80_000 * unit.PoundForce, PartialStrokes: 2, DrillOver: true}
		for i := range p.Sites[0].Items {
			if h := p.Sites[0].Items[i].Hole; h != nil {
				h.Reentry = plan.NoReentry
			}
		}
		v, err := voyage.Compile(p)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range check.Of(check.Plan(v, voyage.QuickEstimate{}), check.Stop) {
			if !strings.Contains(f.What, "can't follow") {
				t.Errorf("%s, hole %s: %s: %g, limit %g %s", p.Title, f.Hole, f.What, f.Value, f.Limit, f.Unit)
			}
		}
	}
}
