package entry

import (
	"math"

	"coredays/model/spread"
)

// form is one way to write a quantity: the keys that it needs and may have.
type form struct {
	name      string
	needs     []string
	may       []string
	takes     func(m Measure, key string) Measure // what values its keys have
	makeShape func(v map[string]float64, m Measure) (spread.Shape, error)
}

// inUnit is for keys that have the unit of the quantity itself.
func inUnit(m Measure, _ string) Measure { return m }

// plainFactor is for the keys of shapes that are plain numbers.
func plainFactor(m Measure, key string) Measure {
	switch key {
	case "factor":
		return FactorMeasure
	case "shape_parameter":
		return weibullMeasure
	}
	return m
}

// boundInUnit lets the lowest value be one that is never quite reached.
func boundInUnit(m Measure, key string) Measure {
	m.Above = m.Above && key != "lowest"
	return m
}

var valueForm = form{"value", []string{"value"}, nil, inUnit,
	func(v map[string]float64, _ Measure) (spread.Shape, error) { return spread.Fixed(v["value"]), nil }}

var tripleForm = form{"low, mid and high", []string{"low", "mid", "high"}, []string{"lowest", "highest"}, boundInUnit, metalog}

// metalog fits low, mid and high. Nothing that a scenario states can be negative, and shares end at 1.
func metalog(v map[string]float64, m Measure) (spread.Shape, error) {
	lower, upper := 0.0, math.Inf(1)
	if m.chance() {
		upper = 1
	}
	if bound, given := v["lowest"]; given {
		lower = bound
	}
	if bound, given := v["highest"]; given {
		upper = bound
	}
	return spread.NewMetalog(spread.Triple{Low: v["low"], Mid: v["mid"], High: v["high"]}, lower, upper)
}

// shapeForms are the shapes by their statistical names.
var shapeForms = []form{
	{"lognormal", []string{"median", "factor"}, nil, plainFactor,
		func(v map[string]float64, _ Measure) (spread.Shape, error) {
			return spread.NewLognormal(v["median"], v["factor"])
		}},
	{"uniform", []string{"lowest", "highest"}, nil, inUnit,
		func(v map[string]float64, _ Measure) (spread.Shape, error) {
			return spread.NewUniform(v["lowest"], v["highest"])
		}},
	{"triangular", []string{"lowest", "mode", "highest"}, nil, inUnit,
		func(v map[string]float64, _ Measure) (spread.Shape, error) {
			return spread.NewTriangular(v["lowest"], v["mode"], v["highest"])
		}},
	{"weibull", []string{"scale", "shape_parameter"}, nil, plainFactor,
		func(v map[string]float64, _ Measure) (spread.Shape, error) {
			return spread.NewWeibull(v["scale"], v["shape_parameter"])
		}},
	{"exponential", []string{"mean"}, nil, inUnit,
		func(v map[string]float64, _ Measure) (spread.Shape, error) { return spread.NewExponential(v["mean"]) }},
}
