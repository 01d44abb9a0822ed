package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// pullOutForCasing leaves a hole that was drilled for casing.
func (s *expedition) pullOutForCasing() { s.Move(activity.PullFromHole, s.Here.Floor) }

// makeUpCasing hangs a string below the ship, joint by joint, under the cone where that comes with it.
func (s *expedition) makeUpCasing() {
	c := s.DueCasing()
	joints := math.Ceil(float64(c.To)/s.RateMedian(rig.CasingJointLength) - 1e-9)
	joint := s.Rate(rig.CasingJoint)
	s.awaitForecast(s.WaveLimitOf(activity.PipeHandling), joints*joint)
	if c.By != plan.InADrilledHole {
		s.Do(activity.MakeUpCasing, s.Rate(rig.ConeMakeUp))
	}
	s.DoInUnits(activity.MakeUpCasing, joints*joint, joint)
	if c.By != plan.InADrilledHole { // the assembly that jets or drills it in hangs inside
		s.Do(activity.MakeUpBHA, s.Rate(rig.RotaryMakeUp))
	}
	if s.Ended != ship.GoingOn {
		return
	}
	s.tryOut()
	s.BHA, s.Rotating, s.BitLife = coring.CasingString, 0, 0
	s.Bit = min(float64(c.To), s.Clear())
}

func (s *expedition) conesDue() bool { return !s.Hole.Open && s.CasingHangs() }

// setCone brings the first string in together with its cone.
func (s *expedition) setCone() {
	c := s.DueCasing()
	if s.Offset {
		s.Do(activity.OffsetMove, s.Rate(rig.OffsetMove))
	}
	s.Do(activity.TopDrive, s.Rate(rig.TopDrive))
	if c.By == plan.Jetted {
		s.Do(activity.JetCasing, float64(c.To)/s.Rate(rig.Jetting))
	} else {
		s.drillInCasing(float64(c.To))
	}
	s.Do(activity.CameraRun, 2*s.Here.Floor/s.Rate(rig.CameraSpeed)) // how it stands is looked at before it is let go
	s.land()
	if s.Ended != ship.GoingOn {
		return
	}
	s.Offset = false
	s.Sites[s.SiteNumber()].FloorKnown = true
	s.Hole.Open, s.Hole.Funnel, s.Hole.Depth = true, true, float64(c.To)
	log := &s.Items[s.Item.Number]
	log.Holes++
	log.Depth = max(log.Depth, s.Hole.Depth)
	s.MarkDepth()
	s.Consumed[statistics.Cones]++
	s.stands(c)
}

// drillInCasing drills casing in through the layers.
func (s *expedition) drillInCasing(to float64) {
	pace := s.Rate(rig.DrillInPace)
	for from := 0.0; from < to && s.Ended == ship.GoingOn; {
		i := s.Layer(from)
		next := to
		if bottom := s.Here.Layers[i].Bottom * s.LayerDepth; i < len(s.Here.Layers)-1 {
			next = min(to, bottom)
		}
		s.Do(activity.DrillInCasing, (next-from)/(s.Draw(s.Here.Layers[i].Ahead)*pace))
		from = next
	}
}

func (s *expedition) casingAtTheHole() bool { return s.CasingHangs() && s.Hole.Open && s.InHole() }

// landCasing lowers a string into the hole that was drilled for it, hangs it in the one around it and cements it.
func (s *expedition) landCasing() {
	c := s.DueCasing()
	s.goDown(s.Here.Floor + float64(c.To))
	s.land()
	if c.Cemented {
		s.Do(activity.CementCasing, s.Rate(rig.CasingCement))
	}
	if s.Ended == ship.GoingOn {
		s.stands(c)
	}
}

// land hangs and releases the string. A hanger now and then does not land or let go.
func (s *expedition) land() {
	takes := s.Rate(rig.CasingLanding)
	s.awaitForecast(s.WaveLimitOf(activity.Logging), takes)
	s.Do(activity.LandCasing, takes)
	if s.Ended == ship.GoingOn && !s.Voyage.Plan.NoTrouble && s.Happens(rig.HangerFailure) {
		s.Do(activity.HangerTrouble, s.Rate(rig.HangerTime))
	}
}

// stands notes that a string stands: what is behind it no longer falls in, and the running tool comes up from the sea floor.
func (s *expedition) stands(c *plan.Casing) {
	h := &s.Hole
	h.Cased = ship.Cased{Strings: h.Cased.Strings + 1, Shoe: float64(c.To), Plug: c.Cemented, Hard: s.Clock}
	if c.Cemented {
		h.Cased.Hard += s.Rate(rig.CementSetting)
		s.Consumed[statistics.CasingCements]++
	}
	h.OpenedAt = s.Clock
	h.Aim = max(h.Aim, s.DrilledFor())
	s.Consumed[statistics.CasingJoints] += int(math.Ceil(float64(c.To)/s.RateMedian(rig.CasingJointLength) - 1e-9))
	s.BHA, s.Bit = coring.RunningTool, s.Here.Floor
}

// shoeDue: the bit is in the hole to go on below casing that is still closed.
func (s *expedition) shoeDue() bool {
	return s.Hole.Cased.Plug && s.InHole() && s.BHA != coring.RunningTool
}

// drillShoe waits until the cement is hard and drills it out.
func (s *expedition) drillShoe() {
	s.goDown(s.Here.Floor + s.Hole.Cased.Shoe)
	s.Do(activity.WaitForCement, s.Hole.Cased.Hard-s.Clock)
	turned := s.Do(activity.DrillShoe, s.Rate(rig.ShoeDrilling))
	s.Rotating += turned
	if s.Ended == ship.GoingOn {
		s.Hole.Cased.Plug = false
	}
}

// takesCasing takes up how far the casing of the hole in hand is.
func (s *expedition) takesCasing(x *Start) {
	is := &x.ship.Hole.Cased
	if s.Hole.Cased.Strings = is.Strings; is.Strings > 0 {
		s.Hole.Cased.Shoe = float64(s.Planned().Casing[is.Strings-1].To)
		if s.Hole.Cased.Plug = is.Plug; is.Plug {
			s.Hole.Cased.Hard = x.since(is.Cemented) + s.Rate(rig.CementSetting)
		}
	}
	s.Hole.Aim = s.DrilledFor()
}
