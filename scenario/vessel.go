package scenario

import (
	"math"
	"strings"

	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/spread"
	"coredays/model/unit"
)

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
		Length:  unit.Length(c.number("hull.length", h.Length, hullLength)),
		Beam:    unit.Length(c.number("hull.beam", h.Beam, hullBeam)),
		Draught: unit.Length(c.number("hull.draught", h.Draught, hullDraught)),
		Block:   c.number("hull.block", h.Block, blockMeasure),
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
	for i, t := range few(c.reader, "tool_strings", given, mostStrings) {
		path := at("tool_strings", i)
		s := rig.ToolString{Name: c.name(join(path, "name"), t.Name), Passes: 1, Seismic: c.yes(join(path, "seismic"), t.Seismic, false),
			Source: c.words(join(path, "source"), t.Source, c.source(path))}
		if t.Passes.given {
			s.Passes = c.number(join(path, "passes"), t.Passes, passesMeasure) // 0 for a string that stops at stations only
		}
		if seen[s.Name] {
			c.fault(join(path, "name"), s.Name, "a name that no other tool string has")
		}
		seen[s.Name] = true
		all = append(all, s)
	}
	return all
}
