package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
)

// core takes one core with the tool of the stage.
func (s *ship) core() {
	if s.tool().Piston() {
		s.corePiston()
	} else {
		s.coreRotated()
	}
}

// coreRotated takes one core with the extended or the rotary barrel: it falls and is pumped down,
// cuts, and the overshot fetches it.
func (s *ship) coreRotated() {
	tool := s.tool()
	pace, wire := s.rate(rotatedPace(tool)), s.rate(rotatedWire(tool))
	way := s.bit / wire * pace
	rate := s.draw(s.here.Layers[s.layer(s.hole.depth)].Rate)
	if tool == coring.XCB && rate < s.rateMedian(rig.ExtendedLeastRate) && s.hole.stage+1 < len(s.stages()) {
		s.nextStage()
		return
	}
	length := min(float64(tool.Stroke()), s.toGo())
	s.awaitBarrel()
	s.do(activity.DropBarrel, way)
	s.cut(length / rate)
	s.do(activity.FetchBarrel, 2*way)
	s.awaitCatwalk()
	s.do(activity.HandleBarrel, s.rate(handling[tool])*pace)
	if s.ended != goingOn {
		return
	}
	from := s.hole.depth
	s.deepen(length)
	s.landCore(tool, from, length, s.recovers(tool, from))
	s.connect(from, s.hole.depth)
	s.sweep(tool)
	s.meetTrouble(tool)
	s.meetStuckPipe()
}

// cut rotates for so many seconds; a rotary bit wears.
func (s *ship) cut(takes float64) {
	s.hole.rotating += s.do(activity.CutCore, takes)
}

// sweep pumps mud around after every few rotary cores.
func (s *ship) sweep(t coring.Tool) {
	if t != coring.RCB {
		return
	}
	s.hole.sweeps++
	if s.hole.sweeps >= int(s.rateMedian(rig.CoresBetweenSweeps)+0.5) {
		s.hole.sweeps = 0
		s.do(activity.Sweep, s.rate(rig.Sweep))
		s.used[mudSweeps]++
	}
}

// toGo is what is left of the stage, m.
func (s *ship) toGo() float64 { return float64(s.stages()[s.hole.stage].To) - s.hole.depth }

func rotatedPace(t coring.Tool) rig.Rate {
	if t == coring.RCB {
		return rig.RotaryPace
	}
	return rig.ExtendedPace
}

func rotatedWire(t coring.Tool) rig.Rate {
	if t == coring.RCB {
		return rig.RotaryWire
	}
	return rig.ExtendedWire
}
