package sea

import (
	"fmt"
	"time"

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
}

// Report tells what was found in a record and what was made of it.
type Report struct {
	Rows     int // with the bad ones
	Interval unit.Duration
	From, To time.Time
	Found    [Troubles]Finding
	Hours    int // hours with a height
	Gaps     int
	Longest  Gap
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

// Covered is the share of the hours between first and last that have a height.
func (r *Report) Covered() float64 {
	return float64(r.Hours) / (r.To.Sub(r.From).Hours() + 1)
}

// Sentences are what a user should know of the record, the coverage first.
func (r *Report) Sentences() []string {
	list := []string{fmt.Sprintf("record from %s to %s, a reading every %.3g h, heights on %.0f %% of the hours",
		date(r.From), date(r.To), r.Interval.Hours(), 100*r.Covered())}
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
