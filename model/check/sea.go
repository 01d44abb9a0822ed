package check

import (
	"fmt"
	"math"
	"slices"
	"time"

	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
)

const (
	roughShare = 0.16 // of the time; nine legs in ten lost less on site to weather and repairs (from the leg records, doi:10.5281/zenodo.10498831)
	neverCalm  = 0.99 // of the time: seven hours a month are left, and never a day in one piece, judgement
)

// workWords names the classes of work for people.
var workWords = map[activity.Limit]string{
	activity.Positioning: "holding station", activity.PipeHandling: "handling the assembly", activity.Tripping: "running pipe",
	activity.PistonCoring: "piston coring", activity.RotaryCoring: "rotated coring", activity.Logging: "logging and re-entry",
}

// sea looks how much of the planned time at a site the sea is above the limit of each class of work
// that is planned there.
func (i *inspector) sea(s *voyage.Site, n int) {
	from, to := i.stay(n)
	for work := activity.Positioning; work < activity.FreeTask; work++ {
		if planned(s, work) {
			i.rough(s, "", "sea above the limit of "+workWords[work], s.Most[work], from, to, i.limitSource(s, work))
		}
	}
	if clear := i.plan.Ship.Storm; clear.ClearSeaFloor > 0 && i.shareAbove(s, float64(clear.ClearSeaFloor), from, to) > roughShare {
		i.rough(s, "", "sea above that at which the bit is pulled clear of the sea floor", float64(clear.ClearSeaFloor), from, to, clear.Source)
	}
	for _, item := range s.Items {
		if item.Task == nil {
			continue
		}
		for _, step := range item.Task.Steps {
			if step.SeaLimit > 0 {
				i.rough(s, item.Name, "sea above the limit of the task", float64(step.SeaLimit), from, to, "sea_limit of the scenario")
			}
		}
	}
}

func (i *inspector) rough(s *voyage.Site, hole, what string, height float64, from, to time.Time, source string) {
	if math.IsInf(height, 1) {
		return
	}
	share := i.shareAbove(s, height, from, to)
	limit := roughShare
	verdict := between(share, roughShare, neverCalm)
	cure := ""
	if verdict == Stop {
		limit, cure = neverCalm, "another season, or another limit"
	}
	i.note(Finding{Site: s.Name, Hole: hole, Kind: what, What: fmt.Sprintf("%s, Hs %.1f m, %s to %s", what, height, from.Format("2 Jan"), to.Format("2 Jan")),
		Verdict: verdict, Value: 100 * share, Limit: 100 * limit, Unit: "%", Source: source, Cure: cure})
}

// stay is when the ship is at a site, by the estimate; the whole expedition where it says nothing.
func (i *inspector) stay(n int) (from, to time.Time) {
	arrives, leaves := unit.Duration(0), i.plan.SeaDays
	if i.estimated.Known() && i.estimated.Leaves[n] > i.estimated.Arrives[n] {
		arrives, leaves = i.estimated.Arrives[n], i.estimated.Leaves[n]
	}
	at := func(d unit.Duration) time.Time {
		return i.plan.Sails.Add(time.Duration(float64(d) * float64(time.Second)))
	}
	return at(arrives), at(leaves)
}

// shareAbove is the mean over the days.
func (i *inspector) shareAbove(s *voyage.Site, height float64, from, to time.Time) float64 {
	sum, days := 0.0, 0.0
	for day := from; !day.After(to) || days == 0; day = day.AddDate(0, 0, 1) {
		sum += s.Waves.Exceedance(day.UTC().YearDay(), height)
		days++
	}
	return sum / days
}

// limitSource is the source of the limit that holds at a site.
func (i *inspector) limitSource(s *voyage.Site, work activity.Limit) (source string) {
	deepest := unit.Length(-1)
	for _, l := range i.plan.Ship.Limits {
		if l.For == work && l.FromDepth <= s.WaterDepth && l.FromDepth > deepest {
			source, deepest = l.Source, l.FromDepth
		}
	}
	return source
}

// planned reports whether there is work of a class at a site.
func planned(s *voyage.Site, work activity.Limit) bool {
	for _, item := range s.Items {
		if h := item.Hole; h != nil && asks(h, work) {
			return true
		}
	}
	return work == activity.Positioning
}

func asks(h *plan.Hole, work activity.Limit) bool {
	switch work {
	case activity.PistonCoring, activity.RotaryCoring:
		return work == activity.RotaryCoring && h.DrillAheadTo > h.Existing ||
			slices.ContainsFunc(h.Stages, func(stage plan.Stage) bool { return stage.With.Of().Limit == work })
	case activity.Logging:
		return len(h.Logging) > 0 || h.Reentry != plan.NoReentry
	}
	return true
}
