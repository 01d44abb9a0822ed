package main

import (
	"math"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/stat/distuv"
)

// censoredFit describes log depth of refusal: mean + site effect + hole effect, both normal.
type censoredFit struct{ mean, site, hole float64 }

// hermitePoints integrate over the site effect to better than the data can tell.
const hermitePoints = 24

// fitCensored maximises the marginal likelihood of a random-effects lognormal with censoring on
// the right: a site's likelihood is the mean over its effect of the product over its holes of
// density (refused) or survival (stopped); Gauss-Hermite quadrature takes the mean.
func fitCensored(stops []Stop) censoredFit {
	sites := groupRows(column(stops, func(s Stop) string { return s.Site }), len(stops))
	points, weights := make([]float64, hermitePoints), make([]float64, hermitePoints)
	quad.Hermite{}.FixedLocations(points, weights, math.Inf(-1), math.Inf(1))
	loss := func(x []float64) float64 {
		f := censoredFit{x[0], math.Exp(x[1]), math.Exp(x[2])}
		sum := 0.0
		for _, rows := range sites {
			sum -= f.logLikelihood(stops, rows, points, weights)
		}
		return sum
	}
	x := compass(loss, []float64{5, -1, -1}, 0.5, 1e-4)
	return censoredFit{x[0], math.Exp(x[1]), math.Exp(x[2])}
}

// compass walks to the nearest minimum along the axes, halving the step where no axis leads down
// (Hooke & Jeeves 1961 without pattern moves, from memory): three smooth parameters need no more.
func compass(loss func([]float64) float64, x []float64, step, least float64) []float64 {
	for best := loss(x); step > least; {
		moved := false
		for i := range x {
			for _, d := range []float64{step, -step} {
				x[i] += d
				if l := loss(x); l < best {
					best, moved = l, true
					break
				}
				x[i] -= d
			}
		}
		if !moved {
			step /= 2
		}
	}
	return x
}

// logLikelihood of one site. The points integrate exp(-u^2)·g(u), so the effect is sqrt(2)·u·sd
// and the weights sum to sqrt(pi), the same at every parameter and left out.
func (f censoredFit) logLikelihood(stops []Stop, rows []int, points, weights []float64) float64 {
	terms := make([]float64, len(points))
	highest := math.Inf(-1)
	for i, u := range points {
		terms[i] = math.Log(weights[i]) + f.logGiven(stops, rows, math.Sqrt2*u*f.site)
		highest = math.Max(highest, terms[i])
	}
	sum := 0.0
	for _, t := range terms {
		sum += math.Exp(t - highest)
	}
	return highest + math.Log(sum)
}

func (f censoredFit) logGiven(stops []Stop, rows []int, effect float64) float64 {
	hole := distuv.Normal{Mu: f.mean + effect, Sigma: f.hole}
	sum := 0.0
	for _, r := range rows {
		y := math.Log(stops[r].Depth)
		if stops[r].Changed {
			sum += hole.LogProb(y)
		} else {
			sum += math.Log(math.Max(hole.Survival(y), 1e-300))
		}
	}
	return sum
}
