package simtest

import (
	"math"
	"testing"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/sea/heave"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// Plans for the tests: an invented ship whose every rate is one round number, in a calm sea,
// without trouble, so that the days are a sum that a hand can do.

const (
	Minutes = 60.0
	Hours   = 3600.0
	Day     = 86400.0
)

// RoundRates are the rates of the invented ship, in SI units.
var RoundRates = map[rig.Rate]float64{
	rig.SailingSpeed: 5, rig.HangingSpeed: 0.5, rig.Pilotage: 2 * Hours,
	rig.Positioning: 30 * Minutes, rig.Securing: 30 * Minutes,
	rig.PistonMakeUp: 3 * Hours, rig.RotaryMakeUp: 3 * Hours, rig.LayDown: 1 * Hours,
	rig.HoistingSpeed: 1e9, rig.LoweringSpeed: 1e9, rig.StandLength: 30, rig.JointLength: 10, rig.Tripping: 20 / Hours, rig.TrippingInHole: 10 / Hours,
	rig.StandsBetweenFills: 1e9, rig.TopDrive: 30 * Minutes, rig.PipeMass: 30, rig.TravellingMass: 50_000,
	rig.OffsetMove: 60 * Minutes, rig.MudlineClearance: 4.5, rig.MudlineReset: 30 * Minutes,
	rig.FailedStartTime: 3 * Hours, rig.BareSurvey: 8 * Hours,
	rig.PistonDurationFactor: 1, rig.PistonAlone: 1, rig.ExtendedDeepFrom: 1e4, rig.ExtendedDeep: 1, rig.ExtendedDurationFactor: 1, rig.RotaryDurationFactor: 1,
	rig.PistonWire: 250.0 / 60, rig.ExtendedWire: 250.0 / 60, rig.RotaryWire: 250.0 / 60,
	rig.PistonHandling: 10 * Minutes, rig.HalfPistonHandling: 10 * Minutes, rig.ExtendedHandling: 10 * Minutes, rig.RotaryHandling: 10 * Minutes, rig.PistonAdvance: 9.5, rig.ExtendedAdvance: 9.5, rig.RotaryAdvance: 9.5,
	rig.Shot: 4 * Minutes, rig.CorePull: 3 * Minutes, rig.OrientationWait: 6 * Minutes, rig.TemperatureStop: 10 * Minutes,
	rig.DrillOver: 30 * Minutes, rig.Connection: 6 * Minutes, rig.Bench: 1 * Minutes, rig.Barrels: 3,
	rig.CatwalkTime: 1 * Minutes, rig.CatwalkRoom: 3, rig.Sweep: 15 * Minutes, rig.CoresBetweenSweeps: 3, rig.CentreBit: 20 * Minutes,
	rig.BitLife: 50 * Hours, rig.ExtendedLeastRate: 4 / Hours,
	rig.LayerDepth: 1, rig.LaboratoryTime: 1 * Minutes,
	rig.PistonDiameter: 0.09525, rig.StrokeForce: 150_000, rig.StrokeFriction: 0.5, rig.TipFactor: 9,
	rig.HoleConditioning: 2 * Hours, rig.BitRelease: 30 * Minutes, rig.LoggingRigUp: 2 * Hours, rig.LoggingRigDown: 1 * Hours,
	rig.StringChange: 1 * Hours, rig.LoggingSpeed: 300 / Hours, rig.LoggingWire: 1, rig.LoggingPipeDepth: 80,
	rig.SeismicStations: 4 * Hours, rig.MammalWatch: 1 * Hours, rig.Penetrometer: 45 * Minutes,
	rig.FunnelDrop: 2 * Hours, rig.CameraSpeed: 0.5, rig.FirstStab: 1 * Hours, rig.NextStab: 0.3 * Hours, rig.WashDown: 60 / Hours,
	rig.ConeMakeUp: 4 * Hours, rig.CasingJoint: 10 * Minutes, rig.CasingJointLength: 10, rig.Jetting: 10 / Hours, rig.DrillInPace: 0.5, rig.HardShoeInRock: 1.5, rig.HardShoeInSoft: 0.8, rig.HardShoeRecovery: 1.2,
	rig.CasingLanding: 1 * Hours, rig.CasingCement: 2 * Hours, rig.CementSetting: 12 * Hours, rig.ShoeDrilling: 2 * Hours, rig.HangerTime: 9 * Hours,
	rig.HeavyMud: 1 * Hours, rig.CementPlug: 5 * Hours,
	rig.PistonTroubleTime: 2 * Hours, rig.ExtendedTroubleTime: 2 * Hours, rig.RotaryTroubleTime: 4 * Hours,
	rig.StuckTime: 3 * Hours, rig.Severing: 6 * Hours, rig.RepairTime: 8 * Hours,
	rig.ForecastHorizon: 48 * Hours, rig.ForecastSkill: 0.6, rig.HangOffDepth: 80, rig.ResumeAt: 1,
}

// roundShip is the ship with the round rates.
func roundShip() rig.Ship {
	ship := rig.Ship{
		Name:  "test ship",
		Hull:  heave.Hull{Length: 140, Beam: 21, Draught: 7.5, Block: 0.7},
		Storm: rig.Storm{ClearSeaFloor: 8, RecoverPipe: 10},
		Limits: []rig.SeaLimit{
			{For: activity.Positioning, Of: rig.WaveHeight, Most: 6}, {For: activity.PipeHandling, Of: rig.WaveHeight, Most: 4},
			{For: activity.Tripping, Of: rig.WaveHeight, Most: 6}, {For: activity.PistonCoring, Of: rig.WaveHeight, Most: 4},
			{For: activity.RotaryCoring, Of: rig.WaveHeight, Most: 5}, {For: activity.Logging, Of: rig.WaveHeight, Most: 3},
		},
		Strings: []rig.ToolString{{Name: "density", Passes: 1}, {Name: "seismic", Passes: 1, Seismic: true}},
	}
	for r := range rig.Rates {
		ship.Rates[r] = spread.Just(RoundRates[r])
	}
	return ship
}

// Mud is a soft sediment that a piston corer can take to 300 m and of which all is recovered.
func Mud() ground.Lithology {
	l := ground.Lithology{Name: "mud", Strength: spread.Just(100), Rate: spread.Just(30 / Hours), Ahead: spread.Just(40 / Hours), Sticking: spread.Just(1), Wear: spread.Just(1)}
	for t := range l.Recovery {
		l.Recovery[t] = spread.Just(1)
	}
	return l
}

// Flat is a sea of the same low waves for ever.
func Flat() sea.Climate {
	var c sea.Climate
	for m := range c.Mean {
		c.Mean[m], c.Variation[m] = 0.5, 0.01
	}
	return c
}

// PistonHole is a hole cored with the piston corer to a depth.
func PistonHole(name string, to unit.Depth) plan.Item {
	return plan.Item{Name: name, Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: to}}}}
}

