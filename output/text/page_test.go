package text

import (
	"bytes"
	"strings"
	"testing"

	"coredays/output/outputtest"
	"coredays/output/words"
)

func TestANarrowScreenHasNarrowLinesAndAWideOneWideLines(t *testing.T) {
	widest := map[int]int{}
	for _, width := range []int{80, 100, 140} {
		var b bytes.Buffer
		if err := Simulation(Screen{Writer: &b, Width: width}, outputtest.Ordinary(), Detail{}); err != nil {
			t.Fatal(err)
		}
		for line := range strings.Lines(b.String()) {
			widest[width] = max(widest[width], words.Displayed(strings.TrimSuffix(line, "\n")))
		}
	}
	if widest[140] <= 100 || widest[100] > 100 || widest[80] > 80 {
		t.Errorf("widest lines by screen: %v", widest)
	}
}

func TestColourIsOnHeadingsAloneAndTakesNothingAway(t *testing.T) {
	var in, without bytes.Buffer
	s := outputtest.LongNames() // with control characters in names
	if err := Simulation(Screen{Writer: &in, Width: PageWidth, Colour: true}, s, Detail{All: true}); err != nil {
		t.Fatal(err)
	}
	if err := Simulation(&without, s, Detail{All: true}); err != nil {
		t.Fatal(err)
	}
	coloured := in.String()
	if !strings.Contains(coloured, bold+"Warnings"+plain+"\n") {
		t.Error("no bold heading")
	}
	if bare := strings.NewReplacer(bold, "", faint, "", plain, "").Replace(coloured); bare != without.String() {
		t.Error("the text is another in colour")
	}
}
