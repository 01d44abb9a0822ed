package words_test

import (
	"slices"
	"testing"

	"coredays/output/words"
)

func TestWordsAreWrappedAndOnlyLongOnesCut(t *testing.T) {
	cases := []struct {
		text  string
		width int
		want  []string
	}{
		{"", 10, []string{""}},
		{"one two three", 7, []string{"one two", "three"}},
		{"one two three", 8, []string{"one two", "three"}},
		{"extraordinary day", 5, []string{"extra", "ordin", "ary", "day"}},
		{"a\tb\nc", 10, []string{"a b c"}},
		{"深海の峰", 4, []string{"深海", "の峰"}}, // each of two columns
	}
	for _, c := range cases {
		if got := words.Wrap(c.text, c.width); !slices.Equal(got, c.want) {
			t.Errorf("%q in %d columns: %q, want %q", c.text, c.width, got, c.want)
		}
	}
}
