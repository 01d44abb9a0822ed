package sim

import (
	"math"
	"testing"
	"time"

	"gonum.org/v1/gonum/stat"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/voyage"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// inTheTyphoons is a task of 20 days that may be interrupted, at a site near 19 N 129 E, begun half a day after
// the ship leaves a port beside it.
func inTheTyphoons(t *testing.T, sails time.Time, use plan.Places) *voyage.Voyage {
	task := plan.Item{Name: "T", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(20 * 24 * simtest.Hours), SeaLimit: 3, Interruptible: true}}}}
	p := simtest.Expedition(simtest.Site("S", geo.Position{Latitude: 19, Longitude: 129}, 5000, task))
	p.From.Position, p.To.Position = geo.Position{Latitude: 19, Longitude: 131}, geo.Position{Latitude: 19, Longitude: 131}
	p.Sites[0].Places, p.Sails = use, sails
	return simtest.Compiled(t, p)
}

// waits are the days for which the work waits at a site that is open when the ship comes.
func waits(v *voyage.Voyage, replications int) (list []float64, shut int) {
	for n := range replications {
		s := newExpedition(v)
		s.begins(5, n)
		s.sails()
		arrived := v.Plan.Sails.Add(time.Duration(s.Sites[0].Arrived * float64(time.Second)))
		if v.Sites[0].Known != nil {
			if closed, _, _ := v.Sites[0].Known.At(s.Stream, arrived); closed {
				shut++
				continue
			}
		}
		list = append(list, s.Spent[activity.WaitOnWeather]/simtest.Day)
	}
	return list, shut
}

// In August 1.0 storms come near, each closing the site for 60 h (spell_test.go of model/places): a rate of 1/31 a
// day. A site that is open closes after an exponential time, and stays closed for (e^(rate × 2.5 d) - 1)/rate in
// the mean, since the next storm may come before the last has gone (busy period of M/G/∞, Takács 1962, from memory). So
// 20 days of work wait for 20 d × (e^(2.5/31) - 1) = 1.68 d. At arrival it is closed for a share of
// 1 - e^(-2.5/31) = 7.7 %. In February none is on record there.
func TestTheTyphoonSeasonCostsTheDaysOfItsFrequencies(t *testing.T) {
	const replications = 3000
	august, shut := waits(inTheTyphoons(t, time.Date(2031, 8, 3, 0, 0, 0, 0, time.UTC), plan.PlacesMet), replications)
	february, none := waits(inTheTyphoons(t, time.Date(2031, 2, 3, 0, 0, 0, 0, time.UTC), plan.PlacesMet), replications)
	rate, lasts := 1.0/31, 2.5
	mean, sigma := stat.MeanStdDev(august, nil)
	sigma /= math.Sqrt(float64(len(august)))
	if want := 20 * (math.Exp(rate*lasts) - 1); math.Abs(mean-stat.Mean(february, nil)-want) > 4*sigma || sigma > 0.05 {
		t.Errorf("August costs %.3f ± %.3f d more than February, want %.3f d", mean-stat.Mean(february, nil), sigma, want)
	}
	share, want := float64(shut)/replications, 1-math.Exp(-rate*lasts)
	if math.Abs(share-want) > 4*math.Sqrt(want*(1-want)/replications) || none != 0 {
		t.Errorf("closed at arrival in %.4f of the Augusts, want %.4f; in %d Februaries", share, want, none)
	}
	if stat.Mean(february, nil) != 0 {
		t.Errorf("February costs %.3f d", stat.Mean(february, nil))
	}
}

func TestNothingClosesASiteUnlessItIsAskedFor(t *testing.T) {
	for _, use := range []plan.Places{plan.PlacesChecked, plan.PlacesOff} {
		if list, _ := waits(inTheTyphoons(t, time.Date(2031, 8, 3, 0, 0, 0, 0, time.UTC), use), 100); stat.Mean(list, nil) != 0 {
			t.Errorf("use %d: %.3f d", use, stat.Mean(list, nil))
		}
	}
}

// A ship that comes four days later meets the spells of the other for as long as both are there.
func TestAlternativesMeetTheSameSpellsAtTheSamePlaceAndDate(t *testing.T) {
	early := inTheTyphoons(t, time.Date(2031, 8, 3, 0, 0, 0, 0, time.UTC), plan.PlacesMet)
	late := inTheTyphoons(t, time.Date(2031, 8, 7, 0, 0, 0, 0, time.UTC), plan.PlacesMet)
	met := 0
	for n := range 200 {
		var shut [2][]bool
		for i, v := range []*voyage.Voyage{early, late} {
			s := newExpedition(v)
			s.begins(5, n)
			goOnUntil(t, s, func() bool { return s.Here != nil })
			for h := range 24 * 15 {
				s.Clock = float64(24*5+h-24*4*i) * simtest.Hours // from 8 August on
				s.MeetPlace()
				shut[i] = append(shut[i], s.Shut)
			}
		}
		for h := range shut[0] {
			if shut[0][h] != shut[1][h] {
				t.Fatalf("replication %d, hour %d: %v and %v", n, h, shut[0][h], shut[1][h])
			}
			if shut[0][h] {
				met++
			}
		}
	}
	if met < 200*24*15/50 {
		t.Errorf("closed for %d h: this shows little", met)
	}
}

// Ice that closes the site until the first of a month has the ship wait until then, to the second.
func TestTheShipWaitsForTheIceToOpen(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Latitude: -66, Longitude: -30}, 4000, plan.Item{Name: "T", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(20 * simtest.Hours), SeaLimit: 3}}}}))
	p.From.Position, p.To.Position = geo.Position{Latitude: -62, Longitude: -30}, geo.Position{Latitude: -62, Longitude: -30}
	p.Sites[0].Places, p.Sails = plan.PlacesMet, time.Date(2031, 9, 20, 0, 0, 0, 0, time.UTC)
	v := simtest.Compiled(t, p)
	opens := time.Date(2031, 9, 1, 0, 0, 0, 0, time.UTC)
	for v.Sites[0].Known.Ice[opens.Month()-1] == 2 {
		opens = opens.AddDate(0, 1, 0)
	}
	s := newExpedition(v)
	s.begins(5, 0)
	goOnUntil(t, s, func() bool { return s.Items[0].State == ship.Done })
	began := opens.Sub(p.Sails).Seconds()
	// positioning of 30 min, then the task
	if want := began + 20.5*simtest.Hours; math.Abs(s.Clock-want) > 1 || opens.Month() == time.September {
		t.Errorf("done after %.2f h, want %.2f h (open from %v)", s.Clock/simtest.Hours, want/simtest.Hours, opens)
	}
}
