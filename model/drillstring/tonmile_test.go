package drillstring

import (
	"testing"

	"coredays/model/unit"
)

const tonMile = 2000 * 5280 * unit.Energy(unit.PoundForce) * unit.Energy(unit.Foot)

func pounds(m float64) unit.Mass { return unit.Mass(m * pound) }

// www.drillingahead.com/profiles/blogs/round-trip-tonmiles and www.scribd.com/document/376571338.
func TestRoundTripTakesThePublishedTonMiles(t *testing.T) {
	for _, c := range []struct {
		trip       Trip
		want, half float64
	}{
		// The page works with the rounded 11.27 lb/ft and 26,866 lb, as here; its sum is cut, not rounded.
		{Trip{ft(5500), ft(94), lbft(11.27), pounds(26_866), pounds(95_000)}, 258.75, 0.015},
		{Trip{ft(12_000), ft(93), lbft(17.55), pounds(19_734), pounds(75_000)}, 627, 0.5},
		{Trip{ft(15_000), ft(93), lbft(17.55), pounds(19_734), pounds(75_000)}, 858, 0.5},
	} {
		published(t, "ton-mile", c.trip.Work(), tonMile, c.want, c.half)
	}
}

func TestRoundTripOfAStringIsTheTradeFormulaForUniformPipe(t *testing.T) {
	pipe := kind(t, "5 in 19.50 lb/ft S-135")
	buoyedMass := unit.LinearMass(float64(pipe.Mass) * float64(Buoyancy(Seawater)))
	uniform := String{Pipe: []Section{pipe.Section(4000, New)}}
	want := Trip{Depth: 4000, Stand: 28.5, Pipe: buoyedMass, Travelling: 50_000}.Work()
	published(t, "uniform", uniform.RoundTrip(Seawater, 28.5, 50_000), want, 1, 1e-12)

	s := coringString(t, New)
	excess := unit.Mass(100 * (float64(s.Assembly[0].Mass) - float64(pipe.Mass)) * float64(Buoyancy(Seawater)))
	trip := Trip{Depth: 5000, Stand: 28.5, Pipe: buoyedMass, Excess: excess, Travelling: 50_000}
	less := unit.Energy(gravity * float64(excess) * (100 - 28.5)) // it hangs in full from 100 m on; a stand of it is counted too
	published(t, "with collars", s.RoundTrip(Seawater, 28.5, 50_000), trip.Work()-less, 1, 1e-12)
}

func TestHeavyPipeOnTopTakesLessLineWorkThanHeavyPipeBelow(t *testing.T) {
	s := taperedString()
	turned := String{Pipe: []Section{s.Pipe[1], s.Pipe[0]}}
	if a, b := s.RoundTrip(Seawater, 28, 5e4), turned.RoundTrip(Seawater, 28, 5e4); !(a < b) {
		t.Errorf("heavy on top %g J, below %g J", a, b)
	}
}
