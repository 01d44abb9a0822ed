package scenario

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
	depthMeasure = measure{kind: "depth below the sea floor", of: unit.OfDepth, symbol: "mbsf", above: true, most: 9000,
		why: "no string is longer: 8385 m with the water, ODP TN31 drillship sheet"}
	waterMeasure = measure{kind: "depth of water", of: unit.OfLength, symbol: "m", least: 10, most: 11_000,
		why: "a drillship draws nearly 10 m, and the deepest trench has 10.9 km (from memory)"}
	offsetMeasure = measure{kind: "start offset", of: unit.OfLength, symbol: "m", such: "3 m", most: 9.5,
		why: "more than a core would leave a gap"}
	seaDaysMeasure = measure{kind: "sea days", of: unit.OfDuration, symbol: "d", such: "56 d", least: 6 * hour, most: 400 * day,
		why: "less is no voyage, and nobody stays out for longer than a year"}
	capMeasure = measure{kind: "cap", of: unit.OfDuration, symbol: "d", such: "9 d", least: 3 * hour, most: 400 * day,
		why: "less is gone before a core is recovered"}
	inPortMeasure = measure{kind: "days in port", of: unit.OfDuration, symbol: "d", such: "5 d", most: 100 * day,
		why: "longer is a refit"}
	taskMeasure = measure{kind: "task", of: unit.OfDuration, symbol: "h", such: "30 h", above: true, most: 100 * day,
		why: "longer is an expedition of its own"}
	everyMeasure = measure{kind: "time between closings", of: unit.OfDuration, symbol: "d", such: "20 d", least: 6 * hour, most: 1e4 * day,
		why: "pipe that is recovered and run again takes hours, and ten thousand days are as good as never"}
	closingMeasure = measure{kind: "closing", of: unit.OfDuration, symbol: "d", such: "2 d", least: 0.5 * hour, most: 100 * day,
		why: "shorter is no reason to recover pipe, and a site closed for longer is one for another season: see not_before and not_after"}
	countMeasure = measure{kind: "count", of: unit.OfCount, least: 1, most: 1000, whole: true,
		why: "nothing on board is counted in more"}
	rankMeasure = measure{kind: "rank", of: unit.OfCount, least: 1, most: 100, whole: true,
		why: "nobody distinguishes more ranks"}
	strokesMeasure = measure{kind: "partial strokes in a row", of: unit.OfCount, least: 1, most: 20, whole: true,
		why: "each is hours of work for little core"}
)

// Of the sea.
var (
	heightMeasure = measure{kind: "height of waves, or heave", of: unit.OfLength, symbol: "m", such: "3 m", least: 0.05, most: 30,
		why: "less is no sea, and the highest ever measured is 19 m (significant, from memory)"}
	waterLimitMeasure = measure{kind: "depth of water from which a limit holds", of: unit.OfLength, symbol: "m", most: 11_000,
		why: "the deepest trench has 10.9 km (from memory)"}
)

// Of the ground.
var (
	rockMeasure = measure{kind: "strength of rock", of: unit.OfPressure, symbol: "MPa", such: "80 MPa", least: 0.1e6, most: 1000e6,
		why: "less is sediment, and the strongest rock has some 500 MPa (from memory)"}
	strengthMeasure = measure{kind: "side shear for each metre below the sea floor", of: unit.OfPressure, symbol: "kPa", per: "/m", least: 1, most: 10_000e3,
		why: "less is water, more is more than any rock"}
	penetrationRate = measure{kind: "rate of drilling or coring", of: unit.OfSpeed, symbol: "m/h", such: "28 m/h", least: in(unit.OfSpeed, "0.02 m/h"), most: in(unit.OfSpeed, "1000 m/h"),
		why: "slower is half a metre a day, faster than pipe is run"}
	recoveryMeasure = measure{kind: "recovery", of: unit.OfShare, symbol: "%", most: 2,
		why: "no core expands to more than twice what was cut"}
)

