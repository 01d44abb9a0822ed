package output

import (
	"time"
)

// heads is the heading of a column for people, with its unit.
func (f *field) heads() string {
	if u := f.kind.unitForPeople(); u != "" {
		return f.heading + " (" + u + ")"
	}
	return f.heading
}

// shown is a cell for people.
func (s *sheet) shown(row, column int) string {
	switch value := s.rows[row][column].(type) {
	case string:
		return printable(value)
	case bool:
		return yesNo(value)
	case time.Time:
		return value.Format("2 Jan")
	case float64:
		return inWords(value, s.fields[column].kind, s.largest(column))
	}
	return absent
}

// inWords is a number for people; the largest of its column decides on the decimals.
func inWords(value float64, k kind, largest float64) string {
	switch k {
	case ofShare:
		return percent(value)
	case ofOrder:
		return orderable(value)
	case ofPoints:
		return signedFixed(100*value, places(100*largest))
	case ofNumber, ofNauticalMiles:
		return figure(value)
	case ofDays:
		return fixed(value, max(1, places(largest)))
	case ofCount:
		return fixed(value, 0)
	case ofMetres, ofPercent:
		if largest >= 10 {
			return fixed(value, 0)
		}
	}
	return fixed(value, places(largest))
}
