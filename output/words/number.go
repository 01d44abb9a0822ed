package words

import (
	"math"
	"strconv"
	"strings"

	"coredays/model/unit"
)

// Absent stands for a figure that does not exist.
const Absent = "–"

// Defined reports whether a value is a number that can be given.
func Defined(value float64) bool { return !math.IsNaN(value) && !math.IsInf(value, 0) }

// Figures writes a single number to three significant figures: "12.3", "0.0449", "1230".
func Figures(value float64) string {
	if !Defined(value) {
		return Absent
	}
	return withMinus(unit.OfCount.Tell(value, ""))
}

// withMinus has a minus sign where a number for programs has a hyphen: a hyphen is lost at the end of a line.
func withMinus(number string) string {
	if after, negative := strings.CutPrefix(number, "-"); negative {
		return "−" + after
	}
	return number
}

// Places is how many decimals a column needs so that its largest value has two or three significant
// figures; all values of the column keep them, so that the points stand below one another.
func Places(values ...float64) int {
	largest := 0.0
	for _, v := range values {
		if Defined(v) {
			largest = max(largest, math.Abs(v))
		}
	}
	switch {
	case largest >= 99.95: // what rounds to 100.0
		return 0
	case largest >= 0.995: // what rounds to 1.00
		return 1
	}
	return 2
}

// DayPlaces is how many decimals days have wherever people read them: a site of a day and an expedition of sixty are
// told to two and a half hours, and the same figure reads alike in text, page and chart.
const DayPlaces = 1

// Fixed writes a number with a fixed count of decimals: what is too small to show is "<0.1", and
// whole numbers from 1000 on keep three significant figures.
func Fixed(value float64, places int) string {
	if !Defined(value) {
		return Absent
	}
	text := strconv.FormatFloat(value, 'f', places, 64)
	rounded, _ := strconv.ParseFloat(text, 64)
	switch {
	case rounded == 0 && value > 0:
		return "<" + strconv.FormatFloat(math.Pow10(-places), 'f', places, 64)
	case rounded == 0:
		return strconv.FormatFloat(0, 'f', places, 64) // never a negative zero
	case places == 0 && math.Abs(value) >= 1000:
		return Figures(value)
	}
	return withMinus(text)
}

// Orderable rounds up to a whole number, from 1000 on to three significant figures: who orders
// what is printed must not be one short.
func Orderable(value float64) string {
	if !Defined(value) {
		return Absent
	}
	step := 1.0
	if value >= 1000 {
		step = math.Pow10(int(math.Log10(value)) - 2)
	}
	steps := math.Ceil(value/step - 1e-9) // the rounding of sums of float64 orders nothing
	return strconv.FormatFloat(steps*step+0, 'f', 0, 64)
}

// Between writes a range; with a minus sign in it a dash would be read for one.
func Between(low, high string) string {
	if strings.HasPrefix(low, "−") || strings.HasPrefix(high, "−") {
		return low + " to " + high
	}
	return low + "–" + high
}

// SignedFixed writes a number that may be below zero; what is too small to show is zero.
func SignedFixed(value float64, places int) string {
	if math.Abs(value) < math.Pow10(-places)/2 {
		value = 0
	}
	return Fixed(value, places)
}

// Figure is a number of a finding, empty where it has none.
func Figure(value float64) string {
	switch {
	case !Defined(value):
		return ""
	case value >= 1000:
		return strconv.FormatFloat(value, 'f', 0, 64) // depths and strings are given to the metre
	}
	return Figures(value)
}

// OrNone is a figure that there may be, else not a number.
func OrNone(figure *float64) float64 {
	if figure == nil {
		return math.NaN()
	}
	return *figure
}
