package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/sim/statistics"
)

// core takes one core with the tool of the stage.
func (s *ship) core() {
	t := s.tool()
	operations[t.Of().Cut](s, t)
}

// coreRotated takes one core with the extended or the rotary barrel: it falls and is pumped down,
// cuts, and the overshot fetches it.
func (s *ship) coreRotated(tool coring.Tool) {
	is := tool.Of()
	pace, wire := s.Rate(is.DurationFactor), s.Rate(is.Wire)
	way := s.bit / wire * pace
	rate := s.Draw(s.here.Layers[s.layer(s.hole.depth)].Rate) * s.deepDown(tool) * s.weighted() * s.shoed(tool)
	length := min(s.stroke(tool, s.Rate), s.toGo())
	slow := is.LeastRate != coring.NoRate && rate < s.rateMedian(is.LeastRate)
	if slow {
		length = min(length, rate*patience)
	}
	s.awaitBarrel()
	s.do(activity.DropBarrel, way)
	s.cut(length / rate)
	s.do(activity.FetchBarrel, 2*way)
	s.awaitCatwalk()
	s.do(activity.HandleBarrel, s.Rate(is.Handling)*pace)
	if s.ended != goingOn {
		return
	}
	from := s.hole.depth
	s.deepen(length)
	s.recordCore(tool, from, length, s.recovers(tool, from))
	s.connect(from, s.hole.depth)
	s.sweep(tool)
	s.meetTrouble(tool)
	s.meetStuckPipe()
	s.judgeSlowness(slow)
}

// patience is how long a crew cuts with a barrel that makes no way, s [judgement].
const patience = 2 * 3600

// judgeSlowness gives a barrel up after two cores in a row slower than its least rate:
// the rest of the stage is for another tool and another hole.
func (s *ship) judgeSlowness(slow bool) {
	if !slow {
		s.hole.slow = 0
		return
	}
	s.hole.slow++
	if s.hole.slow < 2 {
		return
	}
	if s.hole.stage == len(s.stages())-1 && s.toGo() > shortest {
		s.items[s.item.Number].incomplete = true
	}
	s.nextStage()
}

// cut rotates for so many seconds; a rotary bit wears.
func (s *ship) cut(takes float64) {
	s.rotating += s.do(activity.CutCore, takes) * s.wear()
}

// sweep pumps mud around after every few cores of a tool that makes cuttings.
func (s *ship) sweep(t coring.Tool) {
	if !t.Has(coring.Swept) {
		return
	}
	s.hole.sweeps++
	if s.hole.sweeps >= int(s.rateMedian(rig.CoresBetweenSweeps)+0.5) {
		s.hole.sweeps = 0
		s.do(activity.Sweep, s.Rate(rig.Sweep))
		s.consumed[statistics.MudSweeps]++
	}
}

// stroke is how long the next core becomes where the hole has room for it: as long as the plan says, as the tool usually
// makes it, or the stroke of the tool, m. figure gives a rate of the ship: drawn for a core, the median for the crew's estimate.
func (s *ship) stroke(t coring.Tool, figure func(rig.Rate) float64) float64 {
	if stated := s.stages()[s.hole.stage].Advance; stated > 0 {
		return float64(stated)
	}
	if is := t.Of(); is.Advance != coring.NoRate {
		return figure(is.Advance)
	}
	return float64(t.Stroke())
}

// toGo is what is left of the stage, m.
func (s *ship) toGo() float64 { return float64(s.stages()[s.hole.stage].To) - s.hole.depth }
