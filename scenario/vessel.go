package scenario

import (
	"math"
	"strings"

	"coredays/model/rig"
	"coredays/model/sea/heave"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// shipRates reads all the rates of a ship: each must be there, with a source, and a spread must
// say at which level it lives.
func (c *clerk) shipRates(given map[string]document.Spread) [rig.Rates]spread.Quantity {
	for r := range rig.Rates {
		key := r.Of().Key
		path := document.Join("rates", key)
		s, found := given[key]
		if !found {
			c.Fault(path, "", "every ship file to state it: "+r.Of().What)
			continue
		}
		c.Sourced(path, &s)
	}
	return c.rates("rates", given, [rig.Rates]spread.Quantity{})
}

// limitsSourced asks limits and the storm for their sources.
func (c *clerk) limitsSourced(f shipFile) {
	for i, l := range f.Limits {
		if !l.Source.Given {
			c.Fault(document.Join(document.At("limits", i), "source"), "", "where the limit comes from")
		}
	}
	if f.Storm != nil && !f.Storm.Source.Given {
		c.Fault("storm.source", "", "where the limits come from")
	}
}

func (c *clerk) hull(h hullFile) heave.Hull {
	return heave.Hull{
		Length:  unit.Length(c.Number("hull.length", h.Length, entry.HullLength)),
		Beam:    unit.Length(c.Number("hull.beam", h.Beam, entry.HullBeam)),
		Draught: unit.Length(c.Number("hull.draught", h.Draught, entry.HullDraught)),
		Block:   c.Number("hull.block", h.Block, entry.BlockMeasure),
	}
}

// heading is an angle off the bow in degrees.
func (c *clerk) heading(t document.Text) float64 {
	number, found := strings.CutSuffix(t.Value, "deg")
	degrees, err := unit.OfCount.Parse(number)
	if !found || err != nil || degrees < 0 || degrees > 180 {
		c.Fault("heading", t.Value, `an angle off the bow from 0 to 180 deg, such as "30 deg"`)
		return 0
	}
	return degrees * math.Pi / 180
}

// strings reads the tool strings for logging.
func (c *clerk) strings(given []toolStringFile) (all []rig.ToolString) {
	seen := map[string]bool{}
	for i, t := range entry.Few(c.Reader, "tool_strings", given, entry.MostStrings) {
		path := document.At("tool_strings", i)
		s := rig.ToolString{Name: c.Name(document.Join(path, "name"), t.Name), Passes: 1, Seismic: c.Yes(document.Join(path, "seismic"), t.Seismic, false),
			Source: c.Words(document.Join(path, "source"), t.Source, c.Source(path))}
		if t.Passes.Given {
			s.Passes = c.Number(document.Join(path, "passes"), t.Passes, entry.PassesMeasure) // 0 for a string that stops at stations only
		}
		if seen[s.Name] {
			c.Fault(document.Join(path, "name"), s.Name, "a name that no other tool string has")
		}
		seen[s.Name] = true
		all = append(all, s)
	}
	return all
}
