package chart

import (
	"fmt"
	"strconv"
	"testing"

	"coredays/output/words"
)

func number64(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

func TestWideLettersTakeTwoColumnsAndAnEm(t *testing.T) {
	for _, c := range []struct {
		name  string
		width int
		want  string
	}{{"North", 5, "North"}, {"Northern", 5, "Nort…"}, {"深海の峰", 8, "深海の峰"}, {"深海の峰", 7, "深海の…"}, {"深海の峰", 6, "深海…"}} {
		if got := clipped(c.name, c.width); got != c.want {
			t.Errorf("%q in %d columns: %q, want %q", c.name, c.width, got, c.want)
		}
	}
	if got := clippedBefore("深海の峰", 6); got != "…の峰" {
		t.Errorf("the end of it: %q", got)
	}
	style := lettering(8, ink)
	if got, want := style.Width("ab深海"), style.Width("ab")+16; got != want {
		t.Errorf("%v wide, want %v", got, want)
	}
}

func TestNamesAreTrimmedToTheirRoom(t *testing.T) {
	style := lettering(8, ink)
	for _, name := range []string{"Ridge of the long names beyond the terns", "深海の峰と海溝の間の深い谷", "WWWWWWWWWWWWWWWWWWWW"} {
		if got := trimmed(name, style, mostNameRoom); style.Width(got) > mostNameRoom || len(got) < 6 {
			t.Errorf("%q is %v wide for %v", got, style.Width(got), mostNameRoom)
		}
	}
	if got := trimmed("SB-01", style, mostNameRoom); got != "SB-01" {
		t.Errorf("a name with room became %q", got)
	}
}

func TestOfManySeasTheCalmestAndTheRoughestAreNamed(t *testing.T) {
	means := []float64{2.5, 3.9, 1.6, 3, 3, 3, 2}
	if got := fmt.Sprint(namedOf(means)); got != "[2 1]" {
		t.Errorf("named are %s", got)
	}
	if got := namedOf(means[:mostLines]); len(got) != mostLines {
		t.Errorf("of %d places %d are named", mostLines, len(got))
	}
}

func TestWhatIsGivenIsWrittenAsGiven(t *testing.T) {
	for value, want := range map[float64]string{1279: "1279", 56: "56", 56.5: "56.5", 1000.0 / 24: "41.67"} {
		if got := words.Given(value); got != want {
			t.Errorf("%v: %q, want %q", value, got, want)
		}
	}
}
