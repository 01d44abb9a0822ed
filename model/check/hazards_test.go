package check_test

import (
	"strings"
	"testing"

	"coredays/model/check"
)

// A sand that begins at the sea floor, lies deeper than 3,000 ft, or below all targets, holds nothing that flows.
func TestOnlyACoveredShallowSandThatIsDrilledIsACaution(t *testing.T) {
	for layers, want := range map[string]bool{
		"[{bottom: 100 mbsf, lithology: nannofossil ooze}, {bottom: 400 mbsf, lithology: sand}]": true,
		"[{bottom: 400 mbsf, lithology: sand}]":                                                  false,
		"[{bottom: 400 mbsf, lithology: nannofossil ooze}, {bottom: 500 mbsf, lithology: sand}]": false,
	} {
		got := false
		for _, f := range checked(t, "sites[0].layers="+layers) {
			got = got || f.Verdict == check.Caution && strings.HasPrefix(f.What, "sand beneath other sediment")
		}
		if got != want {
			t.Errorf("%s: caution %v, want %v", layers, got, want)
		}
	}
}
