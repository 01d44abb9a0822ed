package rigfile

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"time"

	"coredays/model/plaintext"
	"coredays/model/riglog"
	"coredays/scenario/spreadsheet"
)

// clerk reads the rows of a table and notes what is wrong.
type clerk struct {
	*table
	row   spreadsheet.Row
	notes *[]riglog.Note
	zone  *time.Location // of the times that state none
	wrong bool           // with the row in hand: it is left out
}

// note adds something worth a second look.
func (c *clerk) note(why, cure string) {
	*c.notes = append(*c.notes, riglog.Note{File: c.file, Row: c.row.Number, Why: why, Cure: cure})
}

// lose leaves the row in hand out.
func (c *clerk) lose(why, cure string) {
	c.wrong = true
	*c.notes = append(*c.notes, riglog.Note{File: c.file, Row: c.row.Number, Why: why, Cure: cure, Lost: true})
}

// text is what a cell says; nothing where there is no such column.
func (c *clerk) text(name string) string {
	col, has := c.column[name]
	if !has || col.at >= len(c.row.Cells) {
		return ""
	}
	return c.row.Cells[col.at]
}

// number is that of a cell, not a number where it is empty. A comma may stand before the decimals where commas do
// not divide the columns.
func (c *clerk) number(name string, least, most float64) float64 {
	text := c.text(name)
	if text == "" {
		return math.NaN()
	}
	title := c.column[name].title
	figures := strings.TrimSpace(strings.TrimRight(text, " mMhH"))
	if strings.Count(figures, ",") == 1 && !strings.Contains(figures, ".") {
		if c.CommaDivides && len(figures) > 0 {
			c.lose(fmt.Sprintf("%s %q: a comma before the decimals in a table that commas divide", title, text), "write a point, or divide the columns by semicolons")
			return math.NaN()
		}
		figures = strings.Replace(figures, ",", ".", 1)
	}
	x, err := strconv.ParseFloat(figures, 64)
	if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
		c.lose(fmt.Sprintf("%s %q is no number", title, text), "write a number, or leave the cell empty")
		return math.NaN()
	}
	if c.column[name].unit == "ft" {
		x *= 0.3048 // exact, international foot of 1959
	}
	if x < least || x > most {
		c.lose(fmt.Sprintf("%s %q is not from %g to %g", title, text, least, most), "put the number right, or leave the cell empty")
		return math.NaN()
	}
	return x
}

// forms are those of a time that nobody can read two ways.
var forms = []string{"2006-01-02T15:04:05", "2006-01-02 15:04:05", "2006-01-02T15:04", "2006-01-02 15:04", "2006/01/02 15:04", "2006/01/02 15:04:05",
	"2 Jan 2006 15:04", "2 Jan 2006 15:04:05", "02-Jan-2006 15:04", "2-Jan-2006 15:04", "2006-01-02T15:04:05.999", "2006-01-02 1504", "2 January 2006 15:04"}

// endOfDay is a time of day of 24:00.
var endOfDay = regexp.MustCompile(`([ T])24:?00(:00)?$`)

var zoned = []string{time.RFC3339, "2006-01-02T15:04Z07:00", "2006-01-02 15:04Z07:00", "2006-01-02 15:04 Z07:00", "2006-01-02 15:04:05 Z07:00", "2006-01-02 15:04 -0700"}

// moment is the time of a cell; the zero time where it can't be read, with the reason why.
func (c *clerk) moment(name string) (at time.Time, why string) {
	if at, why = c.anyMoment(name); why == "" && (at.Before(earliest) || at.After(latest)) {
		return time.Time{}, fmt.Sprintf("is not from %d to %d", earliest.Year(), latest.Year())
	}
	return at, why
}

// Scientific coring began in 1961 [from memory], and no log is of the next century.
var earliest, latest = time.Date(1961, 1, 1, 0, 0, 0, 0, time.UTC), time.Date(2100, 1, 1, 0, 0, 0, 0, time.UTC)

// anyMoment is a time of any year.
func (c *clerk) anyMoment(name string) (at time.Time, why string) {
	text := c.text(name)
	if text == "" {
		return time.Time{}, "is empty"
	}
	for _, form := range zoned {
		if at, err := time.Parse(form, text); err == nil {
			return at.UTC(), ""
		}
	}
	midnight := endOfDay.MatchString(text)
	if midnight { // the end of a day is the beginning of the next
		text = endOfDay.ReplaceAllString(text, "${1}00:00")
	}
	for _, form := range forms {
		if at, err := time.ParseInLocation(form, text, c.zone); err == nil {
			if midnight {
				at = at.AddDate(0, 0, 1)
			}
			return at.UTC(), ""
		}
	}
	return time.Time{}, "is " + plaintext.LikeTime(text)
}
