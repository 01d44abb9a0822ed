package json

import (
	"io"
	"math"
	"time"

	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/text"
)

// Diary writes one simulated expedition for programs: hours, metres, moments in UTC; null
// where there is no figure.
func Diary(w io.Writer, d *result.Diary) error {
	entries := []entryJSON{}
	for i := range d.Entries {
		entries = append(entries, entryOf(&d.Entries[i]))
	}
	return writeJSON(w, diaryJSON{"coredays.diary/1", d.Title, d.Seed, d.Replication, d.Bound, number(d.Days.Days()), d.Why, append([]string{}, d.Warnings...), entries})
}

type diaryJSON struct {
	Schema      string      `json:"schema"`
	Title       string      `json:"title"`
	Seed        uint64      `json:"seed"`
	Replication int         `json:"replication"`
	Bound       bool        `json:"bound"` // under the rules of the expedition; false: whole programme, no deadline
	Days        number      `json:"days"`
	Why         string      `json:"why"`
	Warnings    []string    `json:"warnings"`
	Entries     []entryJSON `json:"entries"`
}

type entryJSON struct {
	From  time.Time `json:"from"`
	To    time.Time `json:"to"`
	Hours number    `json:"hours"`
	What  string    `json:"what"`
	Class string    `json:"class"`
	Place string    `json:"place"`
	Site  string    `json:"site"`    // empty under way
	Hole  string    `json:"hole"`    // or task
	Depth number    `json:"depth_m"` // below the sea floor
	Waves number    `json:"hs_m"`
	Note  string    `json:"note"`
}

func entryOf(e *result.Entry) entryJSON {
	depth := float64(e.Depth)
	if !text.HasDepth(e) {
		depth = math.NaN()
	}
	return entryJSON{e.From.UTC(), e.To.UTC(), number(unit.Duration(e.To.Sub(e.From).Seconds()).Hours()),
		e.Kind.String(), e.Kind.Of().Class.Key(), e.Place.String(), e.Place.Site, e.Place.Hole, number(depth), number(e.Waves), e.Note}
}
