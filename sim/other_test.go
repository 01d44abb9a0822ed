package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// withPipe are what a visit of oneVisit takes of work that brings other work: BHA, pipe down, top drive; out
// of the hole, top drive, clear, pipe out, BHA down.
const withPipe = 3*simtest.Hours + 1470.0/30/20*simtest.Hours + 30*simtest.Minutes + 33.0/30/10*simtest.Hours + 30*simtest.Minutes + 1500.0/30/20*simtest.Hours + 1*simtest.Hours

func TestOtherWorkComesWithTripsAndNotWithCores(t *testing.T) {
	p := oneVisit()
	even := visited(t, p)
	p.Ship.Rates[rig.OtherWork] = spread.Just(0.4)
	more := visited(t, p)
	if got, want := more.Clock-even.Clock, 0.4*withPipe; !simtest.Near(got, want) || !simtest.Near(more.Spent[activity.OtherWork], want) {
		t.Errorf("two fifths of other work cost %.3f h, booked as such %.3f h, by hand %.3f h", got/simtest.Hours, more.Spent[activity.OtherWork]/simtest.Hours, want/simtest.Hours)
	}
	for k := range activity.Kinds {
		if k != activity.OtherWork && !simtest.Near(more.Spent[k], even.Spent[k]) {
			t.Errorf("%v took %.3f h, without other work %.3f h", k, more.Spent[k]/simtest.Hours, even.Spent[k]/simtest.Hours)
		}
	}
}

func TestNoOtherWorkIsLeftWhenTheShipSails(t *testing.T) {
	p := oneVisit()
	p.Ship.Rates[rig.OtherWork] = spread.Just(0.4)
	whole, visit := sailed(t, p, false), visited(t, p)
	if got := whole.Spent[activity.OtherWork]; !simtest.Near(got, 0.4*withPipe) || whole.Handled != 0 || whole.OtherLeft != 0 {
		t.Errorf("the expedition has %.3f h of it, by hand %.3f h; left are %g and %g s", got/simtest.Hours, 0.4*withPipe/simtest.Hours, whole.Handled, whole.OtherLeft)
	}
	if got, want := whole.Sites[0].Left-whole.Sites[0].Arrived, visit.Clock+30*simtest.Minutes; !simtest.Near(got, want) {
		t.Errorf("the site took %.3f h, the visit and securing for sea %.3f h", got/simtest.Hours, want/simtest.Hours)
	}
}

// What comes with leaving a hole counts to that hole, and what comes with the last trip out to the last one.
func TestOtherWorkCountsToTheHoleThatBringsIt(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 33), simtest.PistonHole("B", 33)))
	even := sailed(t, p, false)
	p.Ship.Rates[rig.OtherWork] = spread.Just(0.4)
	more := sailed(t, p, false)
	const arrive, leaveHole, arriveB, out = 3*simtest.Hours + 1470.0/30/20*simtest.Hours + 30*simtest.Minutes, 33.0/30/10*simtest.Hours + 30*simtest.Minutes + 30.0/30/20*simtest.Hours,
		60*simtest.Minutes + 30*simtest.Minutes, 1470.0/30/20*simtest.Hours + 1*simtest.Hours
	for i, want := range []float64{0.4 * (arrive + leaveHole), 0.4 * (arriveB + leaveHole + out)} {
		if got := more.Items[i].Took - even.Items[i].Took; !simtest.Near(got, want) {
			t.Errorf("hole %d takes %.3f h more, by hand %.3f h", i, got/simtest.Hours, want/simtest.Hours)
		}
	}
}

// A typed rate is what every trip does, whatever else is done on site.
func TestATripTakesWhatTheRateSays(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 2520, simtest.PistonHole("A", 33)))
	p.Ship.Rates[rig.Tripping] = spread.Just(22 / simtest.Hours)
	p.Ship.Rates[rig.OtherWork] = spread.Quantity{Shape: spread.Table{P: []float64{0.01, 0.99}, Value: []float64{0.01, 3}}, Shares: spread.All(spread.Site)}
	s := newExpedition(simtest.Compiled(t, p))
	for n := range 60 {
		s.begins(1, n)
		s.visits()
		down, up := 2490.0/30/(s.Spent[activity.RunPipe]/simtest.Hours), 2520.0/30/(s.Spent[activity.PullPipe]/simtest.Hours)
		if !simtest.Near(down, 22) || !simtest.Near(up, 22) {
			t.Errorf("replication %d ran pipe at %.9f and pulled it at %.9f stands/h, want 22", n, down, up)
		}
	}
}

