// Package dates reads the dates of alternatives: a list of them, or a range with a step.
package dates

import (
	"errors"
	"fmt"
	"strings"
	"time"

	"coredays/model/unit"
	"coredays/scenario/entry"
)

// longestStep between two dates is ten years.
const longestStep = 3650 * float64(unit.Day)

// Wanted says how dates are given.
const Wanted = "give dates, such as 2027-01-14,2027-02-01, or first..last/step, such as 2027-01-14..2027-06-14/14d"

// ErrTooMany says that there are more dates than are taken.
var ErrTooMany = errors.New("too many dates")

// tooMany is that with how many are taken.
type tooMany int

func (t tooMany) Error() string        { return fmt.Sprintf("at most %d dates", int(t)) }
func (t tooMany) Is(target error) bool { return target == ErrTooMany }

// Of reads a list of dates or a range with a step, at most so many. A date without a time has that of the
// plan, which sails at a moment.
func Of(text string, sails time.Time, most int) ([]time.Time, error) {
	dates, err := datesOf(text, sails, most)
	switch {
	case err != nil:
		return nil, fmt.Errorf("%w; %s", err, Wanted)
	case len(dates) > most:
		return nil, tooMany(most)
	}
	for i, at := range dates {
		if !entry.Plausible(at) {
			return nil, fmt.Errorf("%s: give dates from %d to %d", at.Format(time.DateOnly), entry.FirstYear, entry.LastYear)
		}
		for _, other := range dates[:i] {
			if at.Equal(other) {
				return nil, fmt.Errorf("%s stands there twice", at.Format(time.RFC3339))
			}
		}
	}
	return dates, nil
}

func datesOf(text string, sails time.Time, most int) (dates []time.Time, err error) {
	if from, rest, isRange := strings.Cut(text, ".."); isRange {
		return dateRange(from, rest, sails, most)
	}
	for word := range strings.SplitSeq(text, ",") {
		at, err := parseDate(word, sails)
		if err != nil {
			return nil, err
		}
		dates = append(dates, at)
	}
	return dates, nil
}

// dateRange goes from a date to another in steps.
func dateRange(from, rest string, sails time.Time, most int) (dates []time.Time, err error) {
	to, step, stepped := strings.Cut(rest, "/")
	if !stepped {
		return nil, fmt.Errorf("a range has a step after /")
	}
	first, err := parseDate(from, sails)
	if err != nil {
		return nil, err
	}
	last, err := parseDate(to, sails)
	if err != nil {
		return nil, err
	}
	every, err := unit.OfDuration.Parse(step)
	if err != nil || !(every >= float64(unit.Hour) && every <= longestStep) {
		return nil, fmt.Errorf("the step %q is no time from an hour to %s", step, unit.Duration(longestStep).Tell())
	}
	for at := first; !at.After(last) && len(dates) <= most; at = at.Add(time.Duration(every * float64(time.Second))) {
		dates = append(dates, at)
	}
	return dates, nil
}

// parseDate reads a date, or a date with time and zone.
func parseDate(text string, sails time.Time) (time.Time, error) {
	text = strings.TrimSpace(text)
	if at, err := time.Parse(time.DateOnly, text); err == nil {
		sails = sails.UTC()
		return at.Add(sails.Sub(time.Date(sails.Year(), sails.Month(), sails.Day(), 0, 0, 0, 0, time.UTC))), nil
	}
	for _, layout := range []string{"2006-01-02T15:04Z07:00", time.RFC3339} {
		if at, err := time.Parse(layout, text); err == nil {
			return at.UTC(), nil
		}
	}
	return time.Time{}, fmt.Errorf("%q is no date", text)
}
