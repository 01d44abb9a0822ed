package sim

import (
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// CrewEstimates is what the crew estimates with: the time of each item from a run of the plan in which
// every draw is the median, the sea is calm and nothing goes wrong.
type CrewEstimates struct {
	Item    []float64 // s
	leaving []float64 // s of these after the item is done, to get under way: of the last one of a site
	Leg     [][]float64
}

// Contingency is what the crew adds to a calm estimate for sea and trouble [common practice].
const Contingency = 1.1

// EstimateByCrew makes the crew's estimates.
func EstimateByCrew(v *voyage.Voyage) *CrewEstimates {
	s := newShip(v)
	e := &CrewEstimates{Leg: make([][]float64, len(v.Legs))}
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
	for i := range s.items {
		e.Item = append(e.Item, s.items[i].took*Contingency)
		e.leaving = append(e.leaving, s.items[i].leaving*Contingency)
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
func (s *ship) learn(log *itemRecord) {
	if s.crew == nil || log.incomplete {
		return
	}
	s.plannedTime += s.crew.Item[s.item.Number] - s.crew.leaving[s.item.Number]
	s.actualTime += log.took
}

// crewEstimate is the crew's estimate of an item now, s.
func (s *ship) crewEstimate(i *voyage.Item) float64 {
	return s.crew.Item[i.Number] * (trust + s.actualTime) / (trust + s.plannedTime)
}

// passageTime is the crew's estimate of the passage from where the ship is to a site, s.
func (s *ship) passageTime(to voyage.Place) float64 {
	t := s.crew.Leg[s.at][to] * Contingency
	if s.at == voyage.FromPort {
		t += s.rateMedian(rig.Pilotage)
	}
	return t
}

// homeTime is the crew's estimate of the passage from a place to the last port, s.
func (s *ship) homeTime(from voyage.Place) float64 {
	return s.crew.Leg[from][voyage.ToPort]*Contingency + s.rateMedian(rig.Pilotage) + s.rateMedian(rig.HomeReserve)
}

// leaveTime is the crew's estimate from now until the ship is under way, s.
func (s *ship) leaveTime() float64 {
	stand, floor := s.rateMedian(rig.StandLength), s.here.Floor
	var t float64
	if s.bit > 0 {
		t += min(s.bit, floor)/stand/s.rateMedian(rig.Tripping) + s.rateMedian(rig.LayDown)
	}
	if s.inHole() {
		t += s.moveTime(s.bit-floor) + s.rateMedian(rig.TopDrive) + s.fillTime()
	}
	return (s.withOther(t) + s.rateMedian(rig.Securing)) * Contingency
}

// fillTime is the crew's estimate of filling or plugging the hole in hand, s.
func (s *ship) fillTime() float64 {
	switch s.planned().Abandon {
	case plan.HeavyMud:
		return s.rateMedian(rig.HeavyMud)
	case plan.Cement:
		return s.rateMedian(rig.CementPlug)
	}
	return 0
}

// backTime is the crew's estimate from now until the bit is where it works again, and of pulling it out
// from there beyond what leaveTime has, s.
func (s *ship) backTime() float64 {
	floor := s.here.Floor
	t := 2 * s.moveTime(s.bottom()-max(s.bit, floor))
	if s.bit < s.clear()-0.1 {
		t += 2*(floor-s.bit)/s.rateMedian(rig.StandLength)/s.rateMedian(rig.Tripping) + s.rateMedian(rig.TopDrive)
		if s.bit == 0 {
			t += s.rateMedian(rig.PistonMakeUp) + s.rateMedian(rig.LayDown)
		}
	}
	if s.hole.open && s.bit < floor {
		t += s.rateMedian(rig.FirstStab) + 2*floor/s.rateMedian(rig.CameraSpeed)
	}
	if !s.inHole() {
		t += s.rateMedian(rig.TopDrive) + s.fillTime()
	}
	return s.withOther(t)
}

// nextTakes is the crew's estimate of the next operation in a hole, s: a core, or a logging run.
func (s *ship) nextTakes() float64 {
	if s.hole.hungLogging {
		return s.operationTakes()
	}
	return s.operationTakes() + s.backTime()
}

func (s *ship) operationTakes() float64 {
	h := s.planned()
	if s.hole.depth < s.hole.aim {
		layer := &s.here.Layers[s.layer(s.hole.depth)]
		return s.withOther((s.hole.aim-s.hole.depth)/s.v.Quantities[layer.Ahead].Median) + (s.hole.aim-s.hole.depth)/s.rateMedian(rig.JointLength)*s.rateMedian(rig.Connection) + s.cycleTime(coring.APC)
	}
	if s.hole.stage < len(h.Stages) {
		return s.cycleTime(s.tool())
	}
	t := s.rateMedian(rig.LoggingRigUp) + s.rateMedian(rig.LoggingRigDown) + 2*s.bottom()/s.rateMedian(rig.LoggingWire) +
		s.hole.depth/s.rateMedian(rig.LoggingSpeed)
	if !s.hole.conditioned {
		t += s.rateMedian(rig.HoleConditioning) + s.rateMedian(rig.BitRelease) + 2*s.moveTime(s.bottom()-s.loggingDepth())
	}
	if s.hole.logged < len(h.Logging) && s.v.Plan.Ship.Strings[h.Logging[s.hole.logged]].Seismic {
		stations := s.rateMedian(rig.SeismicStations)
		t += s.daylightWait(stations) + s.rateMedian(rig.MammalWatch) + stations
	}
	return t
}

// Estimate sails the whole programme of the primary sites once, with every draw at its median, in a
// calm sea, without trouble: a quick estimate to hold against the days there are. It is no
// forecast: half of all expeditions take longer than even a estimate with the sea in it.
func Estimate(v *voyage.Voyage) voyage.QuickEstimate {
	s := newShip(v)
	s.beginsEvenly()
	s.sails()
	r := voyage.QuickEstimate{Total: unit.Duration(s.clock), Home: s.home}
	for i := range s.items {
		r.Items = append(r.Items, unit.Duration(s.items[i].took))
	}
	for i := range s.sites {
		r.Arrives = append(r.Arrives, unit.Duration(s.sites[i].arrived))
		r.Leaves = append(r.Leaves, unit.Duration(s.sites[i].left))
	}
	return r
}
