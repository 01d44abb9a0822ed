package output_test

import (
	"encoding/json"
	"io"
	"strings"
	"testing"
	"time"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/geojson"

	"coredays/model/result"
	jsonout "coredays/output/json"
	"coredays/output/outputtest"
	"coredays/output/text"
	"coredays/output/words"
)

func TestComparisonsArePrintedAsBefore(t *testing.T) {
	for name, c := range outputtest.Comparisons {
		matchGolden(t, "compare_"+name+".txt", printed(t, func(w io.Writer) error { return text.Comparison(w, c()) }))
	}
}

func TestComparisonsFitThePage(t *testing.T) {
	for name, make := range outputtest.Comparisons {
		c := make()
		for i := range c.Alternatives {
			c.Alternatives[i].Name = strings.Repeat("a-long-name/", 6) + c.Alternatives[i].Name
		}
		for line := range strings.Lines(printed(t, func(w io.Writer) error { return text.Comparison(w, c) })) {
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

func TestTheCheapestHoleThatSavesHalfADayIsNamed(t *testing.T) {
	c := outputtest.FourCuts()
	small, dear := c.Cuts[2], c.Cuts[2]
	small.Also, dear.Also = nil, nil
	small.What, small.Saves, small.Metres.Mean = "small", outputtest.SpreadInDays(400, 0.4, 0.3, 0.4, 0.5, 0.1), 1
	dear.What, dear.Metres.Mean = "dear", 900
	c.Cuts = append(c.Cuts, dear, small)
	sentence := strings.Join(text.CheapestSentence(c), "")
	if !strings.Contains(sentence, "TR-01 A (and C, which depends on it) costs the least") || !strings.Contains(sentence, "saves 2.9 d and costs 261 m of core") {
		t.Error(sentence)
	}
	c.Cuts = []result.Cut{small}
	if sentence := strings.Join(text.CheapestSentence(c), ""); sentence != "No hole by itself saves half a day." {
		t.Error(sentence)
	}
	c.Cuts = nil
	if sentence := text.CheapestSentence(c); sentence != nil {
		t.Error(sentence)
	}
}
