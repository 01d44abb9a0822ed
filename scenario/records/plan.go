package records

import (
	"fmt"
	"math"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/record"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario"
	"coredays/scenario/fault"
)

// Knowledge is how much of a site a hindcast is given.
type Knowledge int

// The levels of knowledge.
const (
	// Programme: of each hole the tools and the depth that each reached. Holes that stopped near the
	// sea floor are left out; the model draws failed starts itself.
	Programme Knowledge = iota
	// Counts: the cores of each tool and the failed holes are known as well.
	Counts
	// Ground: what a programme tells, and the lithology that was described in the cores.
	Ground
)

var knowledgeNames = []string{"programme", "counts", "ground"}

func (k Knowledge) String() string { return knowledgeNames[k] }

// ParseKnowledge reads the name of a level.
func ParseKnowledge(text string) (Knowledge, error) {
	for k, name := range knowledgeNames {
		if name == text {
			return Knowledge(k), nil
		}
	}
	return 0, fmt.Errorf("%q is no level of knowledge: give %s", text, fault.Listed(knowledgeNames))
}

// Plan is a site on record as a plan for the built-in ship: she is there at the place and date of
// the record, does what is known to have been done, and what the model thinks of the rest.
func (u *Unrecorded) Plan(s record.Site, known Knowledge) (*plan.Plan, error) {
	position := s.Holes[0].Position
	climate, err := nearestClimate(position)
	if err != nil {
		return nil, err
	}
	port := plan.Port{Name: "port", Position: position}
	p := &plan.Plan{Title: s.LegName() + " " + s.Name, Sails: s.Start(), SeaDays: longestVisit, From: port, To: port,
		InPort: spread.Just(0), Ship: u.Ship, Order: []int{0}, Begun: !s.First, Reached: s.Reached, LeavesHanging: s.LeftHanging}
	p.Ship.Rates = u.rates(p.Ship.Rates, &s, known)
	p.Sites = []plan.Site{{Name: s.Name, Position: position, WaterDepth: s.Water(), Climate: climate.NearShore(s.Water()), Refusal: neverRefused,
		Layers: u.layers(&s, known), Items: u.items(&s, known)}}
	return p, nil
}

// items are the holes that are known of, each with the work that is not.
func (u *Unrecorded) items(s *record.Site, known Knowledge) (items []plan.Item) {
	bare := isBare(s)
	for i := range s.Holes {
		h := &s.Holes[i]
		if known != Counts && h.FailedStart() {
			continue
		}
		items = append(items, plan.Item{Name: h.Name, Rank: 1, Hole: recordHole(h, known)})
		if w := u.workOf(h, classOf(h, bare)); w.Chance > 0 && !h.FailedStart() {
			takes := spread.Quantity{Shape: w}
			takes.Shares[spread.Expedition], takes.Shares[spread.Run] = u.WithLeg, 1-u.WithLeg
			items = append(items, plan.Item{Name: h.Name + ", work not on record", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: takes, Interruptible: true}}, Kind: "work not on record"}})
		}
	}
	return items
}

// nearestClimate is the sea at a place; where the built-in climate has none, because of ice, that of
// the nearest place with one towards the equator.
func nearestClimate(p geo.Position) (sea.Climate, error) {
	toward := -1.0
	if p.Latitude < 0 {
		toward = 1
	}
	climate, err := sea.BuiltIn(p.Latitude, p.Longitude)
	for shift := 1.0; err != nil && shift <= farthestClimate; shift++ {
		climate, err = sea.BuiltIn(p.Latitude+toward*shift, p.Longitude)
	}
	return climate, err
}

// farthestClimate is how far a climate is looked for, degrees of latitude [judgement].
const farthestClimate = 20

// longestVisit ends a visit that never ends in the simulation; see sim.
const longestVisit = 100 * unit.Day

// neverRefused: a piston corer that was refused shows in the depth that it reached.
var neverRefused = plan.Refusal{Overpull: unit.Force(math.MaxFloat64), PartialStrokes: math.MaxInt, DrillOver: true}

// rates are the ship's rates without the accidents that show in the record (a string lost or a
// funnel not found again ended the hole, and what was then drilled is a hole of its own), at the
// pace of the years.
func (u *Unrecorded) rates(rates [rig.Rates]spread.Quantity, s *record.Site, known Knowledge) [rig.Rates]spread.Quantity {
	never := []rig.Rate{rig.LostBHA, rig.FunnelLost, rig.ExtendedLeastRate}
	if known == Counts {
		never = append(never, rig.FailedStart)
	}
	for _, r := range never {
		rates[r] = spread.Just(0)
	}
	rates[rig.LayerDepth] = spread.Just(1) // where each tool cored is known
	e := u.era(s.Start().Year())
	rates[rig.PistonDurationFactor].Shape = times{rates[rig.PistonDurationFactor].Shape, e.Piston}
	rates[rig.ExtendedDurationFactor].Shape = times{rates[rig.ExtendedDurationFactor].Shape, e.Rotated}
	rates[rig.RotaryDurationFactor].Shape = times{rates[rig.RotaryDurationFactor].Shape, e.Rotated}
	for t := range coring.Tools {
		if advance := coring.Tool(t).Of().Advance; advance != coring.NoRate {
			rates[advance].Shape = withMean(rates[advance].Shape, e.Cores[t])
		}
	}
	return rates
}

// times is a shape whose values are all multiplied.
type times struct {
	spread.Shape
	by float64
}

// Quantile is the multiplied one.
func (t times) Quantile(p float64) float64 { return t.by * t.Shape.Quantile(p) }

// recordHole is a hole as it was drilled. It has a funnel, so that a worn bit does not end it: it was
// drilled to its depth.
func recordHole(h *record.Hole, known Knowledge) *plan.Hole {
	hole := &plan.Hole{DrillAheadTo: unit.Depth(h.Ahead()), Reentry: plan.Funnel}
	if hole.DrillAheadTo < 1 {
		hole.DrillAheadTo = 0
	}
	if steps := h.Steps(); len(steps) > 0 && hole.DrillAheadTo == 0 && steps[0].With.Piston() && known != Counts {
		hole.StartOffset = startOffset(steps[0])
	}
	bottom := hole.DrillAheadTo
	for _, step := range h.Steps() {
		bottom += unit.Depth(step.Length)
		stage := plan.Stage{With: step.With, To: bottom}
		if known == Counts {
			stage.Advance = step.Length / unit.Length(step.Cores)
		}
		hole.Stages = append(hole.Stages, stage)
	}
	return hole
}

// startOffset is how much higher than usual the first stroke of a hole began: piston corers go as far as they reach, so the
// depth that they came to is so many strokes less what of the first was above the sea floor.
func startOffset(step record.Step) unit.Length {
	stroke := step.With.Stroke()
	above := unit.Length(math.Ceil(float64(step.Length/stroke)))*stroke - step.Length
	return above - min(clearance, stroke/2)
}

// clearance is how high above the sea floor the bit usually is then.
var clearance = unit.Length(scenario.BuiltInRates()[rig.MudlineClearance].Median())
