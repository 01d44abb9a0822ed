package entry

import (
	"coredays/model/rig"
	"coredays/model/unit"
)

// Kinds of the figures of ship and crew.
var (
	shipSpeed = Measure{kind: "speed of the ship", Of: unit.OfSpeed, Symbol: "kn", Least: in(unit.OfSpeed, "2 kn"), Most: in(unit.OfSpeed, "30 kn"),
		why: "slower, a current carries her off; faster is no drillship"}
	hangingSpeed = Measure{kind: "speed with pipe hanging", Of: unit.OfSpeed, Symbol: "kn", Least: in(unit.OfSpeed, "0.1 kn"), Most: in(unit.OfSpeed, "5 kn"),
		why: "slower is a drift, faster bends the pipe"}
	floorWork = Measure{kind: "work on the rig floor, for each core, stand or station", Of: unit.OfDuration, Symbol: "h", Most: 12 * hour,
		why: "it takes no longer than a whole shift"}
	operation = Measure{kind: "operation, such as making up an assembly", Of: unit.OfDuration, Symbol: "d", Most: 10 * day,
		why: "records have hours, at worst a few days"}
	troubleTime = Measure{kind: "time that trouble costs, or a repair", Of: unit.OfDuration, Symbol: "d", Most: 100 * day,
		why: "longer ends the expedition"}
	breakdowns = Measure{kind: "time between breakdowns", Of: unit.OfDuration, Symbol: "d", Least: 12 * hour, Most: 1e4 * day,
		why: "more often is no ship that sails, and ten thousand days are as good as never"}
	services = Measure{kind: "time between rig services", Of: unit.OfDuration, Symbol: "h", Least: 4 * hour, Most: 1000 * day,
		why: "more often leaves no time for work"}
	bitHours = Measure{kind: "life of a bit", Of: unit.OfDuration, Symbol: "h", Least: hour, Most: 100 * day,
		why: "bits turn for 9 to 65 h in hard rock (ODP Legs 176 and 192)"}
	foresight = Measure{kind: "horizon of the forecast", Of: unit.OfDuration, Symbol: "h", Least: hour, Most: 15 * day, single: true,
		why: "no forecast has skill beyond two weeks (from memory)"}
	standLength = Measure{kind: "length of a stand", Of: unit.OfLength, Symbol: "m", Least: 5, Most: 60, single: true,
		why: "a stand is of one joint to as many as a derrick takes"}
	jointLength = Measure{kind: "length of a joint", Of: unit.OfLength, Symbol: "m", Least: 5, Most: 20, single: true,
		why: "drill pipe comes in 5.5 to 13.7 m (API ranges, from memory)"}
	tripFill = Measure{kind: "fill after a trip", Of: unit.OfLength, Symbol: "m", Most: 500,
		why: "118 m in 15 h are on record (IODP Exp 311)"}
	hoistSpeed = Measure{kind: "speed of the hoist under load", Of: unit.OfSpeed, Symbol: "m/s", Least: 0.01, Most: 10,
		why: "blocks run at some 2 m/s at most (from memory)"}
	barrelDiameter = Measure{kind: "diameter of a barrel", Of: unit.OfLength, Symbol: "in", Least: in(unit.OfLength, "1 in"), Most: in(unit.OfLength, "12 in"),
		why: "it has to run through the pipe"}
	seaHeight = Measure{kind: "sea from which the ship slows down", Of: unit.OfLength, Symbol: "m", Most: 30}
	someCores = Measure{kind: "clearance, gap or mismatch of depths", Of: unit.OfLength, Symbol: "m", Most: 50,
		why: "more is more than five cores"}
	hungDepth = Measure{kind: "depth of pipe in the hole while logging or hung off", Of: unit.OfLength, Symbol: "m", Most: 1000,
		why: "common practice is 50 to 100 m"}
	rateDepth = Measure{kind: "depth from which a rate holds", Of: unit.OfLength, Symbol: "m", Most: 20_000,
		why: "no string reaches deeper"}
	tripRate = Measure{kind: "rate of tripping", Of: unit.OfStandRate, Symbol: "stands/h", Least: in(unit.OfStandRate, "1 stands/h"), Most: in(unit.OfStandRate, "60 stands/h"),
		why: "a stand takes a minute at least, and an hour at most"}
	wireSpeed = Measure{kind: "speed on the wire", Of: unit.OfSpeed, Symbol: "m/min", Least: in(unit.OfSpeed, "5 m/min"), Most: in(unit.OfSpeed, "2000 m/min"),
		why: "records have 190 to 280 m/min, cameras 25"}
	loggingSpeed = Measure{kind: "speed of logging", Of: unit.OfSpeed, Symbol: "m/h", Least: in(unit.OfSpeed, "20 m/h"), Most: in(unit.OfSpeed, "5000 m/h"),
		why: "tools are run at 100 to 1,000 m/h (from memory)"}
	strokeForce = Measure{kind: "force of the stroke", Of: unit.OfForce, Symbol: "kN", Least: 1e3, Most: 1e6,
		why: "shear pins give way at some 100 kN"}
	linearMass = Measure{kind: "mass of pipe", Of: unit.OfLinearMass, Symbol: "kg/m", Least: 5, Most: 200,
		why: "the lightest tubing has less, collars have more"}
	gearMass = Measure{kind: "mass of the travelling gear", Of: unit.OfMass, Symbol: "t", Least: 1e3, Most: 500e3}
	lineWork = Measure{kind: "work of the drilling line between cuts", Of: unit.OfEnergy, Symbol: "ton-mile", Least: in(unit.OfEnergy, "50 ton-mile"), Most: in(unit.OfEnergy, "100000 ton-mile"),
		why: "common practice is some 1,500"}
	pace = Measure{kind: "duration factor", Of: unit.OfShare, Symbol: "%", Least: 0.05, Most: 10,
		why: "beyond is twenty times as fast or ten times as slow as the records"}
	otherWork = Measure{kind: "other work on site, against trips and moves", Of: unit.OfShare, Symbol: "%", Most: 20,
		why: "more is twenty times as long as the work itself"}
	depthShare = Measure{kind: "depth of layers against the survey", Of: unit.OfShare, Symbol: "%", Least: 0.3, Most: 3,
		why: "a survey is off by some per cent"}
	chance   = Measure{kind: "chance or share", Of: unit.OfShare, Symbol: "%", Most: 1}
	resuming = Measure{kind: "share of a limit below which work goes on", Of: unit.OfShare, Symbol: "%", Least: 0.3, Most: 1,
		why: "lower, the sea hardly ever is"}
	friction = Measure{kind: "friction of the stroke", Of: unit.OfShare, Symbol: "%", Least: 0.01, Most: 1}
	tip      = Measure{kind: "resistance of the tip", Of: unit.OfCount, Least: 0.1, Most: 100,
		why: "bearing capacity of a deep foundation in clay is 9 (Skempton 1951)"}
)

