package output

import (
	"strconv"
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

func yesNo(yes bool) string {
	if yes {
		return "yes"
	}
	return "no"
}

// exact is a cell for programs: numbers with all their digits, moments as RFC 3339 has them, nothing
// where there is no figure.
func exact(cell any) string {
	switch value := cell.(type) {
	case string:
		return value
	case bool:
		return strconv.FormatBool(value)
	case time.Time:
		return value.Format(time.RFC3339)
	case float64:
		if defined(value) {
			return strconv.FormatFloat(value+0, 'g', -1, 64)
		}
	}
	return ""
}
