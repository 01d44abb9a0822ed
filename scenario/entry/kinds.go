package entry

import "coredays/model/unit"

// What a planner can mean, by kind of quantity. The bounds are generous: they keep out slips of the unit
// and of the decimal point, and figures with which an expedition never ends, not what is unlikely. The
// reason stands beside each; one without a source is judgement. The manual lists them all.
//
// A value has to lie within the bounds; of a spread all but one draw in a hundred at either end.

const (
	hour = float64(unit.Hour)
	day  = float64(unit.Day)
)

// in is a bound as people write it.
func in(of unit.Dimension, text string) float64 {
	value, err := of.Parse(text)
	if err != nil {
		panic(err) // a slip in the tables here, which any test meets
	}
	return value
}

// Of the plan.
var (
	DepthMeasure = Measure{kind: "depth below the sea floor", Of: unit.OfDepth, Symbol: "mbsf", Above: true, Most: 9000,
		why: "no string is longer: 8385 m with the water, ODP TN31 drillship sheet"}
	WaterMeasure = Measure{kind: "depth of water", Of: unit.OfLength, Symbol: "m", Least: 10, Most: 11_000,
		why: "a drillship draws nearly 10 m, and the deepest trench has 10.9 km (from memory)"}
	FillMeasure = Measure{kind: "fill of an existing hole", Of: unit.OfLength, Symbol: "m", such: "30 m", Above: true, Most: 9000,
		why: "no hole is deeper"}
	OffsetMeasure = Measure{kind: "start offset", Of: unit.OfLength, Symbol: "m", such: "3 m", Most: 9.5,
		why: "more than a core would leave a gap"}
	SeaDaysMeasure = Measure{kind: "sea days", Of: unit.OfDuration, Symbol: "d", such: "56 d", Least: 6 * hour, Most: 400 * day,
		why: "less is no voyage, and nobody stays out for longer than a year"}
	CapMeasure = Measure{kind: "cap", Of: unit.OfDuration, Symbol: "d", such: "9 d", Least: 3 * hour, Most: 400 * day,
		why: "less is gone before a core is recovered"}
	InPortMeasure = Measure{kind: "days in port", Of: unit.OfDuration, Symbol: "d", such: "5 d", Most: 100 * day,
		why: "longer is a refit"}
	TaskMeasure = Measure{kind: "task", Of: unit.OfDuration, Symbol: "h", such: "30 h", Above: true, Most: 100 * day,
		why: "longer is an expedition of its own"}
	EveryMeasure = Measure{kind: "time between closings", Of: unit.OfDuration, Symbol: "d", such: "20 d", Least: 6 * hour, Most: 1e4 * day,
		why: "pipe that is recovered and run again takes hours, and ten thousand days are as good as never"}
	ClosingMeasure = Measure{kind: "closing", Of: unit.OfDuration, Symbol: "d", such: "2 d", Least: 0.5 * hour, Most: 100 * day,
		why: "shorter is no reason to recover pipe, and a site closed for longer is one for another season: see not_before and not_after"}
	CountMeasure = Measure{kind: "count", Of: unit.OfCount, Least: 1, Most: 1000, Whole: true,
		why: "nothing on board is counted in more"}
	CoreMeasure = Measure{kind: "length of a core", Of: unit.OfLength, Symbol: "m", such: "4.8 m", Least: 0.5, Most: 20,
		why: "shorter is not worth a cycle, and longer is no barrel"}
	RankMeasure = Measure{kind: "rank", Of: unit.OfCount, Least: 1, Most: 100, Whole: true,
		why: "nobody distinguishes more ranks"}
	StrokesMeasure = Measure{kind: "partial strokes in a row", Of: unit.OfCount, Least: 1, Most: 20, Whole: true,
		why: "each is hours of work for little core"}
)

// Of the sea.
var (
	HeightMeasure = Measure{kind: "height of waves, or heave", Of: unit.OfLength, Symbol: "m", such: "3 m", Least: 0.05, Most: 30,
		why: "less is no sea, and the highest ever measured is 19 m (significant, from memory)"}
	WaterLimitMeasure = Measure{kind: "depth of water from which a limit holds", Of: unit.OfLength, Symbol: "m", Most: 11_000,
		why: "the deepest trench has 10.9 km (from memory)"}
)

// Of the ground.
var (
	RockMeasure = Measure{kind: "strength of rock", Of: unit.OfPressure, Symbol: "MPa", such: "80 MPa", Least: 0.1e6, Most: 1000e6,
		why: "less is sediment, and the strongest rock has some 500 MPa (from memory)"}
	StrengthMeasure = Measure{kind: "side shear for each metre below the sea floor", Of: unit.OfPressure, Symbol: "kPa", per: "/m", Least: 1, Most: 10_000e3,
		why: "less is water, more is more than any rock"}
	PenetrationRate = Measure{kind: "rate of drilling or coring", Of: unit.OfSpeed, Symbol: "m/h", such: "28 m/h", Least: in(unit.OfSpeed, "0.02 m/h"), Most: in(unit.OfSpeed, "1000 m/h"),
		why: "slower is half a metre a day, faster than pipe is run"}
	StickingMeasure = Measure{kind: "chance of sticking against that in mud", Of: unit.OfShare, Symbol: "%", Most: 50,
		why: "more is a hole that no string leaves"}
	WearMeasure = Measure{kind: "wear of a bit against that in hard rock", Of: unit.OfShare, Symbol: "%", Least: 0.01, Most: 20,
		why: "more wears a bit in three hours"}
	RecoveryMeasure = Measure{kind: "recovery", Of: unit.OfShare, Symbol: "%", Most: 2,
		why: "no core expands to more than twice what was cut"}
)

