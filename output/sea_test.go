package output_test

import (
	"encoding/json"
	"io"
	"strings"
	"testing"

	"coredays/model/sea"
	jsonout "coredays/output/json"
	"coredays/output/outputtest"
	"coredays/output/text"
	"coredays/output/text/seastate"
	"coredays/output/words"
)

func TestTheSeaIsPrintedAsInTheGoldenFile(t *testing.T) {
	got := printed(t, func(w io.Writer) error {
		return seastate.Print(w, []*sea.Study{outputtest.OneClimate(t), outputtest.OneRecord(t)}, text.Detail{All: true})
	})
	matchGolden(t, "sea.txt", got)
	for line := range strings.Lines(got) {
		if words.Displayed(strings.TrimSuffix(line, "\n")) > text.PageWidth {
			t.Errorf("too wide: %q", line)
		}
	}
}

func TestTheSeaAsJSONKeepsItsPromise(t *testing.T) {
	climate, record := outputtest.OneClimate(t), outputtest.OneRecord(t)
	var got struct {
		Schema, Source, Basis string
		Months                []map[string]any
		Thresholds            []map[string]any
		Sites                 []struct {
			Site, Basis string
			Thresholds  []map[string]any
		}
	}
	text := printed(t, func(w io.Writer) error { return jsonout.Sea(w, []*sea.Study{climate, record}) })
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatal(err)
	}
	if got.Schema != jsonout.SeaSchema || got.Source != "invented" || got.Basis != "climate" || len(got.Months) != 12 || len(got.Sites) != 2 || got.Sites[1].Basis != "record" {
		t.Errorf("%s %s %s, %d months, %d sites", got.Schema, got.Source, got.Basis, len(got.Months), len(got.Sites))
	}
	for _, key := range []string{"month", "mean_hs_m", "sd_hs_m"} {
		if _, ok := got.Months[6][key].(float64); !ok {
			t.Errorf("July has %s %v", key, got.Months[6][key])
		}
	}
	seasons := map[string]int{}
	for _, row := range append(got.Thresholds, got.Sites[1].Thresholds...) {
		seasons[row["season"].(string)]++
		if h := row["hs_m"].(float64); h < 1 || h > 8 {
			t.Errorf("a threshold of %g m", h)
		}
		for _, key := range []string{"share_above", "mean_hours_above", "mean_hours_below", "wait_12h", "wait_24h", "wait_48h"} {
			for _, name := range []string{key, "generated_" + key} {
				if _, found := row[name]; !found {
					t.Errorf("%v m, %v: no %s", row["hs_m"], row["season"], name)
				}
			}
		}
	}
	for _, season := range []string{"all", "DJF", "MAM", "JJA", "SON"} {
		if seasons[season] == 0 {
			t.Errorf("no threshold of %s", season)
		}
	}
	two := record.Seasons.At(2, int(sea.DJF)) // the third height that occurs
	for _, row := range got.Sites[1].Thresholds {
		if row["hs_m"] == record.Heights[2] && row["season"] == "DJF" && row["share_above"] != two.ShareAbove() {
			t.Errorf("share above is %v, want %v", row["share_above"], two.ShareAbove())
		}
	}
}
