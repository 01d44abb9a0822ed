package sheet

import (
	"io"
	"math"

	"coredays/model/result"
	"coredays/output/text"
)

// Diary writes one simulated expedition as a table, in the form in which a log is kept: a line for
// each activity with the site, the hole, and how deep that was when the activity began.
func Diary(w io.Writer, d *result.Diary) error { return diarySheet(d).csv(w) }

func diarySheet(d *result.Diary) *Table {
	t := &Table{Name: "diary", Fields: []Field{{Key: "from"}, {Key: "to"}, {Key: "what"}, {Key: "site"}, {Key: "hole"},
		{Key: "depth_mbsf"}, {Key: "bit_mbsf"}, {Key: "hs_m"}, {Key: "note"}}}
	for i := range d.Entries {
		e := &d.Entries[i]
		bit, note := math.NaN(), e.Note
		if text.HasDepth(e) {
			bit = float64(e.Depth)
		}
		if e.Place.Site == "" && note == "" {
			note = e.Place.Way
		}
		t.Add(e.From.UTC(), e.To.UTC(), e.Kind.String(), e.Place.Site, e.Place.Hole, float64(e.Bottom), bit, float64(e.Waves), note)
	}
	return t
}
