package voyage

import (
	"math"
	"testing"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/sea/heave"
	"coredays/model/unit"
)

// limited compiles a site in a depth of water for a ship with these limits.
func limited(t *testing.T, depth unit.Length, limits ...rig.SeaLimit) Limits {
	t.Helper()
	site := place("A", west)
	site.WaterDepth = depth
	p := transect(site)
	p.Ship.Limits = limits
	return compiled(t, p).Sites[0].Most
}

func TestTheLimitFromTheDeepestDepthHoldsWhateverTheirOrder(t *testing.T) {
	shallow := rig.SeaLimit{For: activity.PistonCoring, Of: rig.WaveHeight, Most: 2}
	middle := rig.SeaLimit{For: activity.PistonCoring, FromDepth: 500, Of: rig.WaveHeight, Most: 3}
	deep := rig.SeaLimit{For: activity.PistonCoring, FromDepth: 2000, Of: rig.WaveHeight, Most: 4.5}
	for depth, want := range map[unit.Length]float64{100: 2, 499: 2, 500: 3, 1999: 3, 2000: 4.5, 6000: 4.5} {
		for _, order := range [][]rig.SeaLimit{{shallow, middle, deep}, {deep, middle, shallow}, {middle, deep, shallow}} {
			near(t, "limit of piston coring, m", limited(t, depth, order...)[activity.PistonCoring], want, 0)
		}
	}
}

func TestWorkWithoutALimitAtItsDepthHasNone(t *testing.T) {
	most := limited(t, 1000, rig.SeaLimit{For: activity.Logging, FromDepth: 1500, Of: rig.WaveHeight, Most: 3},
		rig.SeaLimit{For: activity.Tripping, Of: rig.WaveHeight, Most: 6})
	for l, got := range most {
		want := math.Inf(1)
		if activity.Limit(l) == activity.Tripping {
			want = 6
		}
		if got != want {
			t.Errorf("limit of %s is %g m, want %g", activity.Limit(l).Key(), got, want)
		}
	}
}

// The way back: in a sea of the height found, the hull heaves as much as the limit says.
func TestLimitsOfHeaveAreTurnedIntoTheSeaThatMakesThatHeave(t *testing.T) {
	ship := vessel()
	response, err := heave.NewResponse(ship.Hull, heave.PeriodFactor, ship.Heading)
	if err != nil {
		t.Fatal(err)
	}
	for _, allowed := range []unit.Length{0.5, 1.5, 3, 4.6} {
		most := limited(t, 1000, rig.SeaLimit{For: activity.RotaryCoring, Of: rig.SignificantHeave, Most: allowed},
			rig.SeaLimit{For: activity.Logging, Of: rig.LargestHeave, Most: allowed})
		near(t, "significant heave, m", float64(response.Heave(unit.Length(most[activity.RotaryCoring]))), float64(allowed), 1e-9)
		largest := heave.LargestHeave(response.Heave(unit.Length(most[activity.Logging])))
		near(t, "largest heave in ten minutes, m", float64(largest), float64(allowed), 1e-9)
		if most[activity.Logging] >= most[activity.RotaryCoring] {
			t.Errorf("%g m as the largest heave allows %.2f m, as the significant one %.2f m", float64(allowed), most[activity.Logging], most[activity.RotaryCoring])
		}
	}
}

func TestHeadingOfTheShipCountsForItsHeave(t *testing.T) {
	p := transect(place("A", west))
	p.Ship.Limits = []rig.SeaLimit{{For: activity.Logging, Of: rig.SignificantHeave, Most: 2}}
	p.Ship.Heading = 0
	head := compiled(t, p).Sites[0].Most[activity.Logging]
	p.Ship.Heading = math.Pi / 2
	if beam := compiled(t, p).Sites[0].Most[activity.Logging]; beam >= head {
		t.Errorf("limit of %.2f m with the sea abeam, %.2f m ahead", beam, head)
	}
}

func TestHullIsOnlyNeededForLimitsOfHeave(t *testing.T) {
	p := transect(place("A", west))
	p.Ship.Hull = heave.Hull{}
	compiled(t, p)
	p.Ship.Limits = append(p.Ship.Limits, rig.SeaLimit{For: activity.Logging, Of: rig.LargestHeave, Most: 3})
	refused(t, p, "the ship's hull: hull 0 x 0 x 0 m: length, beam and draught must be above 0")
}

// 30 ft of sea as the largest wave are 9.144 m: of 1,000 waves the largest is sqrt(ln 1000 / 2) = 1.858 times the significant
// height, so 4.92 m.
func TestALargestWaveIsNotASignificantOne(t *testing.T) {
	most := limited(t, 1000, rig.SeaLimit{For: activity.RotaryCoring, Of: rig.LargestWave, Most: 9.144}, rig.SeaLimit{For: activity.Logging, Of: rig.WaveHeight, Most: 9.144})
	near(t, "limit of a largest wave, m", most[activity.RotaryCoring], 4.92, 0.01)
	near(t, "limit of a significant height, m", most[activity.Logging], 9.144, 1e-9)
}
