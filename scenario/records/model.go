// Package records reads tables of holes and cores on record, and makes plans of sites on record by what else is known.
package records

import (
	_ "embed"
	"math"
	"sync"

	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/record"
	"coredays/model/rig"
	"coredays/model/score"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario"
	"coredays/scenario/fault"
)

//go:embed record.yaml
var recordText []byte

// Unrecorded is what a record of holes leaves open and the model completes: see record.yaml.
type Unrecorded struct {
	Ship      rig.Ship // the built-in one
	Eras      []Era    // by rising year
	InWater   Slower   // rotary cutting in deep water
	Work      [UnrecordedClasses]Sometimes
	LegTime   score.LegTime // what legs spend on their sites
	WithLeg   float64       // share of the variance of its score that the sites of a leg have in common
	WithWater float64       // power of the water depth over 2500 m with which the work grows
	WithDepth float64       // power of the depth of the hole over 300 m
	Ground    [grounds]ground.Lithology
	Described []Told          // what lithologies tell of the ground
	InLeg     spread.Quantity // normal score of a site's days in their forecast: what sites of a leg have in common
}

// normalScore is the standard normal distribution.
type normalScore struct{}

// Quantile is the normal score.
func (normalScore) Quantile(p float64) float64 { return spread.Score(p) }

// Era is how the cycles and cores of some years went against those of the built-in ship.
type Era struct {
	From            int                   // first year
	Piston, Rotated float64               // share of the ship's cycle time, for tools that are shot and tools that are rotated
	Cores           [coring.Tools]float64 // share of the ship's mean length of a core
}

// UnrecordedClass is a class of holes by what is known of them.
type UnrecordedClass int

// The classes.
const (
	PistonHole   UnrecordedClass = iota // piston corers alone
	ExtendedHole                        // the extended barrel at the deepest
	RotaryHole                          // rotary, below other ground
	BareHole                            // rotary from the sea floor at a site without other tools
	CorelessHole                        // drilled, no core
	UnrecordedClasses
)

// Grounds of a record.
const (
	softGround = iota
	rotaryGround
	bareGround
	grounds
)

// Slower is a rate's share of its median from a depth on.
type Slower struct {
	From float64 // m
	Rate float64
}

// Sometimes is a time that comes with a chance; where it comes it is lognormal.
type Sometimes struct {
	Chance float64
	Median float64 // s
	Factor float64 // from the median to the P90 value
}

// Quantile is 0 below the chance that nothing happens.
func (s Sometimes) Quantile(p float64) float64 {
	within := (p - (1 - s.Chance)) / s.Chance
	if s.Chance <= 0 || within <= 0 {
		return 0
	}
	return min(mostUnrecorded, s.Median*math.Pow(s.Factor, spread.Score(within)/spread.Score(0.9)))
}

// mostUnrecorded bounds the work of a hole, s: no leg lasts longer.
const mostUnrecorded = 60 * float64(unit.Day)

// Model is what is built in.
var Model = sync.OnceValues(func() (Unrecorded, fault.List) {
	u, faults := readUnrecorded("record.yaml", recordText)
	u.Ship = scenario.BuiltInShip()
	return u, faults
})

// classOf is the class of a hole of a site.
func classOf(h *record.Hole, bare bool) UnrecordedClass {
	switch {
	case len(h.Steps()) == 0:
		return CorelessHole
	case h.CoredBy(rotary) && bare:
		return BareHole
	case h.CoredBy(rotary):
		return RotaryHole
	case h.CoredBy(rotated):
		return ExtendedHole
	default:
		return PistonHole
	}
}

// ClassesOf are the classes of the holes of a site, apart from failed starts.
func ClassesOf(s *record.Site) (classes []UnrecordedClass) {
	bare := isBare(s)
	for i := range s.Holes {
		if h := &s.Holes[i]; !h.FailedStart() {
			classes = append(classes, classOf(h, bare))
		}
	}
	return classes
}

// leastAhead is the length drilled before a rotary hole is cored from which the ground above counts
// as known, m [judgement].
const leastAhead = 50

// isBare reports whether a site was cored rotary from the sea floor and with no other tool: bare rock,
// or soft ground where a crew had no use for a piston corer.
func isBare(s *record.Site) bool {
	bored := false
	for i := range s.Holes {
		h := &s.Holes[i]
		if h.CoredBy(func(t coring.Tool) bool { return !rotary(t) }) || h.CoredBy(rotary) && h.Ahead() > leastAhead {
			return false
		}
		bored = bored || h.CoredBy(rotary)
	}
	return bored
}

// rotary tools run through the rotary assembly.
func rotary(t coring.Tool) bool { return t.Assembly() == coring.RotaryBHA }

// rotated tools are not shot.
func rotated(t coring.Tool) bool { return !t.Piston() }

// workOf is the work on a hole that the record does not tell.
func (u *Unrecorded) workOf(h *record.Hole, c UnrecordedClass) Sometimes {
	w := u.Work[c]
	depth := max(shallowest, float64(h.Depth))
	w.Median *= math.Pow(float64(h.Water)/2500, u.WithWater) * math.Pow(depth/300, u.WithDepth)
	return w
}

// shallowest is the depth of a hole below which the work on it is not distinguished, m below sea floor.
const shallowest = float64(record.Shallow)

// era is that of a year.
func (u *Unrecorded) era(year int) Era {
	found := Era{Piston: 1, Rotated: 1}
	for t := range found.Cores {
		found.Cores[t] = 1
	}
	for _, e := range u.Eras {
		if year >= e.From {
			found = e
		}
	}
	return found
}
