package output_test

import (
	"encoding/json"
	"io"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/geojson"

	"coredays/model/plan"
	"coredays/model/result"
	jsonout "coredays/output/json"
	"coredays/output/outputtest"
	"coredays/output/text"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

func TestComparisonsArePrintedAsBefore(t *testing.T) {
	for name, c := range outputtest.Comparisons {
		matchGolden(t, "compare_"+name+".txt", printed(t, func(w io.Writer) error { return alternatives.Print(w, c()) }))
	}
}

func TestComparisonsFitThePage(t *testing.T) {
	for name, make := range outputtest.Comparisons {
		c := make()
		for i := range c.Alternatives {
			c.Alternatives[i].Name = strings.Repeat("a-long-name/", 6) + c.Alternatives[i].Name
		}
		for line := range strings.Lines(printed(t, func(w io.Writer) error { return alternatives.Print(w, c) })) {
			if width := words.Displayed(strings.TrimRight(line, "\n")); width > text.PageWidth {
				t.Errorf("%s: %d columns: %s", name, width, line)
			}
		}
	}
}

func TestComparisonJSONHasThePromisedKeys(t *testing.T) {
	text := printed(t, func(w io.Writer) error { return jsonout.Comparison(w, outputtest.TwoPlans()) })
	var got map[string]any
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{"alternatives.name", "alternatives.order", "alternatives.days_needed.mean", "alternatives.days_needed.p90_ci", "alternatives.chance_all",
		"alternatives.chance_primary", "alternatives.recovered_m", "differences.a", "differences.b", "differences.mean_days", "differences.ci",
		"differences.share_a_shorter", "best", "not_distinguishable", "confidence"} {
		at(t, got, path)
	}
	if got["best"] != "a.yaml" || got["not_distinguishable"].([]any)[0] != "the b.yaml" || at(t, got, "differences.mean_days").(float64) > -0.299 {
		t.Errorf("%v, %v", got["best"], got["not_distinguishable"])
	}
}

func TestEveryComparisonIsValidJSON(t *testing.T) {
	for name, c := range outputtest.Comparisons {
		text := printed(t, func(w io.Writer) error { return jsonout.Comparison(w, c()) })
		if !json.Valid([]byte(text)) || strings.Contains(text, "NaN") || strings.Contains(text, "Inf") {
			t.Errorf("%s: %s", name, text)
		}
	}
}

func TestTracksAreCutAtTheDateLine(t *testing.T) {
	text := printed(t, func(w io.Writer) error { return jsonout.Tracks(w, outputtest.ThreeOrders()) })
	collection, err := geojson.UnmarshalFeatureCollection([]byte(text))
	if err != nil {
		t.Fatal(err)
	}
	if n := len(collection.Features); n != 3+3 { // port and sites once, and a track for each order
		t.Fatalf("%d features", n)
	}
	track, ok := collection.Features[3].Geometry.(orb.MultiLineString)
	if !ok || len(track) != 3 {
		t.Fatalf("the track out and back over the date line is %T of %d lines", collection.Features[3].Geometry, len(track))
	}
	for _, line := range track {
		for i := 1; i < len(line); i++ {
			if jump := line[i].Lon() - line[i-1].Lon(); jump > 20 || jump < -20 {
				t.Errorf("a line jumps from %v to %v", line[i-1], line[i])
			}
		}
	}
	if out, in := track[0][len(track[0])-1], track[1][0]; out.Lon() != 180 || in.Lon() != -180 || out.Lat() != in.Lat() || out.Lat() > -42 || out.Lat() < -43.5 {
		t.Errorf("it is cut at %v and %v", out, in)
	}
}

func TestDateIsThatOfTheDayInUTC(t *testing.T) {
	if got := words.Date(time.Date(2027, 1, 14, 23, 0, 0, 0, time.FixedZone("", -2*3600))); got != "15 Jan 2027" {
		t.Error(got)
	}
}

// A hole that costs the least core for each day, and takes a point from what ranks first, helps nobody; a task that
// brings fourteen points for no core does.
func TestWhatHelpsRankOneMostForItsCoreComesFirst(t *testing.T) {
	c := outputtest.FourCuts()
	c.Alternatives[0].Summary.Allotted.ChancePrimary = 0.74
	cut := func(kind plan.Kind, what string, first, low, high, metres, days float64) result.Cut {
		s := *c.Alternatives[0].Summary
		s.Allotted.ChancePrimary = first
		return result.Cut{Cut: plan.Cut{Kind: kind, Site: "TR-01", What: what}, Alternative: &s, First: result.Interval{Mean: first - 0.74, Low: low, High: high},
			Metres: result.Interval{Mean: metres}, Saves: outputtest.SpreadInDays(400, days, days, days, days, 0)}
	}
	c.Cuts = []result.Cut{
		cut(plan.WholeHole, "cheap", 0.73, -0.03, 0.01, 30, 4.2),
		cut(plan.WholeHole, "dear", 0.90, 0.12, 0.20, 160, 4),
		cut(plan.Measurement, "A temperature", 0.745, -0.01, 0.02, 0, 0.1),
		cut(plan.WholeHole, "noise", 0.77, -0.01, 0.06, 10, 1),
		cut(plan.WholeTask, "set observatory", 0.88, 0.10, 0.18, 0, 3.5),
	}
	ranked, trifles := alternatives.Ranked(c)
	var names []string
	for _, cut := range ranked {
		names = append(names, cut.What)
	}
	if want := []string{"set observatory", "dear", "noise", "cheap"}; !slices.Equal(names, want) || len(trifles) != 1 || trifles[0].What != "A temperature" {
		t.Errorf("%q, and of no weight %d", names, len(trifles))
	}
	got := strings.Join(alternatives.BestCutSentences(c), " ")
	for _, want := range []string{"without TR-01 set observatory rank 1 gets done in 88 of 100 expeditions, 14 (10 to 18) points more; it saves 3.5 d and costs no core.", "Of the holes: without TR-01 dear"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in %q", want, got)
		}
	}
	c.Cuts = c.Cuts[:1]
	if got := alternatives.BestCutSentences(c); !slices.Equal(got, []string{"Leaving out no single thing helps what ranks first."}) {
		t.Error(got)
	}
}
