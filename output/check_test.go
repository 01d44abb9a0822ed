package output_test

import (
	"encoding/json"
	"io"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"coredays/model/check"
	"coredays/model/plan"
	jsonout "coredays/output/json"
	"coredays/output/outputtest"
	"coredays/output/text"
	"coredays/output/words"
)

func TestCheckIsPrintedWithStopsFirst(t *testing.T) {
	matchGolden(t, "check.txt", printed(t, func(w io.Writer) error {
		return text.Check(w, outputtest.SomePlan(), outputtest.SomeFindings(), text.Detail{All: true})
	}))
}

// passedAt is a finding that passed at a site or hole.
func passedAt(site, hole, what, kind string, value, limit float64) check.Finding {
	return check.Finding{Site: site, Hole: hole, What: what, Kind: kind, Value: value, Limit: limit, Unit: "m", Source: "a sheet"}
}

func TestPassesThatAreAlikeAreToldOnceWithTheClosestToItsLimit(t *testing.T) {
	none := math.NaN()
	deeper := passedAt("S2", "A", "string reaches the target", "", 4200, 8400)
	deeper.Source = "another sheet"
	found := []check.Finding{
		passedAt("S1", "", "water deep enough", "", 3420, 75),
		passedAt("S2", "", "water deep enough", "", 700, 75), // closest, from above the limit
		passedAt("S1", "A", "string reaches the target", "", 3800, 8400),
		passedAt("S1", "B", "string reaches the target", "", 3900, 8400), // closest, from below
		deeper,
		passedAt("S1", "", "heave, Hs 5.5 m", "heave", 4.9, 6.1),
		passedAt("S2", "", "heave, Hs 5.4 m", "heave", 4.9, 6.1),
		passedAt("S1", "A", "tools can follow one another", "", none, none),
		passedAt("S2", "A", "tools can follow one another", "", none, none),
		passedAt("", "", "collars on board", "", 30, 40),
		passedAt("", "", "collars on board", "", 30, 40), // of the expedition: never put together
		passedAt("S1", "C", "weight on bit for chalk", "weight on bit for the hardest rock", 8, 30),
	}
	want := []string{
		"S2//water deep enough (closest of 2)/700", "S1/B/string reaches the target (closest of 2)/3900", "S2/A/string reaches the target/4200",
		"2 sites//heave/4.9", "2 holes//tools can follow one another/", "//collars on board/30", "//collars on board/30", "S1/C/weight on bit for chalk/8",
	}
	var got []string
	for _, f := range text.Together(found) {
		got = append(got, strings.Join([]string{f.Site, f.Hole, f.What, words.Figure(f.Value)}, "/"))
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}

func TestCheckStaysOnThePage(t *testing.T) {
	long := outputtest.SomeFindings()
	for i := range long {
		long[i].Site, long[i].Hole, long[i].What = strings.Repeat("S", 60), strings.Repeat("H", 60), strings.Repeat("word ", 40)
	}
	printout := printed(t, func(w io.Writer) error { return text.Check(w, outputtest.SomePlan(), long, text.Detail{All: true}) })
	for line := range strings.Lines(printout) {
		if n := words.Displayed(strings.TrimSuffix(line, "\n")); n > text.PageWidth {
			t.Errorf("%d columns: %s", n, line)
		}
	}
}

func TestEachStopIsToldOnALineWithItsFigures(t *testing.T) {
	want := []string{"■ site SB-01: hole B: target within the approved depth (380 mbsf, at most 350 mbsf)"}
	if got := text.Stops(outputtest.SomeFindings()); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestCheckJSONKeepsItsPromise(t *testing.T) {
	text := printed(t, func(w io.Writer) error { return jsonout.Check(w, outputtest.SomePlan(), outputtest.SomeFindings()) })
	var got struct {
		Schema, Scenario, Verdict string
		Items                     []map[string]any
		Cautions                  []string
	}
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatal(err)
	}
	if got.Schema != "coredays.check/1" || got.Scenario != "Invented" || got.Verdict != "stop" || len(got.Items) != 6 || len(got.Cautions) == 0 {
		t.Errorf("%+v", got)
	}
	for _, key := range []string{"site", "hole", "what", "verdict", "value", "limit", "unit", "source"} {
		if _, there := got.Items[0][key]; !there {
			t.Errorf("no %s", key)
		}
	}
	if got.Items[1]["value"] != nil || got.Items[0]["limit"] != 350.0 {
		t.Errorf("%+v", got.Items[:2])
	}
}

func TestGasAndHydrogenSulphideAreNeverLeftOut(t *testing.T) {
	text := printed(t, func(w io.Writer) error { return text.Check(w, &plan.Plan{}, nil, text.Detail{All: true}) })
	for _, word := range []string{"Gas is monitored", "H2S", "severed", "Marine mammals", "not a clearance", "ice"} {
		if !strings.Contains(text, word) {
			t.Errorf("nothing of %q", word)
		}
	}
}
