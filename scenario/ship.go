package scenario

import (
	"math"
	"os"
	"path/filepath"
	"strings"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea"
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
	data, err := readFile(path)
	if err != nil {
		c.fault("ship", name, builtInShip+", or the path of a ship file ("+err.Error()+")")
		return builtIn().ship
	}
	ship, faults := readShip(path, data)
	c.faults = append(c.faults, faults...)
	return ship
}

// readFile reads a file of ordinary size.
func readFile(path string) ([]byte, error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, &os.PathError{Op: "read", Path: path, Err: errNoFile}
	case info.Size() > mostBytes:
		return nil, &os.PathError{Op: "read", Path: path, Err: errLarge}
	}
	return os.ReadFile(path)
}

// readShip reads a ship file.
func readShip(name string, data []byte) (vessel, Faults) {
	v, o := load(name, data)
	c := &clerk{outline: o}
	if len(o.faults) > 0 && !o.onlyEmpty() {
		return vessel{}, o.faults
	}
	var f shipFile
	c.said = decode(v, o, &f)
	ship := c.vessel(f)
	return ship, o.faults
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
		RigFloor: unit.Length(c.number("rig_floor", f.RigFloor, measure{of: unit.OfLength, symbol: "m", most: 100})),
	}}
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
	return s
}

// shipRates reads all the rates of a ship: each must be there, with a source, and a spread must
// say at which level it lives.
func (c *clerk) shipRates(given map[string]spreadFile) [rig.Rates]spread.Quantity {
	for r := range rig.Rates {
		key := r.Of().Key
		path := join("rates", key)
		s, found := given[key]
		if !found {
			c.fault(path, "", "every ship file to state it: "+r.Of().What)
			continue
		}
		c.sourced(path, &s)
	}
	return c.rates("rates", given, [rig.Rates]spread.Quantity{})
}

// sourced asks a quantity of a ship or lithology for its source, and a spread for its level.
func (c *clerk) sourced(path string, s *spreadFile) {
	if s == nil {
		return
	}
	if !s.Source.given {
		c.fault(join(path, "source"), "", "where the value comes from")
	}
	if s.Varies == nil && !s.Value.given {
		c.fault(join(path, "varies"), "", "the level at which the spread lives: expedition, site, hole or run, or shares")
	}
}

// limitsSourced asks limits and the storm for their sources.
func (c *clerk) limitsSourced(f shipFile) {
	for i, l := range f.Limits {
		if !l.Source.given {
			c.fault(join(at("limits", i), "source"), "", "where the limit comes from")
		}
	}
	if f.Storm != nil && !f.Storm.Source.given {
		c.fault("storm.source", "", "where the limits come from")
	}
}

func (c *clerk) hull(h hullFile) sea.Hull {
	return sea.Hull{
		Length:  unit.Length(c.number("hull.length", h.Length, hullMeasure)),
		Beam:    unit.Length(c.number("hull.beam", h.Beam, hullMeasure)),
		Draught: unit.Length(c.number("hull.draught", h.Draught, hullMeasure)),
		Block:   c.number("hull.block", h.Block, partMeasure),
	}
}

// heading is an angle off the bow in degrees.
func (c *clerk) heading(t text) float64 {
	number, found := strings.CutSuffix(t.value, "deg")
	degrees, err := unit.OfCount.Parse(number)
	if !found || err != nil || degrees < 0 || degrees > 180 {
		c.fault("heading", t.value, `an angle off the bow from 0 to 180 deg, such as "30 deg"`)
		return 0
	}
	return degrees * math.Pi / 180
}

// strings reads the tool strings for logging.
func (c *clerk) strings(given []toolStringFile) (all []rig.ToolString) {
	seen := map[string]bool{}
	for i, t := range given {
		path := at("tool_strings", i)
		s := rig.ToolString{Name: c.name(join(path, "name"), t.Name), Passes: 1, Seismic: c.yes(join(path, "seismic"), t.Seismic, false),
			Source: c.words(join(path, "source"), t.Source, c.source(path))}
		if t.Passes.given {
			s.Passes = c.number(join(path, "passes"), t.Passes, measure{of: unit.OfCount, most: 20}) // 0 for a string that stops at stations only
		}
		if seen[s.Name] {
			c.fault(join(path, "name"), s.Name, "a name that no other tool string has")
		}
		seen[s.Name] = true
		all = append(all, s)
	}
	return all
}
