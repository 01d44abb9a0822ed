package main

import "coredays/cmd/fitlevels/regress"

// Fit is a line with the standard error of each coefficient, by bootstrap over legs, because
// the holes of one leg share crew and ship state.
type Fit struct {
	Terms  []string  `json:"terms"` // name and unit of each coefficient
	Value  []float64 `json:"value"`
	StdErr []float64 `json:"standard_error"`
	Holes  int       `json:"rows"`
}

// At is the fitted value for one row of regressors, the constant 1 among them.
func (f Fit) At(row []float64) float64 { return regress.Dot(f.Value, row) }

// fitMedianLine fits rows to y and finds the standard errors over legs.
func fitMedianLine(terms []string, legs []string, rows [][]float64, y []float64) Fit {
	fit := func(pick []int) []float64 {
		x, z := make([][]float64, len(pick)), make([]float64, len(pick))
		for i, p := range pick {
			x[i], z[i] = rows[p], y[p]
		}
		return regress.LeastAbsolute(x, z)
	}
	return Fit{Terms: terms, Value: regress.LeastAbsolute(rows, y), StdErr: legBootstrap(legs, fit), Holes: len(y)}
}
