package voyage

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/unit"
)

// The sea that stops coring is the one that stops the first of its tools; limits that there are not are not stated.
func TestTheLimitOfCoringIsTheLowerOfItsTools(t *testing.T) {
	for _, c := range []struct {
		piston, rotary unit.Length
		want           string
	}{{4, 5, "piston coring"}, {5, 4, "rotary coring"}, {0, 4, "rotary coring"}, {4, 0, "piston coring"}, {0, 0, ""}} {
		p := transect(place("W", west))
		p.Ship.Limits = []rig.SeaLimit{{For: activity.Logging, Of: rig.WaveHeight, Most: 3}}
		for class, most := range map[activity.Limit]unit.Length{activity.PistonCoring: c.piston, activity.RotaryCoring: c.rotary} {
			if most > 0 {
				p.Ship.Limits = append(p.Ship.Limits, rig.SeaLimit{For: class, Of: rig.WaveHeight, Most: most})
			}
		}
		q, got := compiled(t, p).Sea(0), ""
		if q.Coring >= 0 {
			got = q.Limits[q.Coring].Name
		}
		if got != c.want || len(q.Limits) != len(p.Ship.Limits) {
			t.Errorf("%g and %g m: %q stops coring of %v, want %q", float64(c.piston), float64(c.rotary), got, q.Limits, c.want)
		}
	}
}
