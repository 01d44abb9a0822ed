package sim

import (
	"math"
	"testing"

	"coredays/model/coring"
)

// A core is cut into sections of 1.5 m; what is left over is one more, and no core none.
func TestSectionsAreThoseThatACoreIsCutInto(t *testing.T) {
	for share, want := range map[float64]int{0: 0, 0.01: 1, 1.5 / 9: 1, 1.6 / 9: 2, 3.0 / 9: 2, math.Nextafter(3.0/9, 1): 2, 1: 6, 1.05: 7} {
		s := sailedTo(t, oneSite(pistonHole("A", 100)))
		s.hole.open, s.bit, s.bha = true, 1500, s.assembly()
		s.landCore(coring.APC, 0, 9, share)
		if got := s.used[sections]; got != want {
			t.Errorf("%.2f m: %d sections, by hand %d", 9*share, got, want)
		}
		if s.used[liners] != 1 || s.used[catchers] != 2 {
			t.Errorf("%.2f m: %d liners, %d catchers", 9*share, s.used[liners], s.used[catchers])
		}
	}
}
