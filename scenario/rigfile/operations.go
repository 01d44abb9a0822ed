package rigfile

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"coredays/model/activity"
	"coredays/model/riglog"
	"coredays/model/unit"
)

// tolerated is by how much two lines may overlap or lie apart without a note: logs are kept to a few minutes.
const tolerated = 3 * time.Minute

// operations reads the lines of an operations log.
func (c *clerk) operations(words *Words) (lines []riglog.Line) {
	for i := range c.rows {
		c.row, c.wrong = c.rows[i], false
		line := riglog.Line{File: c.file, Row: c.row.Number, What: c.text("what"), Note: c.text("note")}
		line.Doing, line.Mapped = words.meaning(line.What)
		c.times(&line, i)
		line.Site, line.Hole = c.siteHole()
		c.depths(&line)
		if line.What == "" && !c.wrong {
			c.lose("it does not say what was done", "write what was done")
		}
		if !c.wrong {
			lines = append(lines, line)
		}
	}
	slices.SortStableFunc(lines, func(a, b riglog.Line) int { return a.From.Compare(b.From) })
	c.apart(lines)
	return joined(lines)
}

// times reads when a line began and ended: the end by its own column, by the hours, or by the next line.
func (c *clerk) times(line *riglog.Line, at int) {
	from, why := c.moment("from")
	if why != "" {
		c.lose(fmt.Sprintf("from %q %s", c.text("from"), why), "write a time such as 2027-03-18T03:00")
		return
	}
	line.From = from
	to, why := c.moment("to")
	switch {
	case c.text("to") != "" && why != "":
		c.lose(fmt.Sprintf("to %q %s", c.text("to"), why), "write a time such as 2027-03-18T03:00")
		return
	case c.text("to") == "" && c.text("hours") != "":
		hours := c.number("hours", 0, longestLine)
		if unknown(hours) {
			return
		}
		to = from.Add(time.Duration(hours * float64(time.Hour)))
	case c.text("to") == "" && at+1 < len(c.rows):
		here := c.row
		c.row = c.rows[at+1]
		to, why = c.moment("from")
		c.row = here
		if why != "" {
			c.lose("it has no end, and the next line no beginning", "write when it ended")
			return
		}
	case c.text("to") == "":
		c.lose("the last line has no end", "write when it ended")
		return
	}
	if day := to.Add(24 * time.Hour); to.Before(from) && day.After(from) {
		c.note(fmt.Sprintf("to %q is before from %q: midnight lies between", c.text("to"), c.text("from")), "write the date of the next day; it is read so")
		to = day
	}
	if !to.After(from) {
		c.lose(fmt.Sprintf("from %s to %s is no time", from.Format(minutes), to.Format(minutes)), "put one of the two right")
		return
	}
	if to.Sub(from).Hours() > longestLine {
		c.lose(fmt.Sprintf("it lasts %.0f days", to.Sub(from).Hours()/24), "put from or to right")
		return
	}
	line.To = to
}

const minutes = "2006-01-02T15:04"

// depths reads how deep the hole and the bit were.
func (c *clerk) depths(line *riglog.Line) {
	depth := c.number("depth", 0, deepest)
	if unknown(depth) && c.text("depth_rig_floor") != "" {
		c.note("the depth is below the rig floor", "give depth_mbsf; it is not used")
	}
	line.Depth = unit.Depth(depth)
	line.BitFrom, line.BitTo = unit.Length(c.number("bit_from", 0, deepest)), unit.Length(c.number("bit_to", 0, deepest))
	line.Stands = c.number("stands", 0, mostStands)
}

// apart notes where lines overlap and where time is missing.
func (c *clerk) apart(lines []riglog.Line) {
	for i := 1; i < len(lines); i++ {
		before, l := &lines[i-1], &lines[i]
		c.row.Number = l.Row
		switch gap := l.From.Sub(before.To); {
		case l.From.Equal(before.From) && l.To.Equal(before.To) && l.What == before.What:
			c.note(fmt.Sprintf("it is line %d again", before.Row), "take one of them out; it is counted once")
		case gap > tolerated:
			c.note(fmt.Sprintf("%s h are missing after line %d, which ends at %s", figures(gap.Hours()), before.Row, before.To.Format(minutes)), "add what was done; the hours count as a gap")
		case gap < -tolerated:
			c.note(fmt.Sprintf("it begins %s h before line %d ends, at %s", figures(-gap.Hours()), before.Row, before.To.Format(minutes)), "put one of the two right; the hours are counted once")
		}
	}
}

func figures(hours float64) string { return strings.TrimSuffix(fmt.Sprintf("%.2f", hours), ".00") }

// joined puts lines together that go on with the same: those divided at midnight, and those that are the same line
// again. What was divided by weather or trouble stays apart here; who learns rates puts it together.
func joined(lines []riglog.Line) (out []riglog.Line) {
	for _, l := range lines {
		if n := len(out) - 1; n >= 0 {
			p := &out[n]
			if l.From.Equal(p.From) && l.To.Equal(p.To) && l.What == p.What {
				continue
			}
			midnight := l.From.Equal(p.To) && l.From.Equal(l.From.Truncate(24*time.Hour))
			if midnight && l.What == p.What && l.Site == p.Site && l.Hole == p.Hole && l.Mapped && !each(l.Doing) {
				p.To, p.BitTo = l.To, either(l.BitTo, p.BitTo)
				p.Stands = sum(p.Stands, l.Stands)
				continue
			}
		}
		out = append(out, l)
	}
	return out
}

// each tells whether activities are done for each core or joint: two of them in a row are two.
func each(doing []activity.Kind) bool {
	return len(doing) != 1 || doing[0] == activity.Connection
}

func either(a, b unit.Length) unit.Length {
	if math.IsNaN(float64(a)) {
		return b
	}
	return a
}

// sum adds numbers of which either may not be stated.
func sum(a, b float64) float64 {
	switch {
	case unknown(a):
		return b
	case unknown(b):
		return a
	}
	return a + b
}

// logColumns are the columns of an operations log that are read, and what else a log may have that says nothing of a rate.
var logColumns = []string{"from", "to", "hours", "what", "site", "hole", "depth", "depth_rig_floor", "bit_from", "bit_to", "stands", "note",
	"leg", "program", "date", "day", "no", "number", "line", "code", "class", "kind"}

// unread notes the columns of an operations log that nobody reads: a log whose pipe depths go by an unknown name would
// lose all its trips in silence.
func (c *clerk) unread() {
	var titles []string
	for name, col := range c.column {
		if !slices.Contains(logColumns, name) {
			titles = append(titles, strconv.Quote(col.title))
		}
	}
	if len(titles) == 0 {
		return
	}
	slices.Sort(titles)
	*c.notes = append(*c.notes, riglog.Note{File: c.file, Row: c.headed, Why: "columns that are not read: " + strings.Join(titles, ", "),
		Cure: "if they have the depths of the bit, name them bit_from_m and bit_to_m; a count of stands, stands"})
}
