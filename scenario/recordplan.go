package scenario

import (
	"fmt"
	"math"

	"coredays/model/plan"
	"coredays/model/record"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/spread"
	"coredays/model/unit"
)

// Knowledge is how much of a site a hindcast is told.
type Knowledge int

// The levels of knowledge.
const (
	// Programme: of each hole the tools and the depth that each reached. Holes that stopped near the
	// sea floor are left out; the model draws failed starts itself.
	Programme Knowledge = iota
	// Counts: the cores of each tool and the failed holes are known as well.
	Counts
)

var knowledgeNames = []string{"programme", "counts"}

func (k Knowledge) String() string { return knowledgeNames[k] }

// ParseKnowledge reads the name of a level.
func ParseKnowledge(text string) (Knowledge, error) {
	for k, name := range knowledgeNames {
		if name == text {
			return Knowledge(k), nil
		}
	}
	return 0, fmt.Errorf("%q is no level of knowledge: give %s", text, listed(knowledgeNames))
}

// RecordPlan is a site on record as a plan for the built-in ship: she is there at the place and
// date of the record, and does what is known to have been done.
func RecordPlan(s record.Site, known Knowledge) (*plan.Plan, error) {
	ship := builtIn().ship
	position := s.Holes[0].Position
	climate, err := sea.BuiltIn(position.Latitude, position.Longitude)
	if err != nil {
		return nil, err
	}
	site := plan.Site{Name: s.Name, Position: position, WaterDepth: s.Water(), Climate: climate, Refusal: neverRefused, Layers: recordLayers(&s)}
	for i := range s.Holes {
		if h := &s.Holes[i]; known == Counts || !h.FailedStart() {
			site.Items = append(site.Items, plan.Item{Name: h.Name, Rank: 1, Hole: recordHole(h, known)})
		}
	}
	port := plan.Port{Name: "port", Position: position}
	p := &plan.Plan{Title: s.Program + " " + s.Leg + " " + s.Name, Sails: s.Start(), SeaDays: longestVisit, From: port, To: port,
		InPort: spread.Just(0), Ship: ship.Ship, Sites: []plan.Site{site}, Order: []int{0}}
	p.Ship.Rates = recordRates(ship.Rates, known)
	return p, nil
}

// longestVisit ends a visit that never ends in the simulation; see sim.
const longestVisit = 100 * unit.Day

// neverRefused: a piston corer that was refused shows in the depth that it reached.
var neverRefused = plan.Refusal{Overpull: unit.Force(math.MaxFloat64), PartialStrokes: math.MaxInt, DrillOver: true}

// recordRates are the ship's rates without the accidents that show in the record: a string lost or
// a funnel not found again ended the hole, and what was then drilled is a hole of its own.
func recordRates(rates [rig.Rates]spread.Quantity, known Knowledge) [rig.Rates]spread.Quantity {
	for _, r := range []rig.Rate{rig.LostBHA, rig.FunnelLost, rig.ExtendedLeastRate} {
		rates[r] = spread.Just(0)
	}
	return rates
}

// recordHole is a hole as it was drilled. A rotary hole has a funnel, so that a worn bit does not
// end it: it was drilled to its depth.
func recordHole(h *record.Hole, known Knowledge) *plan.Hole {
	hole := &plan.Hole{DrillAheadTo: unit.Depth(h.Ahead()), Reentry: plan.Funnel}
	if hole.DrillAheadTo < 1 {
		hole.DrillAheadTo = 0
	}
	bottom := hole.DrillAheadTo
	for _, step := range h.Steps() {
		bottom += unit.Depth(step.Length)
		hole.Stages = append(hole.Stages, plan.Stage{With: step.With, To: bottom})
	}
	return hole
}
