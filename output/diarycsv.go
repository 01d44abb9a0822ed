package output

import (
	"io"
	"math"

	"coredays/model/logbook"
)

// DiaryCSV writes one simulated expedition as a table, in the form in which a log is kept: a line for
// each activity with the site, the hole, and how deep that was when the activity began.
func DiaryCSV(w io.Writer, d *logbook.Diary) error { return diarySheet(d).csv(w) }

func diarySheet(d *logbook.Diary) *sheet {
	t := &sheet{name: "diary", fields: []field{{key: "from"}, {key: "to"}, {key: "what"}, {key: "site"}, {key: "hole"},
		{key: "depth_mbsf"}, {key: "bit_mbsf"}, {key: "hs_m"}, {key: "note"}}}
	for i := range d.Entries {
		e := &d.Entries[i]
		bit, note := math.NaN(), e.Note
		if hasDepth(e) {
			bit = float64(e.Depth)
		}
		if e.Place.Site == "" && note == "" {
			note = e.Place.Way
		}
		t.add(e.From.UTC(), e.To.UTC(), e.Kind.String(), e.Place.Site, e.Place.Hole, float64(e.Bottom), bit, float64(e.Waves), note)
	}
	return t
}
