package spread

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// NewLognormal is the lognormal through its median and the factor between the median and the
// P90 value.
func NewLognormal(median, factor float64) (Shape, error) {
	if median <= 0 || factor <= 1 {
		return nil, errors.New("a lognormal needs a median above 0 and a factor above 1")
	}
	return distuv.LogNormal{Mu: math.Log(median), Sigma: math.Log(factor) / Score(0.9)}, nil
}

// NewUniform spreads evenly between two values.
func NewUniform(lowest, highest float64) (Shape, error) {
	if lowest >= highest {
		return nil, errors.New("a uniform spread needs a lowest value below its highest")
	}
	return distuv.Uniform{Min: lowest, Max: highest}, nil
}

// NewTriangular has its peak at the mode.
func NewTriangular(lowest, mode, highest float64) (Shape, error) {
	if !(lowest <= mode && mode <= highest && lowest < highest) {
		return nil, errors.New("a triangular spread needs lowest, mode and highest in rising order")
	}
	return distuv.NewTriangle(lowest, highest, mode, nil), nil
}

// NewWeibull has the given scale and shape parameter.
func NewWeibull(scale, shape float64) (Shape, error) {
	if scale <= 0 || shape <= 0 {
		return nil, errors.New("a Weibull spread needs a scale and a shape above 0")
	}
	return distuv.Weibull{Lambda: scale, K: shape}, nil
}

// NewExponential has the given mean.
func NewExponential(mean float64) (Shape, error) {
	if mean <= 0 {
		return nil, errors.New("an exponential spread needs a mean above 0")
	}
	return distuv.Exponential{Rate: 1 / mean}, nil
}
