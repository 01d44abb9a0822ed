package sim

import (
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// estimates is what the crew reckons with: the time of each item from a run of the plan in which
// every draw is even, the sea is calm and nothing goes wrong.
type estimates struct {
	item []float64 // s
	leg  [][]float64
}

// contingency is what the crew adds to a calm estimate for sea and trouble [common practice].
const contingency = 1.1

// reckon makes the crew's estimates.
func reckon(v *voyage.Voyage) *estimates {
	s := newShip(v)
	e := &estimates{leg: make([][]float64, len(v.Legs))}
	speed := v.Quantities[rig.SailingSpeed].At(spread.Score(0.1)) // the slow one in ten: port must be reached in time
	for from := range v.Legs {
		for to := range v.Legs[from] {
			e.leg[from] = append(e.leg[from], v.Legs[from][to].Distance/speed)
		}
	}
	s.begins(0, 0)
	s.median, s.sea.calm = true, true
	s.everything = true
	s.sails()
	for i := range s.items {
		e.item = append(e.item, s.items[i].took*contingency)
	}
	return e
}

// trust is the weight of the estimates against what the crew has seen, s of finished items: after
// five days of work the two count alike [from memory].
const trust = 5 * 86400

// learn compares a finished item with its estimate.
func (s *ship) learn(log *itemLog) {
	if s.guess == nil || log.incomplete {
		return
	}
	s.reckoned += s.guess.item[s.item.Number]
	s.seen += log.took
}

// reckons is the crew's estimate of an item now, s.
func (s *ship) reckons(i *voyage.Item) float64 {
	return s.guess.item[i.Number] * (trust + s.seen) / (trust + s.reckoned)
}

// homeTime is the crew's estimate of the passage from a place to the last port, s.
func (s *ship) homeTime(from voyage.Place) float64 {
	return s.guess.leg[from][voyage.ToPort]*contingency + s.rateMedian(rig.Pilotage)
}

// leaveTime is the crew's estimate from now until the ship is under way, s.
func (s *ship) leaveTime() float64 {
	stand, floor := s.rateMedian(rig.StandLength), s.here.Floor
	t := s.rateMedian(rig.Securing)
	if s.bit > 0 {
		t += min(s.bit, floor)/stand/s.rateMedian(rig.Tripping) + s.rateMedian(rig.LayDown)
	}
	if s.inHole() {
		t += s.moveTime(s.bit-floor) + s.rateMedian(rig.TopDrive) + s.rateMedian(rig.HeavyMud)
	}
	return t * contingency
}

// nextTakes is the crew's estimate of the next operation in a hole, s: a core, or a logging run.
func (s *ship) nextTakes() float64 {
	h := s.planned()
	if s.hole.depth < s.hole.aim {
		layer := &s.here.Layers[s.layer(s.hole.depth)]
		return (s.hole.aim-s.hole.depth)/s.v.Quantities[layer.Ahead].At(0) + s.cycleTime(coring.APC)
	}
	if s.hole.stage < len(h.Stages) {
		return s.cycleTime(s.tool())
	}
	t := s.rateMedian(rig.LoggingRigUp) + s.rateMedian(rig.LoggingRigDown) + 2*s.bottom()/s.rateMedian(rig.LoggingWire) +
		s.hole.depth/s.rateMedian(rig.LoggingSpeed)
	if s.hole.logged < len(h.Logging) && s.v.Plan.Ship.Strings[h.Logging[s.hole.logged]].Seismic {
		stations := s.rateMedian(rig.SeismicStations)
		t += s.daylightWait(stations) + s.rateMedian(rig.MammalWatch) + stations
	}
	return t
}

// cycleTime is the crew's estimate of a core with a tool at the present depth, s.
func (s *ship) cycleTime(t coring.Tool) float64 {
	if t.Piston() {
		return 2*s.bottom()/s.rateMedian(rig.PistonWire) + s.rateMedian(rig.Shot) + s.rateMedian(handling[t]) + s.rateMedian(rig.Connection)
	}
	layer := &s.here.Layers[s.layer(s.hole.depth)]
	return 3*s.bottom()/s.rateMedian(rotatedWire(t)) + float64(t.Stroke())/s.v.Quantities[layer.Rate].At(0) +
		s.rateMedian(handling[t]) + s.rateMedian(rig.Connection)
}
