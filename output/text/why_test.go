package text

import (
	"strings"
	"testing"

	"coredays/model/unit"
	"coredays/output/outputtest"
)

func TestCapsThatBindAreAReasonToDropHoles(t *testing.T) {
	s := outputtest.Ordinary()
	s.Needed.Fits, s.Allotted.ChanceAll = 0.8, 0.4
	why := func() string { return strings.Join(Why(s), " ") }
	if text := why(); !strings.Contains(text, "estimate and forecast and drops what it does not expect to fit.") || strings.Contains(text, "cap") {
		t.Errorf("without caps: %q", text)
	}
	s.Sites[0].Cap, s.Sites[1].Cap = 15*unit.Day, 6*unit.Day // P90 on site: 17.9 and 7.3 d
	if text := why(); !strings.Contains(text, "estimate and forecast, keeps to the caps of TR-01 (15 d) and TR-02 (6 d), and drops what") {
		t.Errorf("with caps: %q", text)
	}
	s.Sites[0].Cap = 30 * unit.Day
	if text := why(); strings.Contains(text, "TR-01 (") {
		t.Errorf("a cap that never binds is told: %q", text)
	}
}
