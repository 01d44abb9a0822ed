// Package simtest has plans for the tests of the simulator: an invented ship whose every rate is a round number.
package simtest