// rateGroups has the figures of the ship by their kind.
var rateGroups = []struct {
	kind  Measure
	rates []rig.Rate
}{
	{shipSpeed, []rig.Rate{rig.SailingSpeed}},
	{hangingSpeed, []rig.Rate{rig.HangingSpeed}},
	{floorWork, []rig.Rate{rig.Racker, rig.Positioning, rig.Securing, rig.Strapping, rig.Filling, rig.TopDrive, rig.RigService, rig.OffsetMove, rig.MudlineReset,
		rig.PistonHandling, rig.HalfPistonHandling, rig.ExtendedHandling, rig.RotaryHandling, rig.Shot, rig.CorePull, rig.OrientationWait,
		rig.TemperatureStop, rig.DrillOver, rig.Connection, rig.Bench, rig.CatwalkTime, rig.Sweep, rig.CentreBit, rig.LaboratoryTime, rig.BitRelease,
		rig.Penetrometer, rig.MammalWatch, rig.CasingJoint}},
	{operation, []rig.Rate{rig.Pilotage, rig.Approach, rig.PistonMakeUp, rig.RotaryMakeUp, rig.LayDown, rig.SlipAndCut, rig.HoleConditioning, rig.LoggingRigUp,
		rig.LoggingRigDown, rig.StringChange, rig.SeismicStations, rig.FunnelDrop, rig.FirstStab, rig.NextStab, rig.HeavyMud, rig.CementPlug,
		rig.Severing, rig.HomeReserve, rig.FirstSiteWork, rig.ConeMakeUp, rig.CasingLanding, rig.CasingCement, rig.CementSetting,
		rig.ShoeDrilling, rig.BareSurvey}},
	{troubleTime, []rig.Rate{rig.FailedStartTime, rig.PistonTroubleTime, rig.ExtendedTroubleTime, rig.RotaryTroubleTime, rig.StuckTime, rig.HangerTime, rig.RepairTime}},
	{breakdowns, []rig.Rate{rig.BreakdownEvery}},
	{services, []rig.Rate{rig.RigServiceEvery}},
	{bitHours, []rig.Rate{rig.BitLife}},
	{foresight, []rig.Rate{rig.ForecastHorizon}},
	{standLength, []rig.Rate{rig.StandLength}},
	{jointLength, []rig.Rate{rig.JointLength, rig.CasingJointLength}},
	{barrelDiameter, []rig.Rate{rig.PistonDiameter}},
	{seaHeight, []rig.Rate{rig.SlowdownFrom}},
	{CoreMeasure, []rig.Rate{rig.PistonAdvance, rig.ExtendedAdvance, rig.RotaryAdvance}},
	{someCores, []rig.Rate{rig.MudlineClearance, rig.CoreGap, rig.DepthMismatch}},
	{hoistSpeed, []rig.Rate{rig.HoistingSpeed, rig.LoweringSpeed}},
	{tripFill, []rig.Rate{rig.TripFill}},
	{rateDepth, []rig.Rate{rig.ExtendedDeepFrom}},
	{hungDepth, []rig.Rate{rig.HangOffDepth, rig.LoggingPipeDepth}},
	{tripRate, []rig.Rate{rig.Tripping, rig.TrippingInHole}},
	{wireSpeed, []rig.Rate{rig.PistonWire, rig.ExtendedWire, rig.RotaryWire, rig.LoggingWire, rig.CameraSpeed}},
	{loggingSpeed, []rig.Rate{rig.LoggingSpeed}},
	{PenetrationRate, []rig.Rate{rig.ExtendedLeastRate, rig.Jetting, rig.WashDown}},
	{strokeForce, []rig.Rate{rig.StrokeForce}},
	{linearMass, []rig.Rate{rig.PipeMass}},
	{gearMass, []rig.Rate{rig.TravellingMass}},
	{lineWork, []rig.Rate{rig.LineWork}},
	{pace, []rig.Rate{rig.PistonDurationFactor, rig.PistonAlone, rig.ExtendedDeep, rig.ExtendedDurationFactor, rig.RotaryDurationFactor, rig.DrillInPace, rig.HardShoeInRock, rig.HardShoeInSoft, rig.HardShoeRecovery}},
	{otherWork, []rig.Rate{rig.OtherWork}},
	{depthShare, []rig.Rate{rig.LayerDepth}},
	{chance, []rig.Rate{rig.SlowdownPerMetre, rig.HeaveLoss, rig.FunnelLost, rig.PistonTrouble, rig.ExtendedTrouble, rig.RotaryTrouble,
		rig.BlownLiner, rig.StuckChance, rig.LostBHA, rig.Bridge, rig.WaterCore, rig.MissedMudline, rig.FailedStart, rig.BareStart, rig.HangerFailure}},
	{withoutSpread(chance), []rig.Rate{rig.ForecastSkill}},
	{resuming, []rig.Rate{rig.ResumeAt}},
	{friction, []rig.Rate{rig.StrokeFriction}},
	{tip, []rig.Rate{rig.TipFactor}},
	{CountMeasure, []rig.Rate{rig.StandsBetweenFills, rig.Barrels, rig.CatwalkRoom, rig.CoresBetweenSweeps}},
}

// rateKinds gives each figure of the ship what kind it is.
var rateKinds = func() (kinds [rig.Rates]Measure) {
	for _, group := range rateGroups {
		for _, r := range group.rates {
			kinds[r] = group.kind
		}
	}
	return kinds
}()

func withoutSpread(m Measure) Measure {
	m.single = true
	return m
}

// RateMeasure is what values a figure of the ship can have, stated in its unit.
func RateMeasure(r rig.Rate) Measure {
	m := rateKinds[r]
	m.Symbol = r.Of().Unit
	return m
}
