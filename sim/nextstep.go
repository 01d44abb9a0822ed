package sim

import (
	"coredays/model/rig"
)

// step is a line of the operations plan: when the state is so, this is what is done.
type step struct {
	name string
	when func(*ship) bool
	do   func(*ship)
}

// steps in the order of an operations plan. The first whose condition holds is carried out.
var steps = []step{
	{"recover the pipe", (*ship).pipeNotWanted, (*ship).recoverPipe},
	{"do other work", (*ship).otherWorkDue, (*ship).doOtherWork},
	{"secure for sea", (*ship).leavingStation, (*ship).secure},
	{"sail on", (*ship).leaving, (*ship).sail},
	{"wait for the date", (*ship).tooEarly, (*ship).awaitDate},
	{"take station", (*ship).notOnStation, (*ship).takeStation},
	{"service the rig", (*ship).serviceDue, (*ship).serviceRig},
	{"slip and cut", (*ship).lineWorn, (*ship).slipAndCut},
	{"recover the pipe for the task", (*ship).taskWantsNoPipe, (*ship).recoverPipe},
	{"make up a BHA for the task", (*ship).taskWantsBHA, (*ship).makeUpBHA},
	{"run pipe for the task", (*ship).taskWantsPipe, (*ship).runPipe},
	{"do the task", (*ship).taskInHand, (*ship).doTask},
	{"give up a lost hole", (*ship).holeIsLost, (*ship).giveUpHole},
	{"end the hole by rule", (*ship).endsByRule, (*ship).endByRule},
	{"leave the hole", (*ship).holeFinished, (*ship).leaveHole},
	{"the hole is cased", (*ship).casedIsAll, (*ship).completeHole},
	{"pull out for casing", (*ship).casingWantsOut, (*ship).pullOutForCasing},
	{"lay down the wrong BHA", (*ship).wrongBHA, (*ship).recoverPipe},
	{"make up the BHA", (*ship).noBHA, (*ship).makeUpBHA},
	{"run pipe to the sea floor", (*ship).bitHigh, (*ship).runPipe},
	{"set the cone", (*ship).conesDue, (*ship).setCone},
	{"spud", (*ship).notOpen, (*ship).spud},
	{"find the hole again", (*ship).outOfHole, (*ship).reenter},
	{"land the casing", (*ship).casingAtTheHole, (*ship).landCasing},
	{"change the bit", (*ship).bitWorn, (*ship).changeBit},
	{"drill out the shoe", (*ship).shoeDue, (*ship).drillShoe},
	{"drill down", (*ship).drillingDue, (*ship).drillDown},
	{"run to the bottom", (*ship).offBottom, (*ship).runToBottom},
	{"run the penetrometer", (*ship).penetrometerDue, (*ship).runPenetrometer},
	{"take a core", (*ship).coringDue, (*ship).core},
	{"log", (*ship).loggingDue, (*ship).logWireline},
	{"the hole is complete", always, (*ship).completeHole},
}

// nextStep is the rule that applies.
func (s *ship) nextStep() *step {
	for i := range steps {
		if steps[i].when(s) {
			return &steps[i]
		}
	}
	return nil
}

func always(*ship) bool { return true }

func (s *ship) leaving() bool { return s.item == nil }

func (s *ship) leavingStation() bool { return s.item == nil && s.positioned && s.bit == 0 }

// pipeNotWanted: the site is left with all pipe on deck, unless the next one is reached with pipe
// hanging.
func (s *ship) pipeNotWanted() bool { return s.item == nil && s.bit > 0 && !s.movesHanging() }

// notOnStation: to leave a hole that is finished the ship need not come back to it.
func (s *ship) notOnStation() bool { return !s.positioned && !s.hole.finished }

func (s *ship) serviceDue() bool {
	every := s.rateMedian(rig.RigServiceEvery)
	return every > 0 && s.clock-s.lastService >= every && s.rateMedian(rig.RigService) > 0
}

func (s *ship) lineWorn() bool {
	most := s.rateMedian(rig.LineWork)
	return most > 0 && s.lineWork >= most
}

func (s *ship) taskInHand() bool { return s.item.Task != nil }

func (s *ship) holeIsLost() bool { return s.hole.lost }

func (s *ship) holeFinished() bool { return s.hole.finished }

func (s *ship) wrongBHA() bool { return s.bit > 0 && s.bha != s.assembly() }

func (s *ship) noBHA() bool { return s.bha != s.assembly() }

func (s *ship) bitHigh() bool { return s.bit < s.clear()-0.1 }

func (s *ship) notOpen() bool { return !s.hole.open }

func (s *ship) outOfHole() bool { return s.hole.open && s.bit < s.here.Floor && !s.bitWorn() }

func (s *ship) drillingDue() bool {
	return s.aheadLeft() && s.onBottom()
}

func (s *ship) bitWorn() bool {
	return s.bha.Of().Bit && s.bitLife > 0 && s.rotating >= s.bitLife && (s.aheadLeft() || s.coringLeft())
}

// onBottom reports whether the bit is at the bottom of the hole, to a decimetre.
func (s *ship) onBottom() bool { return s.bit >= s.bottom()-0.1 }

func (s *ship) offBottom() bool {
	return !s.onBottom() && !s.hole.hungLogging && (s.aheadLeft() || s.coringLeft())
}

func (s *ship) penetrometerDue() bool {
	at := s.planned().Penetrometer
	return s.hole.probes < len(at) && s.hole.depth >= float64(at[s.hole.probes]) && s.onBottom() && !s.hole.conditioned
}

func (s *ship) coringDue() bool { return s.coringLeft() }

func (s *ship) loggingDue() bool { return s.hole.logged < len(s.planned().Logging) }
