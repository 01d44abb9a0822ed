package check_test

import (
	"strings"
	"testing"

	"coredays/model/check"
)

// A limit of 0.5 m has a period of 3 s, in which kilometres of pipe would resonate; but the ship hardly heaves.
func TestASeaThatDoesNotMoveTheShipStrainsNoString(t *testing.T) {
	for _, f := range checked(t, "limits=[{for: piston_coring, of: wave height, most: 0.5 m}, {for: tripping, of: wave height, most: 0.6 m}]") {
		if f.Verdict == check.Stop && !strings.HasPrefix(f.What, "sea above") {
			t.Errorf("%s: %g, limit %g %s", f.What, f.Value, f.Limit, f.Unit)
		}
	}
}
