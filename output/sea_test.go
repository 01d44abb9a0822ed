package output

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"strings"
	"testing"
	"time"

	"coredays/model/sea"
	"coredays/model/unit"
)

// oneClimate is the sea of an invented climate with limits of work.
func oneClimate(t *testing.T) *sea.Study {
	t.Helper()
	var c sea.Climate
	for m := range c.Mean {
		c.Mean[m], c.Variation[m] = unit.Length(2.4+0.9*math.Cos(2*math.Pi*float64(m)/12)), 0.4
	}
	table, err := sea.NewTable(c)
	if err != nil {
		t.Fatal(err)
	}
	return sea.Question{Place: "SITE-1", Source: "invented", Notes: []string{"nobody was there"}, Table: table, Years: 20, Seed: 3,
		Course: sea.ByProcess(sea.NewProcess(sea.LongMemory, sea.ShortMemory, unit.Hour)),
		Limits: []sea.Limit{{Name: "pipe handling", Most: 4.88}, {Name: "piston coring", Most: 4}}, Coring: 1}.Study(t.Context())
}

// oneRecord is the sea of an invented record of two years, without limits.
func oneRecord(t *testing.T) *sea.Study {
	t.Helper()
	var text bytes.Buffer
	text.WriteString("time,hs\n")
	for i := range 2 * 8766 {
		x := float64(i)
		hs := 2 + 0.5*math.Cos(2*math.Pi*x/8766) + 0.7*math.Sin(x/37) + 0.5*math.Sin(x/53+2)
		fmt.Fprintf(&text, "%s,%.2f\n", time.Date(2011, 1, 1, i, 0, 0, 0, time.UTC).Format("2006-01-02T15:04Z"), hs)
	}
	r, err := sea.ReadRecord(&text)
	if err != nil {
		t.Fatal(err)
	}
	l, err := sea.NewLikeness(r, "invented")
	if err != nil {
		t.Fatal(err)
	}
	return sea.Question{Place: "buoy.csv", Source: "an invented record", Notes: l.Notes, Course: l.Course, Table: l.Table, Likeness: l, Years: 10, Seed: 3, Coring: -1}.Study(t.Context())
}

func TestTheSeaIsPrintedAsInTheGoldenFile(t *testing.T) {
	got := printed(t, func(w io.Writer) error { return Sea(w, []*sea.Study{oneClimate(t), oneRecord(t)}) })
	matchGolden(t, "sea.txt", got)
	for line := range strings.Lines(got) {
		if displayed(strings.TrimSuffix(line, "\n")) > pageWidth {
			t.Errorf("too wide: %q", line)
		}
	}
}

func TestTheSeaAsJSONKeepsItsPromise(t *testing.T) {
	climate, record := oneClimate(t), oneRecord(t)
	var got struct {
		Schema, Source, Basis string
		Months                []map[string]any
		Thresholds            []map[string]any
		Sites                 []struct {
			Site, Basis string
			Thresholds  []map[string]any
		}
	}
	text := printed(t, func(w io.Writer) error { return SeaJSON(w, []*sea.Study{climate, record}) })
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatal(err)
	}
	if got.Schema != seaSchema || got.Source != "invented" || got.Basis != "climate" || len(got.Months) != 12 || len(got.Sites) != 2 || got.Sites[1].Basis != "record" {
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
