package sim

import (
	"math"
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// hanging is an expedition to two sites, with pipe hanging from the first to the second.
func hanging(apart float64, first, second unit.Length) *plan.Plan {
	p := simtest.Expedition(simtest.Site("A", geo.Position{Longitude: 1}, first, simtest.PistonHole("A", 20)),
		simtest.Site("B", geo.Position{Longitude: 1 + apart}, second, simtest.PistonHole("A", 20)))
	p.Sites[1].Hanging = true
	return p
}

// A storm has the pipe recovered on the way; the rest of it is sailed, neither skipped nor done twice.
func TestAStormOnAHangingPassageLeavesTheRestToSail(t *testing.T) {
	s := inPort(t, hanging(0.5, 3000, 3000))
	goOnUntil(t, s, func() bool { return s.Item == nil && s.Positioned })
	seaAhead(s, 1, 1, 11, 11, 11, 1)
	goHome(t, s)
	var way float64
	for _, leg := range [][2]voyage.Place{{voyage.FromPort, voyage.SitePlace(0)}, {voyage.SitePlace(0), voyage.SitePlace(1)}, {voyage.SitePlace(1), voyage.ToPort}} {
		way += s.Voyage.Leg(leg[0], leg[1]).Distance
	}
	slow, fast := s.Spent[activity.HangingPassage]*0.5, s.Spent[activity.Passage]*5
	if slow < 1000 || slow > 10_000 || math.Abs(slow+fast-way) > 1 {
		t.Errorf("%.0f m with pipe hanging and %.0f m without are not %.0f m", slow, fast, way)
	}
}

func TestPipeIsPulledUpBeforeAPassageToAShallowerSite(t *testing.T) {
	s := inPort(t, hanging(0.05, 3000, 1000))
	goOnUntil(t, s, func() bool { return s.At == voyage.SitePlace(1) })
	if s.Bit != 970 || s.InHole() {
		t.Errorf("arrives in 1,000 m of water with the bit at %g m", s.Bit)
	}
}

// Where the sea is shallower than the clearance of a bit, each site costs what it does elsewhere.
func TestInTenMetresOfWaterPipeIsRunAndRecovered(t *testing.T) {
	s := sailed(t, simtest.Expedition(simtest.Site("A", geo.Position{Longitude: 1}, 10, simtest.PistonHole("A", 20)), simtest.Site("B", geo.Position{Longitude: 2}, 10, simtest.PistonHole("A", 20))), false)
	for kind, want := range map[activity.Kind]float64{activity.Position: 2 * 0.5, activity.MakeUpBHA: 2 * 3, activity.LayDownBHA: 2 * 1, activity.Secure: 2 * 0.5} {
		if got := s.Spent[kind]; !simtest.Near(got, want*simtest.Hours) {
			t.Errorf("%v for %.2f h, by hand %.2f h", kind, got/simtest.Hours, want)
		}
	}
	if s.Bit != 0 || s.Items[0].Depth != 20 || s.Items[1].Depth != 20 {
		t.Errorf("home with the bit at %g m from holes of %g and %g m", s.Bit, s.Items[0].Depth, s.Items[1].Depth)
	}
}

func TestDaysInPortAreTheSameInAnyOrderOfTheSites(t *testing.T) {
	p := hanging(1, 1500, 1500)
	p.InPort = simtest.Wide(5*86400, 1.5)
	back := *p
	back.Order = []int{1, 0}
	there, other := replicated(t, p, 5, 1), replicated(t, &back, 5, 1)
	for n := range 5 {
		c := n*there.Layout.Width + statistics.ColInPort
		if there.Unconstrained[c] != other.Unconstrained[c] || there.Unconstrained[c] != there.Constrained[c] {
			t.Errorf("replication %d: %.3f d, in the other order %.3f d, bound %.3f d", n, there.Unconstrained[c]/86400, other.Unconstrained[c]/86400, there.Constrained[c]/86400)
		}
	}
}

// In waves above 2 m a metre more costs 8 % of the speed, until a quarter is left: of 20 m it would be
// -44 %. A degree at 5 m/s is 6.18 h.
func TestAShipMakesAQuarterOfHerSpeedInAnySea(t *testing.T) {
	for height, share := range map[float64]float64{1: 1, 4: 0.84, 11: 0.28, 20: 0.25} {
		p := simtest.OneSite(simtest.PistonHole("A", 20))
		p.Ship.Rates[rig.SlowdownFrom], p.Ship.Rates[rig.SlowdownPerMetre] = simtest.Just(2), simtest.Just(0.08)
		s := inPort(t, p)
		s.Sea.Forced = []float64{height}
		goOnUntil(t, s, func() bool { return s.At == voyage.SitePlace(0) })
		leg := float64(geo.Distance(geo.Position{}, geo.Position{Longitude: 1}))
		if got, want := s.Spent[activity.Passage], leg/5/share; !simtest.Near(got, want) {
			t.Errorf("in %g m of sea: %.3f h, by hand %.3f h", height, got/simtest.Hours, want/simtest.Hours)
		}
	}
}
