package scenario

import (
	"path/filepath"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
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
func (c *clerk) ship(t document.Text) vessel {
	name := c.Words("ship", t, builtInShip)
	if !t.Given {
		c.Warn("no ship is given: the built-in %s is used", builtInShip)
	}
	if name == builtInShip {
		return builtIn().ship
	}
	path := name
	if !filepath.IsAbs(path) {
		path = filepath.Join(filepath.Dir(c.File), path)
	}
	c.reads = append(c.reads, path)
	data, err := document.ReadFile(path)
	if err != nil {
		c.Fault("ship", name, builtInShip+", or the path of a ship file ("+err.Error()+")")
		return builtIn().ship
	}
	ship, faults := readShip(path, data)
	c.Faults = append(c.Faults, faults...)
	return ship
}

// readShip reads a ship file.
func readShip(name string, data []byte) (vessel, fault.List) {
	r, f, readable := entry.Mirrored[shipFile](name, data)
	c := &clerk{Reader: r}
	if !readable {
		return vessel{}, c.Faults
	}
	ship := c.vessel(f)
	return ship, c.Faults
}

func (c *clerk) vessel(f shipFile) vessel {
	c.Version(f.Version)
	s := vessel{Ship: rig.Ship{
		Name:     c.Name("name", f.Name),
		Source:   c.Words("source", f.Source, c.File),
		Rates:    c.shipRates(f.Rates),
		Limits:   c.limits("limits", f.Limits, nil),
		Hull:     c.hull(f.Hull),
		Heading:  c.heading(f.Heading),
		RigFloor: unit.Length(c.Number("rig_floor", f.RigFloor, entry.FloorMeasure)),
	}}
	c.repairs(f.Rates, s.Rates)
	c.servicing(f.Rates, s.Rates)
	if f.Storm == nil {
		c.Fault("storm", "", "clear_sea_floor and recover_pipe")
	}
	s.Storm = c.storm("storm", f.Storm, rig.Storm{})
	s.inPort = c.Quantity("in_port_before_sailing", f.InPortBeforeSailing, entry.InPortMeasure, spread.Quantity{Shares: spread.All(spread.Expedition)})
	if f.Refusal == nil || !f.Refusal.Overpull.Given || !f.Refusal.PartialStrokes.Given || !f.Refusal.DrillOver.Given || !f.Refusal.Then.Given {
		c.Fault("refusal", "", "overpull, partial_strokes, drill_over and then")
	}
	s.refusal = c.refusal("refusal", f.Refusal, plan.Refusal{})
	s.Strings = c.strings(f.ToolStrings)
	c.limitsSourced(f)
	c.wholeString(f)
	c.tubulars(f.String, f.Endurance, f.LeastWaterDepth, &s.Ship)
	c.figure("position_keeping", f.PositionKeeping, entry.KeepingMeasure, &s.PositionKeeping)
	c.figure("most_current", f.MostCurrent, entry.CurrentMeasure, &s.MostCurrent)
	return s
}
