package scenario

import (
	"coredays/model/rig"
	"coredays/model/unit"
)

// Kinds of the figures of ship and crew.
var (
	shipSpeed = measure{kind: "speed of the ship", of: unit.OfSpeed, symbol: "kn", least: in(unit.OfSpeed, "2 kn"), most: in(unit.OfSpeed, "30 kn"),
		why: "slower, a current carries her off; faster is no drillship"}
	hangingSpeed = measure{kind: "speed with pipe hanging", of: unit.OfSpeed, symbol: "kn", least: in(unit.OfSpeed, "0.1 kn"), most: in(unit.OfSpeed, "5 kn"),
		why: "slower is a drift, faster bends the pipe"}
	floorWork = measure{kind: "work on the rig floor, for each core, stand or station", of: unit.OfDuration, symbol: "h", most: 12 * hour,
		why: "it takes no longer than a whole shift"}
	operation = measure{kind: "operation, such as making up an assembly", of: unit.OfDuration, symbol: "d", most: 10 * day,
		why: "records have hours, at worst a few days"}
	troubleTime = measure{kind: "time that trouble costs, or a repair", of: unit.OfDuration, symbol: "d", most: 100 * day,
		why: "longer ends the expedition"}
	breakdowns = measure{kind: "time between breakdowns", of: unit.OfDuration, symbol: "d", least: 12 * hour, most: 1e4 * day,
		why: "more often is no ship that sails, and ten thousand days are as good as never"}
	services = measure{kind: "time between rig services", of: unit.OfDuration, symbol: "h", least: 4 * hour, most: 1000 * day,
		why: "more often leaves no time for work"}
	bitHours = measure{kind: "life of a bit", of: unit.OfDuration, symbol: "h", least: hour, most: 100 * day,
		why: "bits turn for 9 to 65 h in hard rock (ODP Legs 176 and 192)"}
	foresight = measure{kind: "horizon of the forecast", of: unit.OfDuration, symbol: "h", least: hour, most: 15 * day, single: true,
		why: "no forecast has skill beyond two weeks (from memory)"}
	standLength = measure{kind: "length of a stand", of: unit.OfLength, symbol: "m", least: 5, most: 60, single: true,
		why: "a stand is of one joint to as many as a derrick takes"}
	jointLength = measure{kind: "length of a joint", of: unit.OfLength, symbol: "m", least: 5, most: 20, single: true,
		why: "drill pipe comes in 5.5 to 13.7 m (API ranges, from memory)"}
	barrelDiameter = measure{kind: "diameter of a barrel", of: unit.OfLength, symbol: "in", least: in(unit.OfLength, "1 in"), most: in(unit.OfLength, "12 in"),
		why: "it has to run through the pipe"}
	seaHeight = measure{kind: "sea from which the ship slows down", of: unit.OfLength, symbol: "m", most: 30}
	someCores = measure{kind: "clearance, gap or mismatch of depths", of: unit.OfLength, symbol: "m", most: 50,
		why: "more is more than five cores"}
	hungDepth = measure{kind: "depth of pipe in the hole while logging or hung off", of: unit.OfLength, symbol: "m", most: 1000,
		why: "common practice is 50 to 100 m"}
	rateDepth = measure{kind: "depth from which a rate holds", of: unit.OfLength, symbol: "m", most: 20_000,
		why: "no string reaches deeper"}
	tripRate = measure{kind: "rate of tripping", of: unit.OfStandRate, symbol: "stands/h", least: in(unit.OfStandRate, "1 stands/h"), most: in(unit.OfStandRate, "60 stands/h"),
		why: "a stand takes a minute at least, and an hour at most"}
	wireSpeed = measure{kind: "speed on the wire", of: unit.OfSpeed, symbol: "m/min", least: in(unit.OfSpeed, "5 m/min"), most: in(unit.OfSpeed, "2000 m/min"),
		why: "records have 190 to 280 m/min, cameras 25"}
	loggingSpeed = measure{kind: "speed of logging", of: unit.OfSpeed, symbol: "m/h", least: in(unit.OfSpeed, "20 m/h"), most: in(unit.OfSpeed, "5000 m/h"),
		why: "tools are run at 100 to 1,000 m/h (from memory)"}
	strokeForce = measure{kind: "force of the stroke", of: unit.OfForce, symbol: "kN", least: 1e3, most: 1e6,
		why: "shear pins give way at some 100 kN"}
	linearMass = measure{kind: "mass of pipe", of: unit.OfLinearMass, symbol: "kg/m", least: 5, most: 200,
		why: "the lightest tubing has less, collars have more"}
	gearMass = measure{kind: "mass of the travelling gear", of: unit.OfMass, symbol: "t", least: 1e3, most: 500e3}
	lineWork = measure{kind: "work of the drilling line between cuts", of: unit.OfEnergy, symbol: "ton-mile", least: in(unit.OfEnergy, "50 ton-mile"), most: in(unit.OfEnergy, "100000 ton-mile"),
		why: "common practice is some 1,500"}
	pace = measure{kind: "duration factor", of: unit.OfShare, symbol: "%", least: 0.05, most: 10,
		why: "beyond is twenty times as fast or ten times as slow as the records"}
	otherWork = measure{kind: "other work on site, against trips and moves", of: unit.OfShare, symbol: "%", most: 20,
		why: "more is twenty times as long as the work itself"}
	depthShare = measure{kind: "depth of layers against the survey", of: unit.OfShare, symbol: "%", least: 0.3, most: 3,
		why: "a survey is off by some per cent"}
	chance   = measure{kind: "chance or share", of: unit.OfShare, symbol: "%", most: 1}
	resuming = measure{kind: "share of a limit below which work goes on", of: unit.OfShare, symbol: "%", least: 0.3, most: 1,
		why: "lower, the sea hardly ever is"}
	friction = measure{kind: "friction of the stroke", of: unit.OfShare, symbol: "%", least: 0.01, most: 1}
	tip      = measure{kind: "resistance of the tip", of: unit.OfCount, least: 0.1, most: 100,
		why: "bearing capacity of a deep foundation in clay is 9 (Skempton 1951)"}
)

