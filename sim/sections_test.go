package sim

import (
	"math"
	"testing"

	"coredays/model/coring"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// A core is cut into sections of 1.5 m; what is left over is one more, and no core none.
func TestSectionsAreThoseThatACoreIsCutInto(t *testing.T) {
	for share, want := range map[float64]int{0: 0, 0.01: 1, 1.5 / 9: 1, 1.6 / 9: 2, 3.0 / 9: 2, math.Nextafter(3.0/9, 1): 2, 1: 6, 1.05: 7} {
		s := sailedTo(t, simtest.OneSite(simtest.PistonHole("A", 100)))
		s.Hole.Open, s.Bit, s.BHA = true, 1500, s.Assembly()
		s.RecordCore(coring.APC, 0, 9, share)
		if got := s.Consumed[statistics.Sections]; got != want {
			t.Errorf("%.2f m: %d sections, by hand %d", 9*share, got, want)
		}
		if s.Consumed[statistics.Liners] != 1 || s.Consumed[statistics.Catchers] != 2 {
			t.Errorf("%.2f m: %d liners, %d catchers", 9*share, s.Consumed[statistics.Liners], s.Consumed[statistics.Catchers])
		}
	}
}
