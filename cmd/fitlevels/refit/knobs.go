package refit

import (
	"math"
	"slices"

	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/record"
	"coredays/model/rig"
	shapes "coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/records"
)

// knobs are the figures that are fitted. Chances move in the logit, all else in the logarithm.
// Each concerns some sites only: the others need not be sailed again when it is turned.
var knobs = []struct {
	name     string
	prior    float64
	concerns func(s *record.Site) bool
	turn     func(u *records.Unrecorded, by float64)
}{
	{"other work, spread", 0.3, anySite, func(u *records.Unrecorded, by float64) { turnRate(u, rig.OtherWork, wider, by) }},
	{"other work", 0.5, anySite, func(u *records.Unrecorded, by float64) { turnRate(u, rig.OtherWork, times, by) }},
	{"work at the first site", 0.5, func(s *record.Site) bool { return s.First }, func(u *records.Unrecorded, by float64) { turnRate(u, rig.FirstSiteWork, times, by) }},
	{"rotary rate, below other ground", 0.05, rotaryCored, func(u *records.Unrecorded, by float64) { faster(&u.Ground[1], by) }},
	{"rotary rate, from the sea floor", 0.05, rotaryCored, func(u *records.Unrecorded, by float64) { faster(&u.Ground[2], by) }},
	{"rotary rate below other ground, spread", 0.2, rotaryCored, func(u *records.Unrecorded, by float64) { u.Ground[1].Rate.Shape = wider(u.Ground[1].Rate.Shape, by) }},
	{"rotary rate from the sea floor, spread", 0.2, rotaryCored, func(u *records.Unrecorded, by float64) { u.Ground[2].Rate.Shape = wider(u.Ground[2].Rate.Shape, by) }},
	{"drilling ahead", 0.3, anySite, func(u *records.Unrecorded, by float64) {
		for i := range u.Ground {
			u.Ground[i].Ahead.Shape = times(u.Ground[i].Ahead.Shape, by)
		}
	}},
	{"drilling ahead, spread", 0.2, anySite, func(u *records.Unrecorded, by float64) {
		for i := range u.Ground {
			u.Ground[i].Ahead.Shape = wider(u.Ground[i].Ahead.Shape, by)
		}
	}},
	{"piston cycles, until 1990", 0.06, inEra(0), pistonOf(0)},
	{"piston cycles, 1991 to 1997", 0.04, inEra(1), pistonOf(1)},
	{"piston cycles, 1998 to 2003", 0.03, inEra(2), pistonOf(2)},
	{"piston cycles, from 2004", 0.15, inEra(3), pistonOf(3)},
	{"cycles of rotated tools, until 1990", 0.06, inEra(0), rotatedOf(0)},
	{"cycles of rotated tools, 1991 to 1997", 0.04, inEra(1), rotatedOf(1)},
	{"cycles of rotated tools, 1998 to 2003", 0.03, inEra(2), rotatedOf(2)},
	{"cycles of rotated tools, from 2004", 0.1, inEra(3), rotatedOf(3)},
	{"piston cycles, no other tool", 0.03, pistonAlone, func(u *records.Unrecorded, by float64) { turnRate(u, rig.PistonAlone, times, by) }},
	{"chance, piston", 0.7, has(records.PistonHole), chanceOf(records.PistonHole)},
	{"chance, extended", 0.7, has(records.ExtendedHole), chanceOf(records.ExtendedHole)},
	{"chance, rotary", 0.7, has(records.RotaryHole), chanceOf(records.RotaryHole)},
	{"chance, rotary from the sea floor", 0.7, has(records.BareHole), chanceOf(records.BareHole)},
	{"chance, without cores", 0.7, has(records.CorelessHole), chanceOf(records.CorelessHole)},
	{"time, piston", 0.7, has(records.PistonHole), timeOf(records.PistonHole)},
	{"time, extended", 0.7, has(records.ExtendedHole), timeOf(records.ExtendedHole)},
	{"time, rotary", 0.5, has(records.RotaryHole), timeOf(records.RotaryHole)},
	{"time, rotary from the sea floor", 0.5, has(records.BareHole), timeOf(records.BareHole)},
	{"time, without cores", 0.5, has(records.CorelessHole), timeOf(records.CorelessHole)},
	{"time of rotary and coreless holes, spread", 0.3, anySite, func(u *records.Unrecorded, by float64) {
		for _, c := range []records.UnrecordedClass{records.RotaryHole, records.BareHole, records.CorelessHole} {
			u.Work[c].Factor = math.Pow(u.Work[c].Factor, math.Exp(by))
		}
	}},
	{"power of water", 0.3, anySite, func(u *records.Unrecorded, by float64) { u.WithWater += by }},
	{"assemblies", 0.4, anySite, func(u *records.Unrecorded, by float64) {
		for _, r := range assemblies {
			turnRate(u, r, times, by)
		}
	}},
	{"assemblies, spread", 0.3, anySite, func(u *records.Unrecorded, by float64) {
		for _, r := range assemblies {
			turnRate(u, r, wider, by)
		}
	}},
	{"trips in the hole", 0.1, anySite, func(u *records.Unrecorded, by float64) { turnRate(u, rig.TrippingInHole, times, by) }},
	{"rotary rate in deep water", 0.3, rotaryCored, func(u *records.Unrecorded, by float64) { u.InWater.Rate *= math.Exp(by) }},
	{"power of depth", 0.3, anySite, func(u *records.Unrecorded, by float64) { u.WithDepth += by }},
}

var assemblies = []rig.Rate{rig.PistonMakeUp, rig.RotaryMakeUp, rig.LayDown}

