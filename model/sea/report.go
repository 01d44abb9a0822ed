package sea

import (
	"fmt"
	"time"

	"coredays/model/plaintext"
	"coredays/model/unit"
)

// Trouble is a kind of bad reading in a record.
type Trouble int

// The kinds. A reading has one of them or none.
const (
	BadTime Trouble = iota
	BadNumber
	FillCode
	Impossible
	Unordered
	Duplicate
	Frozen
	Overfull
	Torn
	Troubles
)

var troubleWords = [Troubles]string{
	"have a time that can't be read and are left out",
	"have a height that is no number and are left out",
	"hold a fill code or nothing and count as gaps",
	"have a height below 0 or above 25 m and are left out",
	"come before the row above them in time and are put in order",
	"repeat the time of another and are left out (the first is kept)",
	"are frozen, the same height for a day and more, and are left out",
	"have more cells than there are headings and are left out (has a number a decimal comma, where commas divide the columns?)",
	"run on over the end of their line and are left out (a quotation mark has no second)",
}

// Report says what was found in a record and what was made of it.
type Report struct {
	Rows     int // with the bad ones
	Interval unit.Duration
	From, To time.Time
	Found    [Troubles]Finding
	Hours    int // hours with a height
	Gaps     int
	Longest  Gap
	Issued   []string         // how headings were understood
	looks    [Troubles]string // like what the first cell of a kind looked that could not be read
}

// Finding is how often a trouble was met, and on which line of the file first.
type Finding struct{ Rows, FirstLine int }

// Gap is a time without heights.
type Gap struct {
	From  time.Time
	Hours int
}

// note counts a bad row.
func (r *Report) note(t Trouble, line int) {
	f := &r.Found[t]
	f.Rows++
	if f.FirstLine == 0 || line < f.FirstLine {
		f.FirstLine = line
	}
}

// noteLooks keeps what the first cell looked like that could not be read.
func (r *Report) noteLooks(t Trouble, c *columns, fields []string) {
	switch {
	case r.looks[t] != "":
	case t == BadTime && c.time >= 0:
		r.looks[t] = "the first is " + plaintext.LikeTime(c.writtenTime(fields)) + "; write times in UTC as 2012-01-31T06:00"
	case t == BadTime:
		r.looks[t] = "year, month, day and hour are wanted as whole numbers"
	case t == BadNumber:
		r.looks[t] = "the first is " + likeQuantity(field(fields, c.height))
	}
}

// explaining adds to an error what was wrong with most of the rows left out, if with any.
func (r *Report) explaining(err error) error {
	worst := BadTime
	for t := range r.Found {
		if r.Found[t].Rows > r.Found[worst].Rows {
			worst = Trouble(t)
		}
	}
	f := r.Found[worst]
	if f.Rows == 0 {
		return err
	}
	why := fmt.Sprintf("%v; %s (first on line %d) %s", err, counted(f.Rows, "row"), f.FirstLine, troubleWords[worst])
	if r.looks[worst] != "" {
		why += ": " + r.looks[worst]
	}
	return &Misread{f.FirstLine, why}
}

// Covered is the share of the hours between first and last that have a height.
func (r *Report) Covered() float64 {
	return float64(r.Hours) / (r.To.Sub(r.From).Hours() + 1)
}

// Sentences are what a user should know of the record, the coverage first.
func (r *Report) Sentences() []string {
	list := []string{fmt.Sprintf("record from %s to %s, a reading every %.3g h, heights on %.0f %% of the hours",
		date(r.From), date(r.To), r.Interval.Hours(), 100*r.Covered())}
	list = append(list, r.Issued...)
	if r.Gaps > 0 {
		list = append(list, fmt.Sprintf("%s, the longest of %.3g days from %s", counted(r.Gaps, "gap"), float64(r.Longest.Hours)/24, date(r.Longest.From)))
	}
	for t, f := range r.Found {
		if f.Rows > 0 {
			list = append(list, fmt.Sprintf("%s (first on line %d) %s", counted(f.Rows, "row"), f.FirstLine, troubleWords[t]))
		}
	}
	return list
}

func date(t time.Time) string { return t.Format("2006-01-02") }

func counted(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}
