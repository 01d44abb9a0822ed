package riglog

import (
	"slices"
	"time"

	"coredays/model/activity"
)

// Day is where the hours of a calendar day (UTC) went. All but Twice add up to the hours between the first and the
// last line on that day.
type Day struct {
	Date     time.Time
	Work     float64 // h with a meaning
	Weather  float64 // h waiting on weather
	Trouble  float64 // h of repairs and trouble
	Unmapped float64 // h of words without a meaning
	Gap      float64 // h without a line
	Twice    float64 // h that two lines claim; they are counted once
}

// Hours is the sum of a day.
func (d *Day) Hours() float64 { return d.Work + d.Weather + d.Trouble + d.Unmapped + d.Gap }

// Balance says where the hours of each day went. Lines must be in the order of time.
func Balance(lines []Line) (days []Day) {
	index := map[time.Time]int{}
	add := func(from, to time.Time, where func(*Day) *float64) {
		for from.Before(to) {
			date := from.Truncate(24 * time.Hour)
			until := date.Add(24 * time.Hour)
			if to.Before(until) {
				until = to
			}
			i, known := index[date]
			if !known {
				i = len(days)
				index[date], days = i, append(days, Day{Date: date})
			}
			*where(&days[i]) += until.Sub(from).Hours()
			from = until
		}
	}
	var reached time.Time
	for i := range lines {
		l := &lines[i]
		from := l.From
		if i > 0 && from.After(reached) {
			add(reached, from, func(d *Day) *float64 { return &d.Gap })
		}
		if i > 0 && from.Before(reached) {
			end := reached
			if l.To.Before(end) {
				end = l.To
			}
			add(from, end, func(d *Day) *float64 { return &d.Twice })
			from = end
		}
		add(from, l.To, l.where())
		if l.To.After(reached) {
			reached = l.To
		}
	}
	slices.SortFunc(days, func(a, b Day) int { return a.Date.Compare(b.Date) })
	return days
}

// where is the account of a day on which a line's hours go.
func (l *Line) where() func(*Day) *float64 {
	switch {
	case !l.Mapped:
		return func(d *Day) *float64 { return &d.Unmapped }
	case l.is(activity.Waiting):
		return func(d *Day) *float64 { return &d.Weather }
	case l.is(activity.Repair):
		return func(d *Day) *float64 { return &d.Trouble }
	}
	return func(d *Day) *float64 { return &d.Work }
}

// is tells whether all that a line does is of one class.
func (l *Line) is(class activity.Class) bool {
	for _, k := range l.Doing {
		if k.Of().Class != class {
			return false
		}
	}
	return len(l.Doing) > 0
}

// Words are the words of a log that have no meaning, by their hours, most first.
type Words struct {
	What  string
	Lines int
	Hours float64
}

// Unmapped lists the words without a meaning.
func Unmapped(lines []Line) (list []Words) {
	index := map[string]int{}
	for i := range lines {
		l := &lines[i]
		if l.Mapped {
			continue
		}
		n, known := index[l.What]
		if !known {
			n = len(list)
			index[l.What], list = n, append(list, Words{What: l.What})
		}
		list[n].Lines++
		list[n].Hours += l.Hours()
	}
	slices.SortStableFunc(list, func(a, b Words) int {
		switch {
		case a.Hours > b.Hours:
			return -1
		case a.Hours < b.Hours:
			return 1
		}
		return 0
	})
	return list
}
