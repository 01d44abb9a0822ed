package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/statistics"
)

// cased is how far the casing of the hole in hand is.
type cased struct {
	strings int     // that stand
	shoe    float64 // depth of the deepest shoe, m below sea floor
	hard    float64 // when its cement bears being drilled out, s after sailing
	plug    bool    // cement and shoe are to be drilled out
}

// dueCasing is the string that comes next, nil where all stand.
func (s *ship) dueCasing() *plan.Casing {
	if strings := s.planned().Casing; s.hole.cased.strings < len(strings) {
		return &strings[s.hole.cased.strings]
	}
	return nil
}

// casingToRun reports whether a string is due and the hole for it is there.
func (s *ship) casingToRun() bool {
	c := s.dueCasing()
	return c != nil && !s.hole.cased.plug && (c.By != plan.InADrilledHole || s.hole.open && s.hole.depth >= float64(c.To)-shortest)
}

// drilledFor is the depth down to which the hole is drilled without coring: for the next string, and once all stand for the
// first core.
func (s *ship) drilledFor() float64 {
	switch c := s.dueCasing(); {
	case c == nil:
		return float64(s.planned().DrillAheadTo)
	case c.By == plan.InADrilledHole:
		return float64(c.To)
	}
	return 0
}

// casedIsAll: a hole that is only cased is not gone back to.
func (s *ship) casedIsAll() bool {
	return s.hole.cased.strings > 0 && !s.inHole() && s.dueCasing() == nil && !s.workLeft()
}

func (s *ship) casingWantsOut() bool {
	return s.casingToRun() && s.inHole() && s.bha != coring.CasingString
}

// pullOutForCasing leaves a hole that was drilled for casing.
func (s *ship) pullOutForCasing() { s.move(activity.PullFromHole, s.here.Floor) }

// makeUpCasing hangs a string below the ship, joint by joint, under the cone where that comes with it.
func (s *ship) makeUpCasing() {
	c := s.dueCasing()
	joints := math.Ceil(float64(c.To)/s.rateMedian(rig.CasingJointLength) - 1e-9)
	joint := s.Rate(rig.CasingJoint)
	s.awaitForecast(s.waveLimitOf(activity.PipeHandling), joints*joint)
	if c.By != plan.InADrilledHole {
		s.do(activity.MakeUpCasing, s.Rate(rig.ConeMakeUp))
	}
	s.doInUnits(activity.MakeUpCasing, joints*joint, joint)
	if c.By != plan.InADrilledHole { // the assembly that jets or drills it in hangs inside
		s.do(activity.MakeUpBHA, s.Rate(rig.RotaryMakeUp))
	}
	if s.ended != goingOn {
		return
	}
	s.tryOut()
	s.bha, s.rotating, s.bitLife = coring.CasingString, 0, 0
	s.bit = min(float64(c.To), s.clear())
}

func (s *ship) casingHangs() bool { return s.bha == coring.CasingString }

func (s *ship) conesDue() bool { return !s.hole.open && s.casingHangs() }

// setCone brings the first string in together with its cone.
func (s *ship) setCone() {
	c := s.dueCasing()
	if s.offset {
		s.do(activity.OffsetMove, s.Rate(rig.OffsetMove))
	}
	s.do(activity.TopDrive, s.Rate(rig.TopDrive))
	if c.By == plan.Jetted {
		s.do(activity.JetCasing, float64(c.To)/s.Rate(rig.Jetting))
	} else {
		s.drillInCasing(float64(c.To))
	}
	s.do(activity.CameraRun, 2*s.here.Floor/s.Rate(rig.CameraSpeed)) // how it stands is looked at before it is let go
	s.land()
	if s.ended != goingOn {
		return
	}
	s.offset = false
	s.sites[s.siteNumber()].floorKnown = true
	s.hole.open, s.hole.funnel, s.hole.depth = true, true, float64(c.To)
	log := &s.items[s.item.Number]
	log.holes++
	log.depth = max(log.depth, s.hole.depth)
	s.markDepth()
	s.consumed[statistics.Cones]++
	s.stands(c)
}

// drillInCasing drills casing in through the layers.
func (s *ship) drillInCasing(to float64) {
	pace := s.Rate(rig.DrillInPace)
	for from := 0.0; from < to && s.ended == goingOn; {
		i := s.layer(from)
		next := to
		if bottom := s.here.Layers[i].Bottom * s.layerDepth; i < len(s.here.Layers)-1 {
			next = min(to, bottom)
		}
		s.do(activity.DrillInCasing, (next-from)/(s.Draw(s.here.Layers[i].Ahead)*pace))
		from = next
	}
}

func (s *ship) casingAtTheHole() bool { return s.casingHangs() && s.hole.open && s.inHole() }

// landCasing lowers a string into the hole that was drilled for it, hangs it in the one around it and cements it.
func (s *ship) landCasing() {
	c := s.dueCasing()
	s.goDown(s.here.Floor + float64(c.To))
	s.land()
	if c.Cemented {
		s.do(activity.CementCasing, s.Rate(rig.CasingCement))
	}
	if s.ended == goingOn {
		s.stands(c)
	}
}

// land hangs and releases the string. A hanger now and then does not land or let go.
func (s *ship) land() {
	takes := s.Rate(rig.CasingLanding)
	s.awaitForecast(s.waveLimitOf(activity.Logging), takes)
	s.do(activity.LandCasing, takes)
	if s.ended == goingOn && !s.v.Plan.NoTrouble && s.Happens(rig.HangerFailure) {
		s.do(activity.HangerTrouble, s.Rate(rig.HangerTime))
	}
}

// stands notes that a string stands: what is behind it no longer falls in, and the running tool comes up from the sea floor.
func (s *ship) stands(c *plan.Casing) {
	h := &s.hole
	h.cased = cased{strings: h.cased.strings + 1, shoe: float64(c.To), plug: c.Cemented, hard: s.clock}
	if c.Cemented {
		h.cased.hard += s.Rate(rig.CementSetting)
		s.consumed[statistics.CasingCements]++
	}
	h.openedAt = s.clock
	h.aim = max(h.aim, s.drilledFor())
	s.consumed[statistics.CasingJoints] += int(math.Ceil(float64(c.To)/s.rateMedian(rig.CasingJointLength) - 1e-9))
	s.bha, s.bit = coring.RunningTool, s.here.Floor
}

// shoeDue: the bit is in the hole to go on below casing that is still closed.
func (s *ship) shoeDue() bool {
	return s.hole.cased.plug && s.inHole() && s.bha != coring.RunningTool
}

// drillShoe waits until the cement is hard and drills it out.
func (s *ship) drillShoe() {
	s.goDown(s.here.Floor + s.hole.cased.shoe)
	s.do(activity.WaitForCement, s.hole.cased.hard-s.clock)
	turned := s.do(activity.DrillShoe, s.Rate(rig.ShoeDrilling))
	s.rotating += turned
	if s.ended == goingOn {
		s.hole.cased.plug = false
	}
}

// takesCasing takes up how far the casing of the hole in hand is.
func (s *ship) takesCasing(x *Start) {
	is := &x.ship.Hole.Cased
	if s.hole.cased.strings = is.Strings; is.Strings > 0 {
		s.hole.cased.shoe = float64(s.planned().Casing[is.Strings-1].To)
		if s.hole.cased.plug = is.Plug; is.Plug {
			s.hole.cased.hard = x.since(is.Cemented) + s.Rate(rig.CementSetting)
		}
	}
	s.hole.aim = s.drilledFor()
}
