package sheet

import (
	"bytes"
	"strings"
	"testing"
)

func TestNumbersBelowZeroStayNumbers(t *testing.T) {
	s := &Table{Fields: []Field{{Key: "n"}, {Key: "text"}}}
	s.Add(-12.5, "-12.5")
	s.Add(-1e-9, "-12.5 d")
	var text bytes.Buffer
	if err := s.csv(&text); err != nil {
		t.Fatal(err)
	}
	if got, want := text.String(), "n,text\n-12.5,-12.5\n-1e-09,'-12.5 d\n"; got != want {
		t.Errorf("written as %q, want %q", got, want)
	}
}

func TestTheDictionaryTellsOfGuardedTexts(t *testing.T) {
	first := dictionary(nil, ".csv").Rows[0]
	if text := first[3].(string); !strings.Contains(text, "apostrophe") || !strings.Contains(text, "U+FFFD") {
		t.Errorf("the dictionary begins with %v", first)
	}
}
