// Package basis lists the numbers that a plan rests on: each with its spread, the level at which the
// spread lives, and where it comes from.
package basis

import (
	"math"
	"strings"

	"coredays/model/result"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// From says who gave a number.
type From int

// Who may give one.
const (
	Stated  From = iota // the scenario, or a setting on the command line
	OfShip              // the ship file
	BuiltIn             // the program's own tables: lithologies, climate
)

func (f From) String() string { return [...]string{"scenario", "ship", "built in"}[f] }

// Entry is one number.
type Entry struct {
	Group, Site, Name string
	Low, Mid, High    float64 // in Unit; P10, even, P90; all alike without spread
	Unit              string
	Varies            string // levels of the spread, empty without one
	From              From
	Memory            bool // the source says that it is from memory
	Source            string
	// Quantity is that of the voyage; voyage.NoQuantity for what is never drawn.
	Quantity voyage.Quantity
	// Influence is how much it matters to the days needed.
	result.Influence
}

// Spread reports whether the number has a spread.
func (e *Entry) Spread() bool { return e.Varies != "" }

// measure is the dimension and the unit of people for a number.
type measure struct {
	of     unit.Dimension
	symbol string
	per    string // "/m" for a strength per metre
}

func (m measure) unit() string { return m.symbol + m.per }

// in is a value in the unit of people.
func (m measure) in(si float64) float64 {
	one, err := m.of.Parse(strings.TrimSpace("1 " + m.symbol))
	if err != nil {
		return math.NaN() // no such unit, which a test would find
	}
	return si / one
}

// number is an entry without spread.
func number(group, site, name string, si float64, m measure, from From, source string) Entry {
	x := m.in(si)
	return Entry{Group: group, Site: site, Name: name, Low: x, Mid: x, High: x, Unit: m.unit(), From: from,
		Memory: rig.FromMemory(source), Source: source, Quantity: voyage.NoQuantity, Influence: result.Influence{Share: math.NaN()}}
}

// quantity is an entry with what spread there is.
func quantity(group, site, name string, q spread.Quantity, m measure, from From, source string) Entry {
	e := number(group, site, name, q.Median(), m, from, source)
	if !q.IsFixed() {
		e.Low, e.High, e.Varies = m.in(q.Shape.Quantile(0.1)), m.in(q.Shape.Quantile(0.9)), q.Shares.String()
	}
	return e
}
