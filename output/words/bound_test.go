package words_test

import (
	"slices"
	"strings"
	"testing"

	"coredays/output/words"
)

func TestNumbersStayWithTheirUnits(t *testing.T) {
	for text, want := range map[string]string{
		"caps of SB-02 (18 d) and":    "caps of SB-02 (18_d) and",
		"17 % (rank 2), 8 dogs":       "17_% (rank_2), 8 dogs",
		"in 81 of 100 expeditions":    "in 81_of_100 expeditions",
		"P50 9.7 d (±0.2 d)":          "P50 9.7_d (±0.2_d)",
		"of the 11 days, 75 sea days": "of the 11_days, 75_sea days",
		"Sails 1 Feb 2027 08:00 UTC":  "Sails 1_Feb 2027 08:00_UTC",
		"hole 3 metal, 4 m/h":         "hole 3 metal, 4_m/h",
		"20 (13 to 29) points":        "20 (13_to_29) points",
		"−1 (−3 to −0.5), to 2":       "−1 (−3_to_−0.5), to 2",
		"21 (16–26) cores in 4 h":     "21 (16–26) cores in 4_h",
	} {
		if got := strings.ReplaceAll(words.Bound(text), "\u00a0", "_"); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func TestPrintedLinesKeepNumbersAndUnitsTogether(t *testing.T) {
	for _, c := range []struct {
		width int
		want  []string
	}{
		{16, []string{"keeps to the cap", "of 18 d and goes"}},
		{9, []string{"keeps to", "the cap", "of 18 d", "and goes"}},
		{4, []string{"keep", "s to", "the", "cap", "of", "18 d", "and", "goes"}},
		{2, []string{"ke", "ep", "s", "to", "th", "e", "ca", "p", "of", "18", "d", "an", "d", "go", "es"}}, // where no line holds both
	} {
		if got := words.Wrap("keeps to the cap of 18 d and goes", c.width); !slices.Equal(got, c.want) {
			t.Errorf("in %d columns: %q, want %q", c.width, got, c.want)
		}
	}
}
