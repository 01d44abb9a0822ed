package lookahead

import (
	"bytes"
	"context"
	"math"
	"strings"
	"testing"
	"time"

	"coredays/model/voyage"
	"coredays/scenario/statefile"
	"coredays/sim"
)

// stated are the papers of the invented expedition with a state file.
func stated(text string) func(*Papers) {
	return func(f *Papers) { f.State = &File{"state.yaml", []byte(text)} }
}

// What the state file is written as is what it is read as: nothing moves, whatever the hole, the stock, approvals and ranks.
func TestAStateFileAsWrittenChangesNothing(t *testing.T) {
	p, f := expedition(t)
	for _, at := range []string{"2028-01-11T11:30:00Z", "2028-01-13T12:00:00Z", "2028-01-24T12:00:00Z", "2028-01-29T06:00:00Z"} {
		f := f
		f.At, _ = time.Parse(time.RFC3339, at)
		before, _, err := Read(p, f)
		if err != nil {
			t.Fatal(err)
		}
		var text bytes.Buffer
		if err := statefile.Write(&text, p, before); err != nil {
			t.Fatal(err)
		}
		f.State = &File{"state.yaml", text.Bytes()}
		q, after, _, err := Taken(p, f)
		if err != nil {
			t.Fatal(at, err)
		}
		if q != p {
			t.Errorf("%s: the plan is amended", at)
		}
		if after.Now.Hole != before.Now.Hole || after.Gone != before.Gone || len(after.Steps) != len(before.Steps) || len(after.Notes) != len(before.Notes) {
			t.Errorf("%s: %+v, and was %+v", at, after.Now.Hole, before.Now.Hole)
		}
	}
}

// An approval that is amended to less depth cuts the holes to come, one that is amended to more lets a log go deeper.
func TestApprovalsAreAmendedByTheStateFile(t *testing.T) {
	m := pageOf(t, stated("approvals: [{site: PR-2, to_mbsf: 420}, {site: PR-3, to_mbsf: 120}]"), sim.Run{Seed: 1, Replications: 40})
	for _, x := range m.Items {
		most := map[string]float64{"PR-3 A": 120, "PR-3 B": 120, "PR-2 D": 420}[x.Site+" "+x.Name]
		if most > 0 && (x.Depth.P90 > most+1e-6 || x.Depth.P90 < most-10) {
			t.Errorf("hole %s of %s goes to %.1f m, approved to %g m", x.Name, x.Site, x.Depth.P90, most)
		}
	}
	if notes := strings.Join(m.Warnings, "\n"); !strings.Contains(notes, "site PR-3 is approved to 120 m by the state file; by the scenario it is approved to 300 m") {
		t.Errorf("warnings %q", notes)
	}
	p, f := expedition(t)
	f.Log.Data = []byte(strings.ReplaceAll(string(f.Log.Data), ",PR-1,A,320.0", ",PR-1,A,365.0"))
	if _, _, err := Read(p, f); err == nil {
		t.Error("a hole deeper than approved was taken")
	}
	stated("approvals: [{site: PR-1, to_mbsf: 400}]")(&f)
	if _, _, err := Read(p, f); err != nil {
		t.Error(err)
	}
}

// The chance that all of the first rank is done is that of the ranks as amended: with nothing else in the first rank than what is
// done it is sure.
func TestRanksAreAmendedByTheStateFile(t *testing.T) {
	all := `holes: [{site: PR-2, hole: B, rank: 2}, {site: PR-3, hole: A, rank: 2}]`
	run := sim.Run{Seed: 1, Replications: 40}
	if as, amended := pageOf(t, nil, run), pageOf(t, stated(all), run); as.ChancePrimary >= 1 || amended.ChancePrimary != 1 {
		t.Errorf("chance of the first rank %.2f, amended %.2f", as.ChancePrimary, amended.ChancePrimary)
	}
}

// A string severed by the log stays in its hole with half of the pipe below the assembly, and the state file has the last word. A
// hole has stood open as long as the state file says.
func TestWhatIsLeftInHolesIsGone(t *testing.T) {
	p, f := expedition(t)
	f.Log.Data = []byte(strings.Replace(string(f.Log.Data), "POOH,PR-1,A,320.0", "severing the string,PR-1,A,320.0", 1))
	st, _, err := Read(p, f)
	if err != nil {
		t.Fatal(err)
	}
	board, err := p.Ship.Tubulars.Board()
	if err != nil {
		t.Fatal(err)
	}
	if want := (320 - board.Assembly.Length()) / 2; st.Gone.Assemblies != 1 || math.Abs(float64(st.Gone.Pipe-want)) > 0.1 {
		t.Errorf("%+v gone, want one with %.1f m", st.Gone, float64(want))
	}
	stated("assemblies_lost: 2\npipe_lost_m: 700\nopen_h: 5")(&f)
	if st, _, err = Read(p, f); err != nil {
		t.Fatal(err)
	}
	if st.Gone.Assemblies != 2 || st.Gone.Pipe != 700 || st.At.Sub(st.OpenedAt()) != 5*time.Hour {
		t.Errorf("%+v gone, open for %s", st.Gone, st.At.Sub(st.OpenedAt()))
	}
}

// With all assemblies in holes nothing more is begun that needs one; what is in hand goes on.
func TestAShipWithoutAssembliesBeginsNoHole(t *testing.T) {
	p, f := expedition(t)
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	if v.OnBoard.Strings == 0 {
		t.Skip("the ship of the plan has no end of assemblies")
	}
	stated("assemblies_lost: 100")(&f)
	m, err := Page(context.Background(), v, f, sim.Run{Seed: 1, Replications: 20})
	if err != nil {
		t.Fatal(err)
	}
	for _, x := range m.Items {
		if toCome := x.Status == "to come"; toCome && x.Chance > 0 {
			t.Errorf("hole %s of %s is done with a chance of %.2f", x.Name, x.Site, x.Chance)
		}
	}
}
