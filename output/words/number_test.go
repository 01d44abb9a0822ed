package words_test

import (
	"math"
	"testing"

	"coredays/output/words"
)

var negativeZero = math.Copysign(0, -1)

func TestSingleNumbersHaveThreeFigures(t *testing.T) {
	cases := []struct {
		value float64
		want  string
	}{
		{0.0449, "0.0449"}, {12.34, "12.3"}, {1234, "1230"}, {98.6, "98.6"}, {56, "56"}, {0, "0"}, {negativeZero, "0"},
		{-0.25, "−0.25"}, {math.NaN(), "–"}, {math.Inf(1), "–"}, {math.Inf(-1), "–"}, {1e9, "1000000000"},
	}
	for _, c := range cases {
		if got := words.Figures(c.value); got != c.want {
			t.Errorf("%g is %q, want %q", c.value, got, c.want)
		}
	}
}

func TestNumbersOfAColumnHaveTheSameDecimals(t *testing.T) {
	cases := []struct {
		value  float64
		places int
		want   string
	}{
		{0.0449, 2, "0.04"}, {0.0449, 1, "<0.1"}, {0.0449, 0, "<1"}, {0.004, 2, "<0.01"}, {12.34, 1, "12.3"}, {12, 1, "12.0"},
		{9.96, 1, "10.0"}, {0, 1, "0.0"}, {0, 0, "0"}, {negativeZero, 1, "0.0"}, {-0.04, 1, "0.0"}, {-0.06, 1, "−0.1"},
		{98.6, 0, "99"}, {98.6, 1, "98.6"}, {1234, 0, "1230"}, {-1234, 0, "−1230"}, {999.6, 0, "1000"},
		{math.NaN(), 1, "–"}, {math.Inf(1), 0, "–"},
	}
	for _, c := range cases {
		if got := words.Fixed(c.value, c.places); got != c.want {
			t.Errorf("%g to %d places is %q, want %q", c.value, c.places, got, c.want)
		}
	}
}

func TestLargestValueOfAColumnDecidesItsDecimals(t *testing.T) {
	cases := []struct {
		values []float64
		want   int
	}{
		{[]float64{0.0449, 0.98}, 2}, {[]float64{0.04, 0.996}, 1}, {[]float64{12.34}, 1}, {[]float64{-47.9, 3}, 1}, {[]float64{99.96}, 0},
		{[]float64{150, 0.1}, 0}, {nil, 2}, {[]float64{math.NaN(), math.Inf(1), 5}, 1},
	}
	for _, c := range cases {
		if got := words.Places(c.values...); got != c.want {
			t.Errorf("%v have %d places, want %d", c.values, got, c.want)
		}
	}
}

func TestWhatIsOrderedIsRoundedUp(t *testing.T) {
	cases := []struct {
		value float64
		want  string
	}{{2.1, "3"}, {2, "2"}, {2.0000000000004, "2"}, {0.3, "1"}, {0, "0"}, {999.2, "1000"}, {1231, "1240"}, {1230, "1230"}, {10001, "10100"}, {math.NaN(), "–"}}
	for _, c := range cases {
		if got := words.Orderable(c.value); got != c.want {
			t.Errorf("%g is ordered as %q, want %q", c.value, got, c.want)
		}
	}
}

func TestOnlyAllIsHundredPercentAndOnlyNothingIsZero(t *testing.T) {
	cases := []struct {
		share float64
		want  string
	}{{0, "0"}, {0.0001, "<1"}, {0.38, "38"}, {0.3775, "38"}, {0.99, "99"}, {0.9999, ">99"}, {1, "100"}, {-0.03, "−3"}, {negativeZero, "0"}, {math.NaN(), "–"}}
	for _, c := range cases {
		if got := words.Percent(c.share); got != c.want {
			t.Errorf("%g is %q %%, want %q", c.share, got, c.want)
		}
	}
}

func TestChancesAreToldInWords(t *testing.T) {
	cases := []struct {
		share        float64
		replications int
		want         string
	}{
		{0.3775, 400, "It fits in 38 of 100 expeditions."},
		{0, 400, "It fits in none of 400 expeditions."},
		{1, 400, "It fits in all 400 expeditions."},
		{0.004, 10000, "It fits in fewer than 1 of 100 expeditions."},
		{0.9999, 10000, "It fits in more than 99 of 100 expeditions."},
		{3.0 / 7, 7, "It fits in 3 of 7 expeditions."},
		{1, 1, "It fits in this one expedition."},
		{0, 1, "It does not fit in this one expedition."},
		{math.NaN(), 400, "It fits in an unknown part of the expeditions."},
	}
	for _, c := range cases {
		if got := words.Happens(c.share, c.replications, "It fits", "It does not fit"); got != c.want {
			t.Errorf("%g of %d is %q, want %q", c.share, c.replications, got, c.want)
		}
	}
}
