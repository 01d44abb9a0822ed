package text

import (
	"strings"
	"testing"

	"coredays/model/check"
	"coredays/output/outputtest"
)

func TestWhatComesNearestToALimitOfTheRigIsToldFirst(t *testing.T) {
	found := []check.Finding{
		{Site: "TR-01", What: "hook load", Borne: true, Value: 501, Limit: 1000, Unit: "klbf"},
		{Site: "TR-02", Hole: "A", What: "weight on bit for basalt", Borne: true, Value: 20, Limit: 30.2, Unit: "klbf"},
		{Site: "TR-01", What: "sea above the limit", Value: 15.9, Limit: 16, Unit: "%"}, // not what the rig bears
	}
	if got, want := HardestWords(found), "Nearest to a limit of rig and string: weight on bit for basalt, 20 of at most 30.2 klbf, TR-02 A."; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	found = append(found, check.Finding{Site: "TR-02", What: "margin of overpull", Borne: true, Least: true, Value: 110, Limit: 100, Unit: "klbf"})
	if got, want := HardestWords(found), "Nearest to a limit of rig and string: margin of overpull, 110 of at least 100 klbf, TR-02."; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if got := HardestWords(found[2:3]); got != "" {
		t.Errorf("where nothing was held against the rig: %q", got)
	}
	facts := MoreFacts(outputtest.Ordinary(), found)
	if last := facts[len(facts)-1]; last.Value != "91 %" || !strings.Contains(last.Note, "110 of at least 100 klbf") {
		t.Errorf("the figure is %+v", last)
	}
}

func TestAProgrammeThatHardlyAnyExpeditionHasTheDaysForIsToldSo(t *testing.T) {
	s := outputtest.Ordinary() // nine in ten need more than 37.2 d
	s.Allotted.SeaDays = 37 * 86400
	if why := strings.Join(Why(s), " "); !strings.Contains(why, "Nine in ten expeditions need more than 37.2 days, and there are 37:") {
		t.Errorf("with 37 days: %q", why)
	}
	s.Allotted.SeaDays = 38 * 86400
	if why := strings.Join(Why(s), " "); strings.Contains(why, "Nine in ten") {
		t.Errorf("with 38 days: %q", why)
	}
}
