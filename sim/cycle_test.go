package sim

import (
	"testing"

	"coredays/model/coring"
	"coredays/sim/ship"
)

// A way to cut that has no operation would be a hole that never gets deeper.
func TestEveryWayToCutHasItsOperationAndItsEstimate(t *testing.T) {
	for cut := range coring.Cuts {
		if operations[cut] == nil || ship.Cycles[cut] == nil {
			t.Errorf("way %d: operation %v, estimate %v", int(cut), operations[cut] != nil, ship.Cycles[cut] != nil)
		}
	}
}