// Of spreads.
var (
	FactorMeasure = Measure{kind: "factor of a lognormal spread", Of: unit.OfCount, Least: 1, Above: true, Most: 20,
		why: "it is P90 over the median; the widest on record is 6, of what a troubled extended barrel costs"}
	weibullMeasure = Measure{kind: "shape_parameter of a Weibull spread", Of: unit.OfCount, Least: 0.5, Most: 50,
		why: "below, most draws are next to nothing; above, there is no spread"}
	ShareMeasure    = Measure{kind: "share", Of: unit.OfShare, Symbol: "%", Most: 1}
	quantileMeasure = Measure{kind: "probability of a quantile", Of: unit.OfShare, Symbol: "%", Above: true, Most: 0.9999, why: "100 % has no quantile"}
	persistMeasure  = Measure{kind: "persistence", Of: unit.OfCount, Most: 0.99}
	commonMeasure   = Measure{kind: "common", Of: unit.OfCount, Least: -1, Most: 1}
)

// Of ship and string.
var (
	HullLength = Measure{kind: "length of the hull", Of: unit.OfLength, Symbol: "m", such: "140 m", Least: 20, Most: 500,
		why: "the longest ship has 460 m (from memory)"}
	HullBeam = Measure{kind: "beam of the hull", Of: unit.OfLength, Symbol: "m", such: "21 m", Least: 5, Most: 100,
		why: "the widest ship has some 70 m (from memory)"}
	HullDraught = Measure{kind: "draught of the hull", Of: unit.OfLength, Symbol: "m", such: "7.5 m", Least: 1, Most: 40,
		why: "the deepest ship draws 30 m (from memory)"}
	BlockMeasure = Measure{kind: "block coefficient", Of: unit.OfShare, Symbol: "%", Least: 0.2, Most: 1,
		why: "it is the share of the box around the hull that she fills"}
	FloorMeasure = Measure{kind: "height of the rig floor", Of: unit.OfLength, Symbol: "m", such: "11 m", Most: 100,
		why: "it is counted from sea level"}
	PassesMeasure    = Measure{kind: "passes of a tool string", Of: unit.OfCount, Most: 20}
	StockMeasure     = Measure{kind: "pipe of one kind on board", Of: unit.OfLength, Symbol: "m", such: "7000 m", Above: true, Most: 20_000, single: true}
	CollarsMeasure   = Measure{kind: "collars or assemblies", Of: unit.OfCount, Least: 1, Most: 100, Whole: true, single: true}
	RatingMeasure    = Measure{kind: "rating of derrick, hoist or compensator", Of: unit.OfForce, Symbol: "klbf", Above: true, Most: in(unit.OfForce, "4500 klbf"), single: true, why: "no hoist carries more"}
	ReserveMeasure   = Measure{kind: "overpull kept back", Of: unit.OfForce, Symbol: "klbf", Most: in(unit.OfForce, "450 klbf"), single: true, why: "more is more than half of what the strongest pipe bears"}
	OverpullMeasure  = Measure{kind: "overpull of the refusal rule", Of: unit.OfForce, Symbol: "klbf", Least: in(unit.OfForce, "1 klbf"), Most: in(unit.OfForce, "450 klbf"), why: "less pulls out no corer, more is more than half of what the strongest pipe bears"}
	HornMeasure      = Measure{kind: "radius of the guide horn", Of: unit.OfLength, Symbol: "m", such: "107 m", Most: 1000, single: true}
	EnduranceMeasure = Measure{kind: "endurance", Of: unit.OfDuration, Symbol: "d", such: "75 d", Above: true, Most: 400 * day, single: true, why: "nobody stays out for longer than a year"}
	StrokeMeasure    = Measure{kind: "stroke of the compensator", Of: unit.OfLength, Symbol: "m", such: "6.1 m", Above: true, Most: 30, single: true}
	KeepingMeasure   = Measure{kind: "position keeping", Of: unit.OfLength, Symbol: "m", such: "6 m", Above: true, Most: 1000, single: true, why: "further off is not on station"}
	CurrentMeasure   = Measure{kind: "current", Of: unit.OfSpeed, Symbol: "kn", such: "3 kn", Above: true, Most: in(unit.OfSpeed, "10 kn"), single: true, why: "no ocean current runs at half of it"}
	LeastMeasure     = Measure{kind: "least depth of water", Of: unit.OfLength, Symbol: "m", such: "75 m", Most: 11_000, single: true}
)
