package sim

import (
	"bytes"
	"fmt"
	"math"
	"testing"
	"time"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// likeness is that of an invented record of so many years, hourly, with storms every ten days or
// so and rough winters.
func likeness(t testing.TB, years int, key string) *sea.Likeness {
	t.Helper()
	var text bytes.Buffer
	text.WriteString("time,hs\n")
	for i := range years * 8766 {
		at := time.Date(2005, 1, 1, i, 0, 0, 0, time.UTC)
		x := float64(i)
		hs := 2.4 + 0.8*math.Cos(2*math.Pi*x/8766) + 1.1*math.Sin(x/37) + 0.9*math.Sin(x/53+2) + 0.4*math.Sin(x/11)
		fmt.Fprintf(&text, "%s,%.3f\n", at.Format("2006-01-02T15:04Z"), max(0.3, hs))
	}
	r, err := sea.ReadRecord(&text)
	if err != nil {
		t.Fatal(err)
	}
	l, err := sea.NewLikeness(r, key)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// recorded is an expedition of three sites: two with one record, in pieces, one with a short one.
func recorded(t testing.TB, order ...int) *plan.Plan {
	long, short := likeness(t, 6, "long"), likeness(t, 2, "short")
	if !long.Blocks || short.Blocks {
		t.Fatal("the long record should be used in pieces and the short one not")
	}
	p := simtest.Expedition(simtest.Site("A", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("1", 100)), simtest.Site("B", geo.Position{Longitude: 2}, 1500, simtest.PistonHole("1", 100)),
		simtest.Site("C", geo.Position{Longitude: 3}, 1500, simtest.PistonHole("1", 100)))
	p.Sites[0].Likeness, p.Sites[1].Likeness, p.Sites[2].Likeness = long, long, short
	if len(order) > 0 {
		p.Order = order
	}
	return p
}

// seasOf are the heights at each site in each hour of 50 days, wherever the ship is.
func seasOf(s *expedition) (heights [3][1200]float64) {
	for n := range s.Voyage.Sites {
		place := &s.Voyage.Sites[n]
		for step := range heights[n] {
			heights[n][step] = s.Sea.Series[place.Course].Height(step, place.Waves)
		}
	}
	return heights
}

func TestASiteMeetsTheSameSeaOnTheSameDateInAnyOrder(t *testing.T) {
	var seas [2][3][1200]float64
	for i, order := range [][]int{{0, 1, 2}, {2, 0, 1}} {
		s := newExpedition(simtest.Compiled(t, recorded(t, order...)))
		s.Crew = EstimateByCrew(s.Voyage)
		s.begins(4, 7)
		s.sails()
		seas[i] = seasOf(s)
	}
	if seas[0] != seas[1] {
		t.Error("another order of the sites met another sea")
	}
	if seas[0][0] != seas[0][1] {
		t.Error("two sites with one record have different seas")
	}
	if seas[0][0] == seas[0][2] {
		t.Error("sites with different records have the same sea")
	}
}

func TestAShipThatIsForkedKeepsHerSea(t *testing.T) {
	v := simtest.Compiled(t, recorded(t))
	whole, part, copied := newExpedition(v), newExpedition(v), newExpedition(v)
	for _, s := range []*expedition{whole, part} {
		s.begins(4, 8)
	}
	part.Sea.Series[part.Voyage.Sites[0].Course].Score(100)
	copied.copyFrom(part)
	if seasOf(copied) != seasOf(whole) {
		t.Error("a copy met another sea")
	}
	if seasOf(part) != seasOf(whole) {
		t.Error("the original met another sea after it was copied")
	}
}

// With perfect skill the crew is given the sea that comes, of pieces of a record as of a process.
func TestAPerfectForecastTellsTheSeaOfARecord(t *testing.T) {
	for n := range 3 {
		p := recorded(t, n)
		p.Ship.Rates[rig.ForecastSkill] = simtest.Just(1)
		s := sailedTo(t, p)
		f := s.IssuedForecast()
		for i, told := range f.Height {
			if is := s.Sea.Now(i * ship.ForecastEvery / int(ship.SeaStep)); math.Abs(told/is-1) > 1e-3 {
				t.Fatalf("site %d: told %g m for %d h ahead, it is %g m", n, told, 3*i, is)
			}
		}
	}
}

func TestARecordInPiecesMakesAReplicationNoDearer(t *testing.T) {
	v := simtest.Compiled(t, recorded(t))
	s := newExpedition(v)
	s.Crew = EstimateByCrew(v)
	n := 0
	if allocations := testing.AllocsPerRun(100, func() {
		s.begins(uint64(n%10), 0)
		s.sails()
		n++
	}); allocations > 0 {
		t.Errorf("%g allocations in a replication", allocations)
	}
}

// BenchmarkSea is what the sea costs in the expedition of BenchmarkReplication, of 28 days, which
// may be a tenth of that.
func BenchmarkSea(b *testing.B) {
	v := simtest.Compiled(b, simtest.Uncertain())
	s := newExpedition(v)
	n, sum := 0, 0.0
	for b.Loop() {
		s.begins(uint64(n), 0)
		s.Sea.Waves = v.Sites[0].Waves
		for step := range 28 * 24 {
			sum += s.Sea.Now(step)
		}
		n++
	}
}
