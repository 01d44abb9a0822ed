package scenario

import (
	"path/filepath"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/unit"
)

// vessel is a ship with what its file says beside what the ship is.
type vessel struct {
	rig.Ship
	inPort  spread.Quantity
	refusal plan.Refusal
}

// builtInShip is the name of the ship that needs no file.
const builtInShip = "riserless drillship"

// ship finds the ship that a scenario names: the built-in one, or a file beside the scenario.
func (c *clerk) ship(t text) vessel {
	name := c.words("ship", t, builtInShip)
	if !t.given {
		c.warn("no ship is given: the built-in %s is used", builtInShip)
	}
	if name == builtInShip {
		return builtIn().ship
	}
	path := name
	if !filepath.IsAbs(path) {
		path = filepath.Join(filepath.Dir(c.file), path)
	}
	c.reads = append(c.reads, path)
	data, err := readFile(path)
	if err != nil {
		c.fault("ship", name, builtInShip+", or the path of a ship file ("+err.Error()+")")
		return builtIn().ship
	}
	ship, faults := readShip(path, data)
	c.faults = append(c.faults, faults...)
	return ship
}

// readShip reads a ship file.
func readShip(name string, data []byte) (vessel, Faults) {
	r, f, readable := mirrored[shipFile](name, data)
	c := &clerk{reader: r}
	if !readable {
		return vessel{}, c.faults
	}
	ship := c.vessel(f)
	return ship, c.faults
}

func (c *clerk) vessel(f shipFile) vessel {
	c.version(f.Version)
	s := vessel{Ship: rig.Ship{
		Name:     c.name("name", f.Name),
		Source:   c.words("source", f.Source, c.file),
		Rates:    c.shipRates(f.Rates),
		Limits:   c.limits("limits", f.Limits, nil),
		Hull:     c.hull(f.Hull),
		Heading:  c.heading(f.Heading),
		RigFloor: unit.Length(c.number("rig_floor", f.RigFloor, floorMeasure)),
	}}
	c.repairs(f.Rates, s.Rates)
	c.servicing(f.Rates, s.Rates)
	if f.Storm == nil {
		c.fault("storm", "", "clear_sea_floor and recover_pipe")
	}
	s.Storm = c.storm("storm", f.Storm, rig.Storm{})
	s.inPort = c.quantity("in_port_before_sailing", f.InPortBeforeSailing, inPortMeasure, spread.Quantity{Shares: spread.All(spread.Expedition)})
	if f.Refusal == nil || !f.Refusal.Overpull.given || !f.Refusal.PartialStrokes.given || !f.Refusal.DrillOver.given || !f.Refusal.Then.given {
		c.fault("refusal", "", "overpull, partial_strokes, drill_over and then")
	}
	s.refusal = c.refusal("refusal", f.Refusal, plan.Refusal{})
	s.Strings = c.strings(f.ToolStrings)
	c.limitsSourced(f)
	c.wholeString(f)
	c.tubulars(f.String, f.Endurance, f.LeastWaterDepth, &s.Ship)
	c.figure("position_keeping", f.PositionKeeping, keepingMeasure, &s.PositionKeeping)
	c.figure("most_current", f.MostCurrent, currentMeasure, &s.MostCurrent)
	return s
}
