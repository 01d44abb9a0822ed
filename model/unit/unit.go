// Package unit holds the quantities of coredays as types in SI units, with the text forms
// that planners and drillers write: "3420 m", "22 stands/h", "80 klbf".
//
// A number without its unit is an error; counts and shares alone may stand without. Inside the code a value is always in the base unit
// of its type; only this package knows any other unit.
package unit

// Length is a distance in metres: water depth, pipe, core.
type Length float64

// Depth is a depth below the sea floor in metres, written "250 mbsf".
type Depth float64

// Duration is a span of time in seconds. It is not time.Duration because simulated spans are
// drawn from continuous distributions and summed millions of times.
type Duration float64

// Speed is in metres per second: the ship, the wire, the bit.
type Speed float64

// Force is in newtons: overpull, hook load, weight on bit.
type Force float64

// Pressure is in pascals: shear strength, pump pressure.
type Pressure float64

// Mass is in kilograms.
type Mass float64

// LinearMass is in kilograms per metre: pipe and collars.
type LinearMass float64

// Energy is in joules: the work done by the drilling line, written in ton-miles by the trade.
type Energy float64

// Share is a plain ratio, written "65 %" or "0.65".
type Share float64

// StandRate is in stands of pipe per second, written "22 stands/h".
type StandRate float64

// Often used spans.
const (
	Minute Duration = 60
	Hour   Duration = 3600
	Day    Duration = 86400
)

// Often used factors to SI.
const (
	Knot         Speed  = nauticalMile * perHour
	NauticalMile Length = nauticalMile
	Foot         Length = foot
	PoundForce   Force  = lbf
)

// Hours is the duration in hours.
func (d Duration) Hours() float64 { return float64(d / Hour) }

// Days is the duration in days.
func (d Duration) Days() float64 { return float64(d / Day) }

// Minutes is the duration in minutes.
func (d Duration) Minutes() float64 { return float64(d / Minute) }
