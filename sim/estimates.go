package sim

import (
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim/ship"
)

// EstimateByCrew makes the crew's estimates.
func EstimateByCrew(v *voyage.Voyage) *ship.CrewEstimates {
	s := newExpedition(v)
	e := &ship.CrewEstimates{Leg: make([][]float64, len(v.Legs))}
	for from := range v.Legs {
		for to := range v.Legs[from] {
			takes := v.Legs[from][to].Distance / speedTo(v, voyage.Place(from), voyage.Place(to))
			if call := v.Legs[from][to].Call; v.Legs[from][to].Waves != nil && call != voyage.NoQuantity {
				takes += v.Quantities[call].Median
			}
			e.Leg[from] = append(e.Leg[from], takes)
		}
	}
	s.beginsEvenly()
	s.everything = true
	s.sails()
	for i := range s.Items {
		e.Item = append(e.Item, s.Items[i].Took*ship.Contingency)
		e.Leaving = append(e.Leaving, s.Items[i].Leaving*ship.Contingency)
	}
	return e
}

// speedTo is the speed that the crew estimates with on a passage: the slow one in ten, as port must be
// reached in time, in waves that are exceeded three times in ten on the day of sailing.
func speedTo(v *voyage.Voyage, from, to voyage.Place) float64 {
	if from >= voyage.FirstSite && to >= voyage.FirstSite && v.Sites[to-voyage.FirstSite].Hanging {
		return v.Quantities[rig.HangingSpeed].At(spread.Score(0.1))
	}
	speed := v.Quantities[rig.SailingSpeed].At(spread.Score(0.1))
	waves := v.Legs[from][to].Waves
	if waves == nil {
		return speed
	}
	height := waves.Height(v.Plan.Sails.YearDay(), 0.5)
	return speed * v.InWaves(height)
}

// trust is the weight of the estimates against what the crew has seen, s of finished items: after
// five days of work the two count alike [from memory].
const trust = 5 * 86400

// learn compares a finished item with its estimate, both without the way off the site: which item is the
// last there may turn out otherwise than in the estimates.
func (s *expedition) learn(log *ship.ItemRecord) {
	if s.Crew == nil || log.Incomplete {
		return
	}
	s.PlannedTime += s.Crew.Item[s.Item.Number] - s.Crew.Leaving[s.Item.Number]
	s.ActualTime += log.Took
}

// crewEstimate is the crew's estimate of an item now, s.
func (s *expedition) crewEstimate(i *voyage.Item) float64 {
	return s.Crew.Item[i.Number] * (trust + s.ActualTime) / (trust + s.PlannedTime)
}

// passageTime is the crew's estimate of the passage from where the ship is to a site, s.
func (s *expedition) passageTime(to voyage.Place) float64 {
	t := s.Crew.Leg[s.At][to] * ship.Contingency
	if s.At == voyage.FromPort {
		t += s.RateMedian(rig.Pilotage)
	}
	return t
}

// backTime is the crew's estimate from now until the bit is where it works again, and of pulling it out
// from there beyond what LeaveTime has, s.
func (s *expedition) backTime() float64 {
	floor := s.Here.Floor
	t := 2 * s.MoveTime(s.Bottom()-max(s.Bit, floor))
	if s.Bit < s.Clear()-0.1 {
		t += 2*(floor-s.Bit)/s.RateMedian(rig.StandLength)/s.RateMedian(rig.Tripping) + s.RateMedian(rig.TopDrive)
		if s.Bit == 0 {
			t += s.RateMedian(rig.PistonMakeUp) + s.RateMedian(rig.LayDown)
		}
	}
	if s.Hole.Open && s.Bit < floor {
		t += s.RateMedian(rig.FirstStab) + 2*floor/s.RateMedian(rig.CameraSpeed)
	}
	if !s.InHole() {
		t += s.RateMedian(rig.TopDrive) + s.FillTime()
	}
	return s.WithOther(t) + s.washTime()
}

// washTime is the crew's estimate of washing out what lies on the bottom of the hole, or will have fallen in when the string is
// back in it, beyond running pipe that far, s; before a core the wash barrel is fetched.
func (s *expedition) washTime() float64 {
	fill := s.Hole.Fill
	if s.Hole.Open && s.Bit < s.Here.Floor {
		fill = min(max(0, s.Hole.Depth-s.Hole.Cased.Shoe), s.RateMedian(rig.TripFill)*s.Gripping())
	}
	if fill <= 0 {
		return 0
	}
	t := fill/s.RateMedian(rig.WashDown) - s.MoveTime(fill)
	if s.CoringLeft() && !s.AheadLeft() {
		is := s.Tool().Of()
		t += 2*s.Bottom()/s.RateMedian(is.Wire) + s.RateMedian(is.Handling)
	}
	return t
}

// nextTakes is the crew's estimate of the next operation in a hole, s: a core, or a logging run.
func (s *expedition) nextTakes() float64 {
	if s.Hole.HungLogging {
		return s.operationTakes()
	}
	return s.operationTakes() + s.backTime()
}

func (s *expedition) operationTakes() float64 {
	h := s.Planned()
	if s.Hole.Depth < s.Hole.Aim {
		layer := &s.Here.Layers[s.Layer(s.Hole.Depth)]
		return s.WithOther((s.Hole.Aim-s.Hole.Depth)/s.Voyage.Quantities[layer.Ahead].Median) + (s.Hole.Aim-s.Hole.Depth)/s.RateMedian(rig.JointLength)*s.RateMedian(rig.Connection) + s.CycleTime(coring.APC)
	}
	if s.Hole.Stage < len(h.Stages) {
		return s.CycleTime(s.Tool())
	}
	t := s.RateMedian(rig.LoggingRigUp) + s.RateMedian(rig.LoggingRigDown) + 2*s.Bottom()/s.RateMedian(rig.LoggingWire) +
		s.Hole.Depth/s.RateMedian(rig.LoggingSpeed)
	if !s.Hole.Conditioned {
		t += s.RateMedian(rig.HoleConditioning) + s.RateMedian(rig.BitRelease) + 2*s.MoveTime(s.Bottom()-s.loggingDepth())
	}
	if s.Hole.Logged < len(h.Logging) && s.Voyage.Plan.Ship.Strings[h.Logging[s.Hole.Logged]].Seismic {
		stations := s.RateMedian(rig.SeismicStations)
		t += s.daylightWait(stations) + s.RateMedian(rig.MammalWatch) + stations
	}
	return t
}

// Estimate sails the whole programme of the primary sites once, with every draw at its median, in a
// calm sea, without trouble: a quick estimate to hold against the days there are. It is no
// forecast: half of all expeditions take longer than even an estimate with the sea in it.
func Estimate(v *voyage.Voyage) voyage.QuickEstimate {
	s := newExpedition(v)
	s.beginsEvenly()
	s.sails()
	r := voyage.QuickEstimate{Total: unit.Duration(s.Clock), Home: s.Home}
	for i := range s.Items {
		r.Items = append(r.Items, unit.Duration(s.Items[i].Took))
	}
	for i := range s.Sites {
		r.Arrives = append(r.Arrives, unit.Duration(s.Sites[i].Arrived))
		r.Leaves = append(r.Leaves, unit.Duration(s.Sites[i].Left))
	}
	return r
}
