package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
)

// spud begins a hole: moves clear of the last one, spaces out, and finds the mudline where nobody
// has found it yet.
func (s *ship) spud() {
	if s.offset {
		s.do(activity.OffsetMove, s.Rate(rig.OffsetMove))
	}
	s.surveyRock()
	s.do(activity.TopDrive, s.Rate(rig.TopDrive))
	s.failStarts()
	if s.shootsMudline() {
		s.findMudline()
	}
	if s.ended != goingOn {
		return
	}
	s.offset = false
	s.sites[s.siteNumber()].floorKnown = true
	s.hole.open, s.hole.openedAt = true, s.clock
	s.bit = s.here.Floor
	s.items[s.item.Number].holes++
	s.markDepth()
}

// mostFailedStarts bounds the starts given up one after the other: seven are on record at one site
// (hole summaries, doi:10.5281/zenodo.10498831), where the ground was bare rock.
const mostFailedStarts = 8

// failStarts gives up starts near the sea floor and begins again beside them.
func (s *ship) failStarts() {
	if s.v.Plan.NoTrouble {
		return
	}
	for range mostFailedStarts {
		if s.ended != goingOn || !s.Happens(s.startFails()) {
			return
		}
		s.do(activity.FailedStart, s.Rate(rig.FailedStartTime))
		s.keepStart()
	}
}

// rotatedStart is the share recovered of what a rotated barrel cut in a start that was given up: 2.2 m of 11 m on average at
// 48 such holes, where piston corers have 9.1 m of 9.3 m at 230 (hole summaries, doi:10.5281/zenodo.10498831).
const rotatedStart = 0.2

// keepStart keeps the core of a start that was given up: the ground gave it, though not the hole. It is no part of the
// section, which the hole in its place cores from the sea floor.
func (s *ship) keepStart() {
	if s.ended != goingOn || len(s.stages()) == 0 || s.hole.aim > 0 {
		return
	}
	t, share := s.tool(), rotatedStart
	if t.Piston() {
		share = s.recovers(t, 0)
	}
	s.countCore(t, float64(t.Stroke()), float64(t.Stroke())*share)
}

// shootsMudline reports whether the hole begins with a piston core from above the sea floor.
func (s *ship) shootsMudline() bool {
	return len(s.stages()) > 0 && s.stages()[0].With.Piston() && s.hole.aim == 0
}

// mostMudlineShots ends the search on the worst of days: six shots are on record (Leg 199,
// handbook facts), so twice that.
const mostMudlineShots = 12

// findMudline shoots until the core holds the mudline. Water only: the bit goes lower. A full
// barrel: the mudline was missed, the bit goes higher. Later holes of a site know the depth.
func (s *ship) findMudline() {
	if s.sites[s.siteNumber()].floorKnown {
		return
	}
	for range mostMudlineShots {
		if !s.Happens(rig.WaterCore) && !s.Happens(rig.MissedMudline) {
			return
		}
		s.do(activity.WaterCore, s.pistonCycle(coring.APC, 0))
		s.do(activity.MudlineReset, s.Rate(rig.MudlineReset))
	}
}

// pistonCycle is the time of a piston core apart from what only some cores need, s.
func (s *ship) pistonCycle(t coring.Tool, depth float64) float64 {
	is := t.Of()
	way := (s.here.Floor + depth) / s.Rate(is.Wire)
	return s.pistonDurationFactor(t) * (2*way + s.Rate(rig.Shot) + s.Rate(rig.CorePull) + s.Rate(is.Handling))
}
