// Package learn says what values that were observed tell of the spreads from which they came.
//
// A quantity with spread is a function of a normal score, and that score is the sum of the scores of the
// levels at which the spread lives: expedition, site, hole and run (model/spread). All of them are Gaussian, so
// that observing some values conditions the rest in closed form: a ship with few observations keeps her stated
// figures, one with many goes by what was observed, and the shares of the levels say how fast.
//
// The formulas are those of the conditional distribution of a multivariate normal (Rasmussen and Williams 2006,
// eq. A.6, from memory). A value of which only a bound is known, such as work that was cut short, is conditioned
// on by expectation propagation (Minka 2001, from memory): exact in mean and variance where there is one such
// value, very near where there are more.
package learn
