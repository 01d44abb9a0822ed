package sheet

import (
	"time"

	"coredays/output/words"
)

// Heads is the heading of a column for people, with its unit.
func (f *Field) Heads() string {
	if u := f.Kind.unitForPeople(); u != "" {
		return f.Heading + " (" + u + ")"
	}
	return f.Heading
}

// Shown is a cell for people.
func (s *Table) Shown(row, column int) string {
	switch value := s.Rows[row][column].(type) {
	case string:
		return words.Printable(value)
	case bool:
		return words.YesNo(value)
	case time.Time:
		return value.Format("2 Jan")
	case float64:
		return inWords(value, s.Fields[column].Kind, s.largest(column))
	}
	return words.Absent
}

// inWords is a number for people; the largest of its column decides on the decimals.
func inWords(value float64, k Kind, largest float64) string {
	switch k {
	case ofShare:
		return words.Percent(value)
	case ofOrder:
		return words.Orderable(value)
	case ofPoints:
		return words.SignedFixed(100*value, words.Places(100*largest))
	case ofNumber:
		return words.Figure(value)
	case ofDays:
		return words.Fixed(value, words.DayPlaces)
	case ofCount, ofNauticalMiles:
		return words.Fixed(value, 0)
	case ofMetres, ofPercent:
		if largest >= 10 {
			return words.Fixed(value, 0)
		}
	}
	return words.Fixed(value, words.Places(largest))
}
