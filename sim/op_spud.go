package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/sim/ship"
)

// spud begins a hole: moves clear of the last one, spaces out, and finds the mudline where nobody
// has found it yet.
func (s *expedition) spud() {
	if s.Offset {
		s.Do(activity.OffsetMove, s.Rate(rig.OffsetMove))
	}
	s.surveyRock()
	s.Do(activity.TopDrive, s.Rate(rig.TopDrive))
	s.failStarts()
	if s.shootsMudline() {
		s.findMudline()
	}
	if s.Ended != ship.GoingOn {
		return
	}
	s.Offset = false
	s.Sites[s.SiteNumber()].FloorKnown = true
	s.Hole.Open, s.Hole.OpenedAt = true, s.Clock
	s.Bit = s.Here.Floor
	s.Items[s.Item.Number].Holes++
	s.MarkDepth()
}

// mostFailedStarts bounds the starts given up one after the other: seven are on record at one site
// (hole summaries, doi:10.5281/zenodo.10498831), where the ground was bare rock.
const mostFailedStarts = 8

// failStarts gives up starts near the sea floor and begins again beside them.
func (s *expedition) failStarts() {
	if s.Voyage.Plan.NoTrouble {
		return
	}
	for range mostFailedStarts {
		if s.Ended != ship.GoingOn || !s.Happens(s.startFails()) {
			return
		}
		s.Do(activity.FailedStart, s.Rate(rig.FailedStartTime))
		s.keepStart()
	}
}

// rotatedStart is the share recovered of what a rotated barrel cut in a start that was given up: 2.2 m of 11 m on average at
// 48 such holes, where piston corers have 9.1 m of 9.3 m at 230 (hole summaries, doi:10.5281/zenodo.10498831).
const rotatedStart = 0.2

// keepStart keeps the core of a start that was given up: the ground gave it, though not the hole. It is no part of the
// section, which the hole in its place cores from the sea floor.
func (s *expedition) keepStart() {
	if s.Ended != ship.GoingOn || len(s.Stages()) == 0 || s.Hole.Aim > 0 {
		return
	}
	t, share := s.Tool(), rotatedStart
	if t.Piston() {
		share = s.Recovers(t, 0)
	}
	s.CountCore(t, float64(t.Stroke()), float64(t.Stroke())*share)
}

// shootsMudline reports whether the hole begins with a piston core from above the sea floor.
func (s *expedition) shootsMudline() bool {
	return len(s.Stages()) > 0 && s.Stages()[0].With.Piston() && s.Hole.Aim == 0
}

// mostMudlineShots ends the search on the worst of days: six shots are on record (Leg 199,
// handbook facts), so twice that.
const mostMudlineShots = 12

// findMudline shoots until the core holds the mudline. Water only: the bit goes lower. A full
// barrel: the mudline was missed, the bit goes higher. Later holes of a site know the depth.
func (s *expedition) findMudline() {
	if s.Sites[s.SiteNumber()].FloorKnown {
		return
	}
	for range mostMudlineShots {
		if !s.Happens(rig.WaterCore) && !s.Happens(rig.MissedMudline) {
			return
		}
		s.Do(activity.WaterCore, s.pistonCycle(coring.APC, 0))
		s.Do(activity.MudlineReset, s.Rate(rig.MudlineReset))
	}
}

// pistonCycle is the time of a piston core apart from what only some cores need, s.
func (s *expedition) pistonCycle(t coring.Tool, depth float64) float64 {
	is := t.Of()
	way := (s.Here.Floor + depth) / s.Rate(is.Wire)
	return s.PistonDurationFactor(t) * (2*way + s.Rate(rig.Shot) + s.Rate(rig.CorePull) + s.Rate(is.Handling))
}

// startFails is the chance that a start is given up here.
func (s *expedition) startFails() rig.Rate {
	if s.Bare() {
		return rig.BareStart
	}
	return rig.FailedStart
}

// surveyRock looks for a place to spud on rock, once a site, unless a task with pipe at the sea floor did so before.
func (s *expedition) surveyRock() {
	site := &s.Sites[s.SiteNumber()]
	if !s.Bare() || site.FloorKnown || site.Surveyed {
		return
	}
	s.Do(activity.Survey, s.Rate(rig.BareSurvey))
	site.Surveyed = s.Ended == ship.GoingOn
}
