package words

import (
	"strconv"
	"time"
)

func YesNo(yes bool) string {
	if yes {
		return "yes"
	}
	return "no"
}

// Exact is a cell for programs: numbers with all their digits, moments as RFC 3339 has them, nothing
// where there is no figure.
func Exact(cell any) string {
	switch value := cell.(type) {
	case string:
		return value
	case bool:
		return strconv.FormatBool(value)
	case time.Time:
		return value.Format(time.RFC3339)
	case float64:
		if Defined(value) {
			return strconv.FormatFloat(value+0, 'g', -1, 64)
		}
	}
	return ""
}