// Site is a site of mud in a depth of water.
func Site(name string, at geo.Position, depth unit.Length, items ...plan.Item) plan.Site {
	return plan.Site{Name: name, Position: at, WaterDepth: depth, Climate: Flat(), Items: items,
		Layers:  []ground.Layer{{Bottom: 1000, Lithology: Mud()}},
		Refusal: plan.Refusal{Overpull: 267_000, PartialStrokes: 2, DrillOver: true}}
}

// Expedition sails from 0N 0E to the sites in the order given and back to where it came from.
func Expedition(sites ...plan.Site) *plan.Plan {
	p := &plan.Plan{Title: "test", Sails: time.Date(2031, 3, 1, 0, 0, 0, 0, time.UTC), SeaDays: 40 * unit.Day,
		From: plan.Port{Name: "Near"}, To: plan.Port{Name: "Far"}, InPort: spread.Just(0), Ship: roundShip(), Sites: sites}
	for i := range sites {
		p.Order = append(p.Order, i)
	}
	return p
}

// Compiled compiles a plan whose passages cross flat seas too.
func Compiled(t testing.TB, p *plan.Plan) *voyage.Voyage {
	t.Helper()
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	calm, err := sea.NewTable(Flat())
	if err != nil {
		t.Fatal(err)
	}
	for from := range v.Legs {
		for to := range v.Legs[from] {
			v.Legs[from][to].Waves = calm
		}
	}
	return v
}

func Just(x float64) spread.Quantity { return spread.Just(x) }

// Wide is a quantity spread by a factor around its median at several levels.
func Wide(median, factor float64) spread.Quantity {
	shape, err := spread.NewLognormal(median, factor)
	if err != nil {
		panic(err)
	}
	return spread.Quantity{Shape: shape, Shares: spread.Shares{0.3, 0.2, 0.2, 0.3}}
}