// Of spreads.
var (
	factorMeasure = measure{kind: "factor of a lognormal spread", of: unit.OfCount, least: 1, above: true, most: 20,
		why: "it is P90 over the median; the widest on record is 6, of what a troubled extended barrel costs"}
	weibullMeasure = measure{kind: "shape_parameter of a Weibull spread", of: unit.OfCount, least: 0.5, most: 50,
		why: "below, most draws are next to nothing; above, there is no spread"}
	shareMeasure    = measure{kind: "share", of: unit.OfShare, symbol: "%", most: 1}
	quantileMeasure = measure{kind: "probability of a quantile", of: unit.OfShare, symbol: "%", above: true, most: 0.9999, why: "100 % has no quantile"}
	persistMeasure  = measure{kind: "persistence", of: unit.OfCount, most: 0.99}
	commonMeasure   = measure{kind: "common", of: unit.OfCount, least: -1, most: 1}
)

// Of ship and string.
var (
	hullLength = measure{kind: "length of the hull", of: unit.OfLength, symbol: "m", such: "140 m", least: 20, most: 500,
		why: "the longest ship has 460 m (from memory)"}
	hullBeam = measure{kind: "beam of the hull", of: unit.OfLength, symbol: "m", such: "21 m", least: 5, most: 100,
		why: "the widest ship has some 70 m (from memory)"}
	hullDraught = measure{kind: "draught of the hull", of: unit.OfLength, symbol: "m", such: "7.5 m", least: 1, most: 40,
		why: "the deepest ship draws 30 m (from memory)"}
	blockMeasure = measure{kind: "block coefficient", of: unit.OfShare, symbol: "%", least: 0.2, most: 1,
		why: "it is the share of the box around the hull that she fills"}
	floorMeasure = measure{kind: "height of the rig floor", of: unit.OfLength, symbol: "m", such: "11 m", most: 100,
		why: "it is counted from sea level"}
	passesMeasure    = measure{kind: "passes of a tool string", of: unit.OfCount, most: 20}
	stockMeasure     = measure{kind: "pipe of one kind on board", of: unit.OfLength, symbol: "m", such: "7000 m", above: true, most: 20_000, single: true}
	collarsMeasure   = measure{kind: "collars or assemblies", of: unit.OfCount, least: 1, most: 100, whole: true, single: true}
	ratingMeasure    = measure{kind: "rating of derrick, hoist or compensator", of: unit.OfForce, symbol: "klbf", above: true, most: in(unit.OfForce, "4500 klbf"), single: true, why: "no hoist carries more"}
	reserveMeasure   = measure{kind: "overpull kept back", of: unit.OfForce, symbol: "klbf", most: in(unit.OfForce, "450 klbf"), single: true, why: "more is more than half of what the strongest pipe bears"}
	overpullMeasure  = measure{kind: "overpull of the refusal rule", of: unit.OfForce, symbol: "klbf", least: in(unit.OfForce, "1 klbf"), most: in(unit.OfForce, "450 klbf"), why: "less pulls out no corer, more is more than half of what the strongest pipe bears"}
	hornMeasure      = measure{kind: "radius of the guide horn", of: unit.OfLength, symbol: "m", such: "107 m", most: 1000, single: true}
	enduranceMeasure = measure{kind: "endurance", of: unit.OfDuration, symbol: "d", such: "75 d", above: true, most: 400 * day, single: true, why: "nobody stays out for longer than a year"}
	strokeMeasure    = measure{kind: "stroke of the compensator", of: unit.OfLength, symbol: "m", such: "6.1 m", above: true, most: 30, single: true}
	keepingMeasure   = measure{kind: "position keeping", of: unit.OfLength, symbol: "m", such: "6 m", above: true, most: 1000, single: true, why: "further off is not on station"}
	currentMeasure   = measure{kind: "current", of: unit.OfSpeed, symbol: "kn", such: "3 kn", above: true, most: in(unit.OfSpeed, "10 kn"), single: true, why: "no ocean current runs at half of it"}
	leastMeasure     = measure{kind: "least depth of water", of: unit.OfLength, symbol: "m", such: "75 m", most: 11_000, single: true}
)
