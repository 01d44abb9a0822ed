package records

import (
	"strings"
	"testing"

	"coredays/model/coring"
)

// The list has the figures of record.yaml as they stand there.
func TestWhatARecordLeavesOpenIsListedWithItsFigures(t *testing.T) {
	u, _ := Model()
	u.Eras = []Era{{From: 1900, Piston: 0.9, Rotated: 1.2, Cores: [coring.Tools]float64{coring.RCB: 1.05}}, {From: 2000, Piston: 1.1, Rotated: 0.8, Cores: [coring.Tools]float64{coring.RCB: 0.8}}}
	u.LegTime.Mean, u.LegTime.SD = 35, 6
	u.Work = [UnrecordedClasses]Sometimes{{Chance: 0.05}, {Chance: 0.2}, {Chance: 0.1}, {Chance: 0.6}, {Chance: 0.3}}
	u.InWater = Slower{From: 3000, Rate: 0.5}
	text := strings.Join(u.Open(), "\n")
	for _, want := range []string{"5 to 60 % of the holes", "rotary at 14 m/h", "50 % of it in more than 3000 m", "cycles take 90 to 110 %, those of rotated tools 80 to 120 %", "rotary cores have 80 to 105 %", "legs are 35 d on their sites, standard deviation 6 d", "at most 2 nmi in at most 4 h"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in\n%s", want, text)
		}
	}
}
