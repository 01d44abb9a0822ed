package scenario

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"coredays/model/check"
	"coredays/model/listing"
	"coredays/model/plan"
	"coredays/model/voyage"
)

// without is the base scenario with settings.
func without(t *testing.T, settings ...string) *plan.Plan {
	t.Helper()
	p, err := WithSettings([]byte(readTestFile(t, "broken/base.yaml")), "base.yaml", settings)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// cutDown is the base scenario with lines taken out.
func cutDown(t *testing.T, from, to string, also ...string) *plan.Plan {
	t.Helper()
	text := readTestFile(t, "broken/base.yaml")
	_, behind, found := strings.Cut(text, from)
	_, behind, foundToo := strings.Cut(behind, to)
	if !found || !foundToo {
		t.Fatalf("no %q to %q", from, to)
	}
	p, err := Read("base.yaml", []byte(strings.NewReplacer(also...).Replace(text[:strings.Index(text, from)]+to+behind)))
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func TestWhatIsLeftOutIsAsIfItWereNotInTheFile(t *testing.T) {
	for name, c := range map[string]struct{ left, cut *plan.Plan }{
		"a hole": {without(t, "sites[SB-01].holes[B].left_out=yes"), cutDown(t, "      - name: B\n", "      - task:")},
		"an alternate": {without(t, "sites[SB-02].left_out=yes"),
			cutDown(t, "  - name: SB-02\n", "order:", "order: [SB-01, SB-02]", "order: [SB-01]", "order_rules: [{first: SB-01, then: SB-02}]", "")},
		"the first site, a primary one": {without(t, "sites[SB-01].left_out=yes"),
			cutDown(t, "  - name: SB-01\n", "  - name: SB-02", "order: [SB-01, SB-02]", "order: [SB-02]", "order_rules: [{first: SB-01, then: SB-02}]", "")},
	} {
		if diff := cmp.Diff(listing.Of(c.cut), listing.Of(c.left)); diff != "" {
			t.Errorf("%s (-cut +left out)\n%s", name, diff)
		}
		if all := strings.Join(c.left.Warnings, "\n"); !strings.Contains(all, "left out, as the scenario says: SB-0") {
			t.Errorf("%s is left out in silence: %s", name, all)
		}
	}
	if diff := cmp.Diff(listing.Of(without(t)), listing.Of(without(t, "sites[SB-01].left_out=no"))); diff != "" {
		t.Error(diff)
	}
}

func TestWhatIsLeftOutMayAskForWhatCannotBeDone(t *testing.T) {
	without(t, "sites[SB-01].left_out=yes", "sites[SB-01].approved_to=100 mbsf", "sites[SB-01].not_after=2020-01-01T00:00Z")
	without(t, "sites[SB-01].holes[B].left_out=yes", "sites[SB-01].holes[B].core[0].to=900 mbsf")
}

func TestFindingsBehindASiteLeftOutKeepTheirPlace(t *testing.T) {
	p := without(t, "sites[SB-01].left_out=yes")
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	seen := false
	for _, f := range check.Plan(v, voyage.QuickEstimate{}) {
		if f.Site == "SB-02" && f.Hole == "A" {
			seen = true
			if !strings.HasPrefix(f.Path, "sites[1].holes[0]") || !strings.HasPrefix(f.Where, "base.yaml:4") {
				t.Errorf("%s stands at %q, %s", f.What, f.Path, f.Where)
			}
		}
	}
	if !seen {
		t.Error("nothing is found at SB-02")
	}
}
