package check

import (
	"fmt"
	"time"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// cap holds the estimated time at a site against the most that is allowed there, and the cap against what it
// takes to run pipe to the sea floor.
func (i *inspector) cap(s *voyage.Site, n int) {
	if s.Cap == 0 {
		return
	}
	if down := i.pipeDown(s); down > s.Cap {
		i.note(Finding{Site: s.Name, What: "cap ends before the bit is at the sea floor", Verdict: Stop, Value: s.Cap.Hours(), Limit: down.Hours(), Least: true, Unit: "h",
			Source: "pipe run at a rate that one trip in a hundred exceeds", Path: "cap", Cure: "a longer cap, or no site"})
		return
	}
	if !i.estimated.Known() || i.estimated.Leaves[n] <= i.estimated.Arrives[n] {
		return
	}
	stay := i.estimated.Leaves[n] - i.estimated.Arrives[n]
	verdict := Pass
	if stay > s.Cap {
		verdict = Caution
	}
	i.note(Finding{Site: s.Name, What: "days on site within the cap", Verdict: verdict, Value: stay.Days(), Limit: s.Cap.Days(), Unit: "d", Source: quickEstimate, Path: "cap"})
}

// pipeDown is the least time from arriving at a site to the bit at the sea floor; 0 where no hole is
// planned or the pipe hangs already. The assembly may be made up under way.
func (i *inspector) pipeDown(s *voyage.Site) unit.Duration {
	if s.Hanging || s.Deepest() == 0 {
		return 0
	}
	stands := float64(i.plan.Ship.RigFloor+s.WaterDepth) / i.plan.Ship.Rates[rig.StandLength].Median()
	return i.time(rig.Positioning, fast) + unit.Duration(stands/i.speed(rig.Tripping, fast))
}

// window holds the dates of a site against how soon the ship can be there, and whether she can be home in
// time from there.
func (i *inspector) window(s *voyage.Site, n int) {
	const sources = "the straight way at a speed that one day in a hundred exceeds"
	speed, pilotage := i.speed(rig.SailingSpeed, fast), i.time(rig.Pilotage, fast)
	if !s.NotAfter.IsZero() {
		there := pilotage + unit.Duration(i.v.Leg(voyage.FromPort, voyage.SitePlace(n)).Distance/speed)
		f := Finding{Site: s.Name, What: "site is reached before not_after, days after sailing", Verdict: atMost(float64(there), float64(i.sailed(s.NotAfter))),
			Value: there.Days(), Limit: i.sailed(s.NotAfter).Days(), Unit: "d", Source: sources, Path: "not_after", Cure: "an earlier sailing date, or a later not_after"}
		if f.Verdict == Pass && i.estimated.Known() && i.estimated.Arrives[n] > i.sailed(s.NotAfter) {
			f.Verdict, f.Value, f.Source, f.Cure = Caution, i.estimated.Arrives[n].Days(), quickEstimate, "an earlier place in the order, or a later not_after"
		}
		i.note(f)
	}
	if !s.NotBefore.IsZero() {
		home := i.sailed(s.NotBefore) + pilotage + unit.Duration(i.v.Leg(voyage.SitePlace(n), voyage.ToPort).Distance/speed)
		i.note(Finding{Site: s.Name, What: "port is reached in time from the site at not_before, days after sailing", Verdict: atMost(float64(home), float64(i.plan.SeaDays)),
			Value: home.Days(), Limit: i.plan.SeaDays.Days(), Unit: "d", Source: sources, Path: "not_before", Cure: "an earlier not_before, or more sea days"})
	}
}

// sailed is the time from sailing to a date.
func (i *inspector) sailed(date time.Time) unit.Duration {
	return unit.Duration(date.Sub(i.plan.Sails).Seconds())
}

// closings looks how much of the time a site is closed.
func (i *inspector) closings(s *voyage.Site) {
	for _, u := range s.Closings() {
		i.closing(s, u)
	}
}

func (i *inspector) closing(s *voyage.Site, u plan.Unusable) {
	if !u.Every.Given() || !u.Lasts.Given() {
		return
	}
	every, lasts := u.Every.Median(), u.Lasts.Median()
	share := lasts / (every + lasts)
	verdict := Pass
	if share > roughShare {
		verdict = Caution
	}
	i.note(Finding{Site: s.Name, What: fmt.Sprintf("time closed by %s", u.Because), Kind: "time closed", Verdict: verdict, Value: 100 * share, Limit: 100 * roughShare, Unit: "%",
		Source: "unusable of the scenario; nine legs in ten lost less on site to weather and repairs (from the leg records, doi:10.5281/zenodo.10498831)", Path: "unusable", Cure: "another season"})
}