// Uncertain is an expedition of four sites in which nearly everything is spread and everything can
// go wrong, with an alternate site and a cap.
func Uncertain(order ...int) *plan.Plan {
	var sites []plan.Site
	for i, name := range []string{"A", "B", "C", "D"} {
		s := Site(name, geo.Position{Latitude: float64(i), Longitude: 2}, unit.Length(1000+700*i),
			plan.Item{Name: "1", Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: 250, ToRefusal: true}, {With: coring.XCB, To: 300}}}},
			plan.Item{Name: "2", Rank: 2, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: 250, ToRefusal: true}}}},
			plan.Item{Name: "3", Rank: 3, Hole: &plan.Hole{DrillAheadTo: 250, Stages: []plan.Stage{{With: coring.RCB, To: 400}}, Logging: []int{0, 1}, Reentry: plan.Funnel}})
		var rough sea.Climate
		for m := range rough.Mean {
			rough.Mean[m], rough.Variation[m] = 2.6, 0.45
		}
		s.Climate = rough
		s.Layers = []ground.Layer{{Bottom: 150, Lithology: Mud()}, {Bottom: 1000, Lithology: Mud()}}
		for l := range s.Layers {
			lith := &s.Layers[l].Lithology
			lith.Strength, lith.Rate, lith.Ahead = Wide(600, 2), Wide(25/Hours, 3), Wide(30/Hours, 1.5)
			for t := range lith.Recovery {
				lith.Recovery[t] = Wide(0.8, 1.3)
			}
		}
		sites = append(sites, s)
	}
	sites[3].Alternate = true
	sites[1].Cap = 9 * unit.Day
	p := Expedition(sites...)
	if len(order) > 0 {
		p.Order = order
	}
	p.SeaDays = 28 * unit.Day
	for r, factor := range map[rig.Rate]float64{rig.SailingSpeed: 1.1, rig.Tripping: 1.15, rig.PistonDurationFactor: 1.4, rig.ExtendedDurationFactor: 1.4, rig.Connection: 1.5, rig.StuckTime: 3, rig.RepairTime: 3} {
		p.Ship.Rates[r] = Wide(RoundRates[r], factor)
	}
	for r, chance := range map[rig.Rate]float64{rig.PistonTrouble: 0.03, rig.RotaryTrouble: 0.05, rig.StuckChance: 0.01, rig.LostBHA: 0.2, rig.WaterCore: 0.3, rig.Bridge: 0.2, rig.FunnelLost: 0.1} {
		p.Ship.Rates[r] = Just(chance)
	}
	p.Ship.Rates[rig.BreakdownEvery] = Just(20 * 24 * Hours)
	return p
}

// Near reports whether two times agree to a thousandth of a second.
func Near(a, b float64) bool { return math.Abs(a-b) < 1e-3 }

// Tasks is an expedition to one site with tasks of given times.
func Tasks(takes ...spread.Quantity) *plan.Plan {
	var items []plan.Item
	for i, q := range takes {
		items = append(items, plan.Item{Name: string(rune('a' + i)), Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: q}}}})
	}
	return Expedition(Site("S", geo.Position{Longitude: 1}, 1500, items...))
}

// between is a time spread evenly between two.
func Evenly(low, high float64) spread.Quantity {
	shape, err := spread.NewUniform(low, high)
	if err != nil {
		panic(err)
	}
	return spread.Quantity{Shape: shape, Shares: spread.Shares{0.25, 0.25, 0.25, 0.25}}
}

// RotaryHole is a hole cored with the rotary barrel to a depth.
func RotaryHole(name string, to unit.Depth) plan.Item {
	return plan.Item{Name: name, Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.RCB, To: to}}}}
}

// DrilledHole is a hole drilled to a depth, of which nothing is cored.
func DrilledHole(name string, to unit.Depth) plan.Item {
	return plan.Item{Name: name, Rank: 1, Hole: &plan.Hole{DrillAheadTo: to}}
}

// OneSite is an expedition to one site in 1,500 m of water.
func OneSite(items ...plan.Item) *plan.Plan {
	return Expedition(Site("S", geo.Position{Longitude: 1}, 1500, items...))
}

// TwoSites has a piston and extended-barrel hole, a second piston hole and a task at the first
// site, and a rotary hole that is drilled ahead, cored, logged and filled at the second.
func TwoSites() *plan.Plan {
	first := Site("North", geo.Position{Longitude: 1}, 1500,
		plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{Oriented: true, Temperature: []int{2},
			Stages: []plan.Stage{{With: coring.APC, To: 14.5}, {With: coring.XCB, To: 33}}}},
		plan.Item{Name: "B", Rank: 1, Hole: &plan.Hole{StartOffset: 2, Stages: []plan.Stage{{With: coring.APC, To: 12}}}},
		plan.Item{Name: "observatory", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: Just(20 * Hours)}}}})
	second := Site("South", geo.Position{Latitude: -1, Longitude: 1}, 3000,
		plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{DrillAheadTo: 200, Stages: []plan.Stage{{With: coring.RCB, To: 228.5}},
			Logging: []int{0}, Abandon: plan.HeavyMud}})
	return Expedition(first, second)
}