func TestOtherWorkThatTheSeaStopsGoesOnWhereItWas(t *testing.T) {
	p := oneVisit()
	p.Ship.Rates[rig.OtherWork] = spread.Just(0.4)
	s := newExpedition(simtest.Compiled(t, p))
	s.begins(1, 0)
	s.arrivesAt(voyage.SitePlace(0))
	s.nextItem()
	s.Handled, s.OtherLeft = 5*simtest.Hours, 0
	s.Ended = ship.StormPipe // before it has begun
	s.doOtherWork()
	if s.Handled != 0 || !simtest.Near(s.OtherLeft, 2*simtest.Hours) || s.Spent[activity.OtherWork] != 0 {
		t.Errorf("%.3f h are left, %.3f h were done, want 2 h and none", s.OtherLeft/simtest.Hours, s.Spent[activity.OtherWork]/simtest.Hours)
	}
	s.Ended = ship.GoingOn
	s.doOtherWork()
	if s.OtherLeft != 0 || !simtest.Near(s.Spent[activity.OtherWork], 2*simtest.Hours) || s.otherWorkDue() {
		t.Errorf("%.3f h are left, %.3f h were done, want none and 2 h", s.OtherLeft/simtest.Hours, s.Spent[activity.OtherWork]/simtest.Hours)
	}
}

// The share is one for a site and another for the next, where its spread lives between sites.
func TestOtherWorkIsAsMuchInAllHolesOfASite(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 33), simtest.PistonHole("B", 33)), simtest.Site("T", geo.Position{Longitude: 2}, 1500, simtest.PistonHole("A", 33)))
	p.Ship.Rates[rig.OtherWork] = spread.Quantity{Shape: spread.Table{P: []float64{0.01, 0.99}, Value: []float64{0.5, 2}}, Shares: spread.All(spread.Site)}
	s := newExpedition(simtest.Compiled(t, p))
	s.begins(1, 0)
	var share []float64
	for _, at := range []voyage.Place{voyage.SitePlace(0), voyage.SitePlace(1), voyage.SitePlace(0)} {
		s.arrivesAt(at)
		for _, item := range []int{0, len(s.Here.Items) - 1} {
			s.Place.Hole = s.Here.Items[item].Key
			share = append(share, s.Rate(rig.OtherWork))
		}
	}
	if share[0] != share[1] || share[0] != share[4] || share[0] == share[2] || share[2] != share[3] {
		t.Errorf("shares of S A, S B, T, T, S A, S B: %v", share)
	}
}

// The crew keeps time for the other work that leaving brings: by hand, 33 m in the hole, with the even share.
func TestTheCrewReckonsWithOtherWorkOnLeaving(t *testing.T) {
	p := oneVisit()
	p.Ship.Rates[rig.OtherWork] = spread.Just(0.4)
	s := newExpedition(simtest.Compiled(t, p))
	s.begins(1, 0)
	s.arrivesAt(voyage.SitePlace(0))
	s.nextItem()
	s.Bit = 1533
	want := 1.1 * (30*simtest.Minutes + 1.4*(33.0/30/10*simtest.Hours+30*simtest.Minutes+1500.0/30/20*simtest.Hours+1*simtest.Hours))
	if got := s.LeaveTime(); !simtest.Near(got, want) {
		t.Errorf("leaving is estimated at %.3f h, by hand %.3f h", got/simtest.Hours, want/simtest.Hours)
	}
}

// With the first assembly of an expedition rig and tools are tried out, once; not where it was begun before.
func TestRigAndToolsAreTriedOutAtTheFirstSiteOnly(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 33)), simtest.Site("T", geo.Position{Longitude: 2}, 1500, simtest.PistonHole("A", 33)))
	even := sailed(t, p, false)
	p.Ship.Rates[rig.FirstSiteWork] = spread.Just(9 * simtest.Hours)
	more := sailed(t, p, false)
	stay := func(s *expedition, n int) float64 { return s.Sites[n].Left - s.Sites[n].Arrived }
	if first, second := stay(more, 0)-stay(even, 0), stay(more, 1)-stay(even, 1); !simtest.Near(first, 9*simtest.Hours) || !simtest.Near(second, 0) {
		t.Errorf("the first site takes %.3f h more, the second %.3f h, want 9 h and none", first/simtest.Hours, second/simtest.Hours)
	}
	if got := more.Spent[activity.OtherWork]; !simtest.Near(got, 9*simtest.Hours) {
		t.Errorf("%.3f h are booked as other work, want 9 h", got/simtest.Hours)
	}
	p.Begun = true
	if got := sailed(t, p, false).Clock; !simtest.Near(got, even.Clock) {
		t.Errorf("an expedition begun before takes %.3f h, without trying out %.3f h", got/simtest.Hours, even.Clock/simtest.Hours)
	}
}
