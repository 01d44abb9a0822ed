package sim

import (
	"coredays/model/rig"
)

// step is a line of the operations plan: when the state is so, this is what is done.
type step struct {
	name string
	when func(*expedition) bool
	do   func(*expedition)
}

// The steps of each part of the work, in the order of an operations plan. The first whose condition holds is carried out.
var (
	// Nothing is in hand: the ship leaves for where she goes next.
	toLeave = []step{
		{"recover the pipe", (*expedition).pipeNotWanted, (*expedition).recoverPipe},
		{"do other work", (*expedition).otherWorkDue, (*expedition).doOtherWork},
		{"secure for sea", (*expedition).leavingStation, (*expedition).secure},
		{"sail on", always, (*expedition).sail},
	}
	// Something is in hand: the ship holds her position, and the rig is looked after.
	onSite = []step{
		{"do other work", (*expedition).otherWorkDue, (*expedition).doOtherWork},
		{"wait for the date", (*expedition).tooEarly, (*expedition).awaitDate},
		{"take station", (*expedition).notOnStation, (*expedition).takeStation},
		{"service the rig", (*expedition).serviceDue, (*expedition).serviceRig},
		{"slip and cut", (*expedition).lineWorn, (*expedition).slipAndCut},
	}
	// Then the task in hand is done,
	forTask = []step{
		{"recover the pipe for the task", (*expedition).taskWantsNoPipe, (*expedition).recoverPipe},
		{"make up a BHA for the task", (*expedition).taskWantsBHA, (*expedition).makeUpBHA},
		{"run pipe for the task", (*expedition).taskWantsPipe, (*expedition).runPipe},
		{"do the task", always, (*expedition).doTask},
	}
	// or the hole.
	forHole = []step{
		{"give up a lost hole", (*expedition).holeIsLost, (*expedition).giveUpHole},
		{"end the hole by rule", (*expedition).endsByRule, (*expedition).endByRule},
		{"leave the hole", (*expedition).holeFinished, (*expedition).leaveHole},
		{"the hole is cased", (*expedition).CasedIsAll, (*expedition).completeHole},
		{"pull out for casing", (*expedition).CasingWantsOut, (*expedition).pullOutForCasing},
		{"lay down the wrong BHA", (*expedition).wrongBHA, (*expedition).recoverPipe},
		{"make up the BHA", (*expedition).noBHA, (*expedition).makeUpBHA},
		{"run pipe to the sea floor", (*expedition).bitHigh, (*expedition).runPipe},
		{"set the cone", (*expedition).conesDue, (*expedition).setCone},
		{"spud", (*expedition).notOpen, (*expedition).spud},
		{"find the hole again", (*expedition).outOfHole, (*expedition).reenter},
		{"land the casing", (*expedition).casingAtTheHole, (*expedition).landCasing},
		{"change the bit", (*expedition).bitWorn, (*expedition).changeBit},
		{"drill out the shoe", (*expedition).shoeDue, (*expedition).drillShoe},
		{"drill down", (*expedition).drillingDue, (*expedition).drillDown},
		{"run to the bottom", (*expedition).offBottom, (*expedition).runToBottom},
		{"run the penetrometer", (*expedition).penetrometerDue, (*expedition).runPenetrometer},
		{"take a core", (*expedition).coringDue, (*expedition).core},
		{"log", (*expedition).LoggingDue, (*expedition).logWireline},
		{"the hole is complete", always, (*expedition).completeHole},
	}
)

// parts are the parts of the work that now have a say, one after the other.
func (s *expedition) parts() [2][]step {
	switch {
	case s.Item == nil:
		return [2][]step{toLeave}
	case s.Item.Task != nil:
		return [2][]step{onSite, forTask}
	}
	return [2][]step{onSite, forHole}
}

// nextStep is the first step whose condition holds.
func (s *expedition) nextStep() *step {
	for _, part := range s.parts() {
		for i := range part {
			if part[i].when(s) {
				return &part[i]
			}
		}
	}
	return nil
}

func always(*expedition) bool { return true }

func (s *expedition) leavingStation() bool { return s.Positioned && s.Bit == 0 }

// pipeNotWanted: the site is left with all pipe on deck, unless the next one is reached with pipe
// hanging.
func (s *expedition) pipeNotWanted() bool { return s.Bit > 0 && !s.movesHanging() }

// notOnStation: to leave a hole that is finished the ship need not come back to it.
func (s *expedition) notOnStation() bool { return !s.Positioned && !s.Hole.Finished }

func (s *expedition) serviceDue() bool {
	every := s.RateMedian(rig.RigServiceEvery)
	return every > 0 && s.Clock-s.LastService >= every && s.RateMedian(rig.RigService) > 0
}

func (s *expedition) lineWorn() bool {
	most := s.RateMedian(rig.LineWork)
	return most > 0 && s.LineWork >= most
}

func (s *expedition) holeIsLost() bool { return s.Hole.Lost }

func (s *expedition) holeFinished() bool { return s.Hole.Finished }

func (s *expedition) wrongBHA() bool { return s.Bit > 0 && s.BHA != s.Assembly() }

func (s *expedition) noBHA() bool { return s.BHA != s.Assembly() }

func (s *expedition) bitHigh() bool { return s.Bit < s.Clear()-0.1 }

func (s *expedition) notOpen() bool { return !s.Hole.Open }

func (s *expedition) outOfHole() bool { return s.Hole.Open && s.Bit < s.Here.Floor && !s.bitWorn() }

func (s *expedition) drillingDue() bool {
	return s.AheadLeft() && s.onBottom()
}

func (s *expedition) bitWorn() bool {
	return s.BHA.Of().Bit && s.BitLife > 0 && s.Rotating >= s.BitLife && (s.AheadLeft() || s.CoringLeft())
}

// onBottom reports whether the bit is at the bottom of the hole, to a decimetre.
func (s *expedition) onBottom() bool { return s.Bit >= s.Bottom()-0.1 }

func (s *expedition) offBottom() bool {
	return !s.onBottom() && !s.Hole.HungLogging && (s.AheadLeft() || s.CoringLeft())
}

func (s *expedition) penetrometerDue() bool {
	at := s.Planned().Penetrometer
	return s.Hole.Probes < len(at) && s.Hole.Depth >= float64(at[s.Hole.Probes]) && s.onBottom() && !s.Hole.Conditioned
}

func (s *expedition) coringDue() bool { return s.CoringLeft() }

// tooEarly reports whether the ship must wait for the site's first date. The crew's estimates leave that
// out: it depends on when she comes.
func (s *expedition) tooEarly() bool {
	return s.Here != nil && !s.Median && !s.Positioned && s.Clock < s.Opens(s.SiteNumber())-1
}
