package output_test

import (
	"encoding/json"
	"fmt"
	"io"
	"math"
	"strings"
	"testing"
	"time"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/model/unit"
	jsonout "coredays/output/json"
	"coredays/output/text"
	"coredays/output/words"
)

// tern is a diary of a few entries.
func tern() *result.Diary {
	at := time.Date(2027, 1, 14, 8, 0, 0, 0, time.UTC)
	d := &result.Diary{Title: "Ridge of the Terns", Seed: 7, Replication: 311, Bound: true, Days: 47.9 * unit.Day,
		Why: "the replication nearest to P90 of days needed"}
	add := func(hours float64, k activity.Kind, place result.Place, depth unit.Depth, waves unit.Length, note string) {
		end := at.Add(time.Duration(hours * float64(time.Hour)))
		d.Entries = append(d.Entries, result.Entry{From: at, To: end, Kind: k, Place: place, Depth: depth, Note: note, Waves: waves})
		at = end
	}
	add(2, activity.Pilotage, result.Place{Way: "Port Aldous"}, 0, 0.4, "")
	add(163.25, activity.Passage, result.Place{Way: "Port Aldous to TR-01"}, 0, 3.21, "1690 nmi, slowed by waves")
	add(7.5, activity.RunPipe, result.Place{Site: "TR-01", Hole: "A"}, -12, 2.2, "")
	add(0.9166, activity.ShootPiston, result.Place{Site: "TR-01", Hole: "A"}, 66.5, 2.46, "core 7H, 9.5 m cut, 9.8 m up; temperature taken")
	add(31.4, activity.WaitOnWeather, result.Place{Site: "TR-01", Hole: "A"}, 66.5, 6.04, "waves above the limit of piston coring")
	add(0.004, activity.MudlineReset, result.Place{Site: "TR-01", Hole: "B"}, unit.Depth(math.NaN()), unit.Length(math.NaN()), "")
	return d
}

func TestDiaryIsThatOfTheGoldenFile(t *testing.T) {
	got := printed(t, func(w io.Writer) error { return text.Diary(w, tern(), true) })
	matchGolden(t, "diary.txt", got)
	for line := range strings.Lines(got) {
		if words.Displayed(line) > text.PageWidth {
			t.Errorf("%d columns: %q", words.Displayed(line), line)
		}
	}
}

func TestDiaryWithoutEntriesIsPrinted(t *testing.T) {
	got := printed(t, func(w io.Writer) error { return text.Diary(w, &result.Diary{}, false) })
	if !strings.Contains(got, "unnamed scenario") || strings.Contains(got, "Begins") {
		t.Errorf("got\n%s", got)
	}
}

func TestHoursOfADiaryInJSONAddUp(t *testing.T) {
	var got struct {
		Schema  string
		Bound   bool
		Days    float64
		Entries []struct {
			From, To time.Time
			Hours    float64
			Class    string
			Depth    *float64 `json:"depth_m"`
			Waves    *float64 `json:"hs_m"`
		}
	}
	raw := printed(t, func(w io.Writer) error { return jsonout.Diary(w, tern()) })
	if err := json.Unmarshal([]byte(raw), &got); err != nil {
		t.Fatal(err)
	}
	hours := 0.0
	for _, e := range got.Entries {
		hours += e.Hours
	}
	// 2 + 163.25 + 7.5 + 0.9166 + 31.4 + 0.004 h
	if want := 205.0706; math.Abs(hours-want) > 1e-6 || got.Schema != "coredays.diary/1" || !got.Bound || got.Days != 47.9 {
		t.Errorf("%.7f h of %g h in %+v", hours, want, got)
	}
	if got.Entries[1].Depth != nil || *got.Entries[2].Depth != -12 || got.Entries[5].Depth != nil || got.Entries[5].Waves != nil {
		t.Errorf("depths and waves are wrong in %s", raw)
	}
}

func TestALongDiaryIsPrintedWhole(t *testing.T) {
	d := tern()
	for len(d.Entries) < 7000 { // as many activities as an expedition of 56 days has
		d.Entries = append(d.Entries, d.Entries[3])
		d.Entries[len(d.Entries)-1].Note = fmt.Sprintf("core %d, 9.5 m cut, 9.8 m up", len(d.Entries))
	}
	got := printed(t, func(w io.Writer) error { return text.Diary(w, d, true) })
	if strings.Count(got, "\n") < 7000 {
		t.Errorf("%d lines", strings.Count(got, "\n"))
	}
}
