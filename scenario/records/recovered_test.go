package records

import (
	"math"
	"strings"
	"testing"
)

// Cores and metres of a hole near the sea floor count in what came true, though a forecast is not given it.
func TestWhatCameTrueCountsHolesNearTheSeaFloor(t *testing.T) {
	head := holesHead + "," + recoveredColumn + "\n"
	row := func(hole, order, depth, cores, recovered string) string {
		return holeRow(map[string]string{"hole": hole, "hole_order": order, "holes_at_site": "2", "penetration_m": depth, "n_cores": cores}) + "," + recovered + "\n"
	}
	for _, test := range []struct {
		first string
		want  float64
		cores int
	}{{row("A", "1", "9", "1", "8.5"), 190.5, 23}, {row("A", "1", "9", "0", ""), 182, 22}, {row("A", "1", "9", "1", ""), math.NaN(), 23}} {
		sites, out, err := ReadHoles("holes.csv", strings.NewReader(head+test.first+row("B", "2", "200", "22", "182")))
		if err != nil || len(sites) != 1 {
			t.Fatal(sites, out, err)
		}
		got := float64(sites[0].Recovered())
		if same := got == test.want || math.IsNaN(got) && math.IsNaN(test.want); !same || sites[0].AllCores() != test.cores {
			t.Errorf("%s%g m and %d cores, want %g and %d", test.first, got, sites[0].AllCores(), test.want, test.cores)
		}
	}
}

func TestATableWithoutRecoveryIsRead(t *testing.T) {
	sites, _ := readRows(t, holeRow(nil))
	if len(sites) != 1 || !math.IsNaN(float64(sites[0].Recovered())) {
		t.Errorf("%v", sites)
	}
}
