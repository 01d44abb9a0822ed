package places

import "testing"

// The tables may make the program 3 MB larger at most.
func TestTheTablesAreSmall(t *testing.T) {
	const most = 2 << 20 // of the tables; the rest is code
	if size := len(reliefPacked) + len(currentsPacked) + len(cyclonesPacked) + len(icePacked); size > most {
		t.Errorf("%d bytes", size)
	}
}
