package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// core takes one core with the tool of the stage.
func (s *expedition) core() {
	t := s.Tool()
	operations[t.Of().Cut](s, t)
}

// coreRotated takes one core with the extended or the rotary barrel: it falls and is pumped down,
// cuts, and the overshot fetches it.
func (s *expedition) coreRotated(tool coring.Tool) {
	is := tool.Of()
	pace, wire := s.Rate(is.DurationFactor), s.Rate(is.Wire)
	way := s.Bit / wire * pace
	rate := s.Draw(s.Here.Layers[s.Layer(s.Hole.Depth)].Rate) * s.DeepDown(tool) * s.Weighted() * s.Shoed(tool)
	length := min(s.Stroke(tool, s.Rate), s.ToGo())
	slow := is.LeastRate != coring.NoRate && rate < s.RateMedian(is.LeastRate)
	if slow {
		length = min(length, rate*patience)
	}
	s.AwaitBarrel()
	s.Do(activity.DropBarrel, way)
	s.cut(length / rate)
	s.Do(activity.FetchBarrel, 2*way)
	s.AwaitCatwalk()
	s.Do(activity.HandleBarrel, s.Rate(is.Handling)*pace)
	if s.Ended != ship.GoingOn {
		return
	}
	from := s.Hole.Depth
	s.deepen(length)
	s.RecordCore(tool, from, length, s.Recovers(tool, from))
	s.connect(from, s.Hole.Depth)
	s.sweep(tool)
	s.MeetTrouble(tool)
	s.MeetStuckPipe()
	s.judgeSlowness(slow)
}

// patience is how long a crew cuts with a barrel that makes no way, s [judgement].
const patience = 2 * 3600

// judgeSlowness gives a barrel up after two cores in a row slower than its least rate:
// the rest of the stage is for another tool and another hole.
func (s *expedition) judgeSlowness(slow bool) {
	if !slow {
		s.Hole.Slow = 0
		return
	}
	s.Hole.Slow++
	if s.Hole.Slow < 2 {
		return
	}
	if s.Hole.Stage == len(s.Stages())-1 && s.ToGo() > ship.Shortest {
		s.Items[s.Item.Number].Incomplete = true
	}
	s.NextStage()
}

// cut rotates for so many seconds; a rotary bit wears.
func (s *expedition) cut(takes float64) {
	s.Rotating += s.Do(activity.CutCore, takes) * s.Wear()
}

// sweep pumps mud around after every few cores of a tool that makes cuttings.
func (s *expedition) sweep(t coring.Tool) {
	if !t.Has(coring.Swept) {
		return
	}
	s.Hole.Sweeps++
	if s.Hole.Sweeps >= int(s.RateMedian(rig.CoresBetweenSweeps)+0.5) {
		s.Hole.Sweeps = 0
		s.Do(activity.Sweep, s.Rate(rig.Sweep))
		s.Consumed[statistics.MudSweeps]++
	}
}

// operations take one core.
var operations [coring.Cuts]func(s *expedition, t coring.Tool) = [...]func(s *expedition, t coring.Tool){
	coring.Shot:    (*expedition).corePiston,
	coring.Rotated: (*expedition).coreRotated,
}