// rateGroups has the figures of the ship by their kind.
var rateGroups = []struct {
	kind  measure
	rates []rig.Rate
}{
	{shipSpeed, []rig.Rate{rig.SailingSpeed}},
	{hangingSpeed, []rig.Rate{rig.HangingSpeed}},
	{floorWork, []rig.Rate{rig.Positioning, rig.Securing, rig.Strapping, rig.Filling, rig.TopDrive, rig.RigService, rig.OffsetMove, rig.MudlineReset,
		rig.PistonHandling, rig.HalfPistonHandling, rig.ExtendedHandling, rig.RotaryHandling, rig.Shot, rig.CorePull, rig.OrientationWait,
		rig.TemperatureStop, rig.DrillOver, rig.Connection, rig.Bench, rig.CatwalkTime, rig.Sweep, rig.CentreBit, rig.LaboratoryTime, rig.BitRelease,
		rig.Penetrometer, rig.MammalWatch}},
	{operation, []rig.Rate{rig.Pilotage, rig.PistonMakeUp, rig.RotaryMakeUp, rig.LayDown, rig.SlipAndCut, rig.HoleConditioning, rig.LoggingRigUp,
		rig.LoggingRigDown, rig.StringChange, rig.SeismicStations, rig.FunnelDrop, rig.FirstStab, rig.NextStab, rig.HeavyMud, rig.CementPlug,
		rig.Severing, rig.HomeReserve, rig.FirstSiteWork}},
	{troubleTime, []rig.Rate{rig.FailedStartTime, rig.PistonTroubleTime, rig.ExtendedTroubleTime, rig.RotaryTroubleTime, rig.StuckTime, rig.RepairTime}},
	{breakdowns, []rig.Rate{rig.BreakdownEvery}},
	{services, []rig.Rate{rig.RigServiceEvery}},
	{bitHours, []rig.Rate{rig.BitLife}},
	{foresight, []rig.Rate{rig.ForecastHorizon}},
	{standLength, []rig.Rate{rig.StandLength}},
	{jointLength, []rig.Rate{rig.JointLength}},
	{barrelDiameter, []rig.Rate{rig.PistonDiameter}},
	{seaHeight, []rig.Rate{rig.SlowdownFrom}},
	{someCores, []rig.Rate{rig.MudlineClearance, rig.CoreGap, rig.DepthMismatch}},
	{rateDepth, []rig.Rate{rig.ExtendedDeepFrom}},
	{hungDepth, []rig.Rate{rig.HangOffDepth, rig.LoggingPipeDepth}},
	{tripRate, []rig.Rate{rig.Tripping, rig.TrippingInHole}},
	{wireSpeed, []rig.Rate{rig.PistonWire, rig.ExtendedWire, rig.RotaryWire, rig.LoggingWire, rig.CameraSpeed}},
	{loggingSpeed, []rig.Rate{rig.LoggingSpeed}},
	{penetrationRate, []rig.Rate{rig.ExtendedLeastRate}},
	{strokeForce, []rig.Rate{rig.StrokeForce}},
	{linearMass, []rig.Rate{rig.PipeMass}},
	{gearMass, []rig.Rate{rig.TravellingMass}},
	{lineWork, []rig.Rate{rig.LineWork}},
	{pace, []rig.Rate{rig.PistonDurationFactor, rig.PistonAlone, rig.ExtendedDeep, rig.ExtendedDurationFactor, rig.RotaryDurationFactor}},
	{otherWork, []rig.Rate{rig.OtherWork}},
	{depthShare, []rig.Rate{rig.LayerDepth}},
	{chance, []rig.Rate{rig.SlowdownPerMetre, rig.HeaveLoss, rig.FunnelLost, rig.PistonTrouble, rig.ExtendedTrouble, rig.RotaryTrouble,
		rig.BlownLiner, rig.StuckChance, rig.LostBHA, rig.Bridge, rig.WaterCore, rig.MissedMudline, rig.FailedStart}},
	{withoutSpread(chance), []rig.Rate{rig.ForecastSkill}},
	{resuming, []rig.Rate{rig.ResumeAt}},
	{friction, []rig.Rate{rig.StrokeFriction}},
	{tip, []rig.Rate{rig.TipFactor}},
	{countMeasure, []rig.Rate{rig.StandsBetweenFills, rig.Barrels, rig.CatwalkRoom, rig.CoresBetweenSweeps}},
}

// rateKinds gives each figure of the ship what kind it is.
var rateKinds = func() (kinds [rig.Rates]measure) {
	for _, group := range rateGroups {
		for _, r := range group.rates {
			kinds[r] = group.kind
		}
	}
	return kinds
}()

func withoutSpread(m measure) measure {
	m.single = true
	return m
}

// rateMeasure is what values a figure of the ship can have, stated in its unit.
func rateMeasure(r rig.Rate) measure {
	m := rateKinds[r]
	m.symbol = r.Of().Unit
	return m
}