func anySite(*record.Site) bool { return true }

func rotaryCored(s *record.Site) bool {
	return slices.ContainsFunc(s.Holes, func(h record.Hole) bool {
		return slices.ContainsFunc(h.Steps(), func(step record.Step) bool { return step.With == coring.RCB })
	})
}

func pistonAlone(s *record.Site) bool { return s.DeepestTool() == coring.APC }

// Cycles by era: until 2003 their prior is the error of the cores' own times, halved, so that they decide.
var eraFrom = []int{0, 1991, 1998, 2004}

func inEra(era int) func(*record.Site) bool {
	return func(s *record.Site) bool {
		year := s.Start().Year()
		return year >= eraFrom[era] && (era == len(eraFrom)-1 || year < eraFrom[era+1])
	}
}

func pistonOf(era int) func(*records.Unrecorded, float64) {
	return func(u *records.Unrecorded, by float64) { u.Eras[era].Piston *= math.Exp(by) }
}

func rotatedOf(era int) func(*records.Unrecorded, float64) {
	return func(u *records.Unrecorded, by float64) { u.Eras[era].Rotated *= math.Exp(by) }
}

// has reports whether a site has a hole of a class.
func has(c records.UnrecordedClass) func(*record.Site) bool {
	return func(s *record.Site) bool { return slices.Contains(records.ClassesOf(s), c) }
}

func chanceOf(c records.UnrecordedClass) func(*records.Unrecorded, float64) {
	return func(u *records.Unrecorded, by float64) {
		p := u.Work[c].Chance
		u.Work[c].Chance = 1 / (1 + (1-p)/p*math.Exp(-by))
	}
}

func timeOf(c records.UnrecordedClass) func(*records.Unrecorded, float64) {
	return func(u *records.Unrecorded, by float64) { u.Work[c].Median *= math.Exp(by) }
}

func turnRate(u *records.Unrecorded, r rig.Rate, turn func(shapes.Shape, float64) shapes.Shape, by float64) {
	u.Ship.Rates[r].Shape = turn(u.Ship.Rates[r].Shape, by)
}

func faster(g *ground.Lithology, by float64) { g.Rate.Shape = times(g.Rate.Shape, by) }

// multiplied is a shape whose values are all multiplied.
type multiplied struct {
	shapes.Shape
	by float64
}

func (m multiplied) Quantile(p float64) float64 { return m.by * m.Shape.Quantile(p) }

func times(s shapes.Shape, by float64) shapes.Shape { return multiplied{s, math.Exp(by)} }

// stretched is a shape whose logarithm spreads more about its median.
type stretched struct {
	shapes.Shape
	by float64
}

func (s stretched) Quantile(p float64) float64 {
	mid := s.Shape.Quantile(0.5)
	return mid * math.Pow(s.Shape.Quantile(p)/mid, s.by)
}

func wider(s shapes.Shape, by float64) shapes.Shape { return stretched{s, math.Exp(by)} }

// turned are the round figures with the knobs turned.
func turned(x []float64) records.Unrecorded {
	u := round()
	for i, k := range knobs {
		k.turn(&u, x[i])
	}
	return u
}

// round are the figures before they are fitted: round numbers, so that nothing of the days that a
// fold is judged on is in them.
func round() records.Unrecorded {
	u, _ := records.Model()
	u.Eras = slices.Clone(u.Eras)
	for i, e := range [][2]float64{{1.1, 0.9}, {0.94, 1}, {1.06, 1.04}, {1.1, 1.1}} {
		u.Eras[i].Piston, u.Eras[i].Rotated = e[0], e[1]
	}
	u.Ship.Rates[rig.OtherWork].Shape, _ = shapes.NewLognormal(0.08, 6)
	u.Ship.Rates[rig.FirstSiteWork].Shape, _ = shapes.NewLognormal(8*float64(unit.Hour), 3)
	for i, factor := range []float64{1.6, 2, 2.5} {
		u.Ground[i].Rate.Shape, _ = shapes.NewLognormal([]float64{33, 13, 12}[i]*perHour, factor)
		u.Ground[i].Ahead.Shape, _ = shapes.NewLognormal([]float64{30, 15, 15}[i]*perHour, 2.2)
	}
	chances := [records.UnrecordedClasses]float64{0.1, 0.2, 0.4, 0.5, 0.5}
	hours := [records.UnrecordedClasses]float64{6, 10, 20, 20, 36}
	for c := range u.Work {
		u.Work[c] = records.Sometimes{Chance: chances[c], Median: hours[c] * float64(unit.Hour), Factor: 3.5}
	}
	u.WithWater, u.WithDepth = 0.5, 0
	u.Ship.Rates[rig.PistonAlone] = shapes.Just(0.9)
	u.InWater.Rate = 0.6
	for r, hours := range map[rig.Rate][3]float64{rig.PistonMakeUp: {0.2, 1, 2.6}, rig.RotaryMakeUp: {0.8, 2.2, 3.8}, rig.LayDown: {0.3, 0.9, 2.2}} {
		u.Ship.Rates[r].Shape = triple(hours, float64(unit.Hour))
	}
	u.Ship.Rates[rig.TrippingInHole].Shape = triple([3]float64{7, 11, 15}, perHour)
	return u
}

// triple is the shape of three round values in a unit.
func triple(t [3]float64, in float64) shapes.Shape {
	m, _ := shapes.NewMetalog(shapes.Triple{Low: t[0] * in, Mid: t[1] * in, High: t[2] * in}, 0, math.Inf(1))
	return m
}

const perHour = 1.0 / 3600 // m/h in m/s
