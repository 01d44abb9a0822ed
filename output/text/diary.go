package text

import (
	"fmt"
	"io"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/words"
)

// Widths of the columns of words in a diary, so that a line with its numbers stays on the page.
const (
	whatWidth  = 22
	placeWidth = 14
	noteWidth  = 21
)

// Diary prints one simulated expedition: why it took so long, then day by day, or hour by hour.
func Diary(w io.Writer, d *result.Diary, hours bool) error {
	p := On(w)
	p.diaryTitle(d)
	if len(d.Entries) > 0 {
		if err := p.whyLong(d); err != nil {
			return err
		}
		section := p.days
		if hours {
			section = p.hours
		}
		if err := section(d); err != nil {
			return err
		}
	}
	if !hours {
		p.Heading("Hour by hour with --hours; --csv FILE writes it as a log")
	}
	return p.To(w)
}

// hours prints a diary hour by hour.
func (p *Printer) hours(d *result.Diary) error {
	p.Heading("Hour by hour")
	p.Say("Depth: of bit or core below the sea floor, negative above it. Hs: significant wave height.")
	p.WriteByte('\n')
	cols := []Column{WordColumn("from (UTC)", 12), NumberColumn("hours"), WordColumn("what", whatWidth), WordColumn("where", placeWidth),
		NumberColumn("depth\n(mbsf)"), NumberColumn("Hs\n(m)"), WordColumn("note", noteWidth)}
	var rows [][]string
	for i := range d.Entries {
		rows = append(rows, diaryRow(&d.Entries[i]))
	}
	return p.Table(cols, rows)
}

// diaryTitle says which expedition this is.
func (p *Printer) diaryTitle(d *result.Diary) {
	p.Paragraph("", Indent, fmt.Sprintf("Diary of one simulated expedition: %s", words.OrElse(d.Title, "unnamed scenario")))
	which := fmt.Sprintf("Replication %d of seed %d", d.Replication, d.Seed)
	if d.Why != "" {
		which += ": " + d.Why
	}
	p.Paragraph("", Indent, which)
	p.Paragraph("", Indent, underRules(d.Bound))
	p.Paragraph("", Indent, begins(d)+words.Figures(d.Days.Days())+" d from leaving port to the end")
	for _, w := range d.Warnings {
		p.Paragraph("", Indent, w)
	}
}

func underRules(bound bool) string {
	if bound {
		return "Under the rules of the expedition and within its days"
	}
	return "The whole programme, no deadline"
}

func begins(d *result.Diary) string {
	if len(d.Entries) == 0 {
		return ""
	}
	return "Begins " + words.Moment(d.Entries[0].From) + "; "
}

// diaryRow is one line. At sea between sites and in port there is no depth below the sea floor.
func diaryRow(e *result.Entry) []string {
	hours := unit.Duration(e.To.Sub(e.From).Seconds()).Hours()
	depth := ""
	if HasDepth(e) {
		depth = words.Fixed(float64(e.Depth), 1)
	}
	return []string{e.From.UTC().Format("02 Jan 15:04"), words.Fixed(hours, hoursPlaces(hours)), e.Kind.String(), e.Place.String(), depth,
		words.Fixed(float64(e.Waves), 1), e.Note}
}

// hoursPlaces describes a core to the minute and a passage to six of them.
func hoursPlaces(hours float64) int {
	if hours < 10 {
		return 2
	}
	return 1
}

// HasDepth reports whether the depth of an entry means anything.
func HasDepth(e *result.Entry) bool {
	class := e.Kind.Of().Class
	return class != activity.Sailing && class != activity.Port && words.Defined(float64(e.Depth))
}
