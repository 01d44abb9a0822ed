package sim

import (
	"fmt"
	"math/rand/v2"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea/heave"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// Plans thrown together at random: valid, but such as no planner would write, so that operations
// meet in every order.

// dice throw the plans. The same number throws the same plan.
type dice struct{ *rand.Rand }

func diceOf(plan int) dice { return dice{rand.New(rand.NewPCG(7, uint64(plan)))} }

func (d dice) oneIn(n int) bool { return d.IntN(n) == 0 }

func oneOf[T any](d dice, of ...T) T { return of[d.IntN(len(of))] }

// around is a quantity that is certain half of the time and spread by up to a factor of three else.
func (d dice) around(median float64) spread.Quantity {
	if d.oneIn(2) {
		return simtest.Just(median)
	}
	return simtest.Wide(median, 1.05+2*d.Float64())
}

// plan throws an expedition to up to four sites, in any order.
func (d dice) plan() *plan.Plan {
	var sites []plan.Site
	alternates := d.oneIn(12)
	for i := range 1 + d.IntN(4) {
		s := d.site(fmt.Sprint("S", i+1), geo.Position{Latitude: -10 + 4*d.Float64()*float64(i), Longitude: 20 - 5*d.Float64()*float64(i)})
		s.Alternate = alternates || i > 0 && d.oneIn(4)
		s.Hanging = d.oneIn(6)
		sites = append(sites, s)
	}
	p := simtest.Expedition(sites...)
	d.Shuffle(len(p.Order), func(i, j int) { p.Order[i], p.Order[j] = p.Order[j], p.Order[i] })
	p.SeaDays = oneOf[unit.Duration](d, 10, 20, 35, 60) * unit.Day
	if d.oneIn(12) {
		p.SeaDays = unit.Hour
	}
	p.InPort = d.around(3 * 86400)
	d.ship(&p.Ship)
	return p
}

// site throws a site: from puddles to the deep sea, from calm to a sea in which little can be done.
func (d dice) site(name string, at geo.Position) plan.Site {
	bottom := oneOf[unit.Depth](d, 20, 120, 350, 800)
	s := simtest.Site(name, at, oneOf[unit.Length](d, 10, 100, 700, 1500, 3000, 5500), d.items(bottom)...)
	s.Layers = d.layers(bottom)
	mean, variation := oneOf[unit.Length](d, 0.5, 1.5, 2.5, 3.5, 5), oneOf(d, 0.01, 0.3, 0.45, 0.6)
	for m := range s.Climate.Mean {
		s.Climate.Mean[m], s.Climate.Variation[m] = mean, variation
	}
	if d.oneIn(4) {
		s.Cap = oneOf[unit.Duration](d, 1, 12, 72, 240) * unit.Hour
	}
	if d.oneIn(8) {
		s.Unusable = plan.Unusable{Because: "ice", Every: d.around(10 * 86400), Lasts: d.around(86400)}
	}
	s.Refusal = plan.Refusal{Overpull: oneOf[unit.Force](d, 1e5, 3e5), PartialStrokes: 1 + d.IntN(3), DrillOver: d.oneIn(2),
		Then: oneOf(d, coring.APC, coring.HLAPC), AdvanceByStroke: d.oneIn(2)}
	return s
}

// layers throw the ground down to a depth, soft or hard.
func (d dice) layers(bottom unit.Depth) (layers []ground.Layer) {
	for at := unit.Depth(0); at < bottom; {
		at += bottom * unit.Depth(0.2+d.Float64())
		l := simtest.Mud()
		l.Strength = d.around(oneOf(d, 100.0, 600, 2000, 9000))
		l.Rate, l.Ahead = d.around(oneOf(d, 1.5, 6, 25)/simtest.Hours), d.around(oneOf(d, 2.0, 30)/simtest.Hours)
		for t := range l.Recovery {
			l.Recovery[t] = d.around(oneOf(d, 0.01, 0.7, 1))
		}
		layers = append(layers, ground.Layer{Bottom: at, Lithology: l})
	}
	return layers
}

// sizes are the rates that are no times, speeds or chances: they stay as they are.
var sizes = map[rig.Rate]bool{rig.StandLength: true, rig.JointLength: true, rig.Barrels: true, rig.CatwalkRoom: true,
	rig.CoresBetweenSweeps: true, rig.StandsBetweenFills: true, rig.ForecastHorizon: true, rig.ForecastSkill: true, rig.ResumeAt: true}

// mishaps are the rates that are chances of something going wrong.
var mishaps = []rig.Rate{rig.WaterCore, rig.MissedMudline, rig.FailedStart, rig.PistonTrouble, rig.ExtendedTrouble, rig.RotaryTrouble,
	rig.BlownLiner, rig.StuckChance, rig.LostBHA, rig.Bridge, rig.FunnelLost}

// ship spreads the rates of a ship, lets things go wrong and turns on what the round rates leave out.
func (d dice) ship(ship *rig.Ship) {
	for r := range rig.Rates {
		if rate := simtest.RoundRates[r]; rate > 0 && !sizes[r] && d.oneIn(3) {
			ship.Rates[r] = simtest.Wide(rate, 1.1+d.Float64())
		}
	}
	for _, r := range mishaps {
		if d.oneIn(2) {
			ship.Rates[r] = simtest.Just(d.Float64() * oneOf(d, 0.02, 0.2, 0.5))
		}
	}
	if d.oneIn(2) {
		ship.Rates[rig.BreakdownEvery] = simtest.Just(oneOf(d, 3.0, 20) * 86400)
	}
	for r, rate := range map[rig.Rate]float64{rig.StandsBetweenFills: 20, rig.Filling: 3 * simtest.Minutes, rig.Strapping: 40, rig.FailedStartTime: 4 * simtest.Hours,
		rig.RigServiceEvery: 24 * simtest.Hours, rig.RigService: 30 * simtest.Minutes, rig.LineWork: 2e10, rig.SlipAndCut: 80 * simtest.Minutes,
		rig.SlowdownFrom: 2, rig.SlowdownPerMetre: 0.08, rig.HeaveLoss: 0.3, rig.CoreGap: 0.4, rig.DepthMismatch: 1, rig.ResumeAt: 0.9} {
		ship.Rates[r] = simtest.Just(rate)
	}
	if d.oneIn(6) { // a hull that heaves with every wave
		ship.Hull = heave.Hull{Length: 20, Beam: 5, Draught: 2, Block: 0.5}
		for i := range ship.Limits {
			ship.Limits[i].Of = oneOf(d, rig.LargestHeave, rig.WaveHeight)
		}
	}
}
