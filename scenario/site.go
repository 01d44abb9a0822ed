package scenario

import (
	"coredays/model/places"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// sites reads the sites and warns once of what was filled in at several.
func (c *clerk) sites(given []siteFile, ship vessel) []plan.Site {
	if len(given) == 0 {
		c.Fault("sites", "", "at least one site")
	}
	sites := make([]plan.Site, len(given))
	c.out = make([]bool, len(given))
	seen := map[string]bool{}
	for i, f := range given {
		path := document.At("sites", i)
		s := siteReader{c, path, f, ship, &sites[i]}
		c.out[i] = s.readOrLeaveOut()
		if name := sites[i].Name; seen[name] && name != "" {
			c.Fault(document.Join(path, "name"), name, "a name that no other site has")
		}
		seen[sites[i].Name] = true
	}
	return sites
}

// siteReader reads one site.
type siteReader struct {
	*clerk
	path string
	file siteFile
	ship vessel
	site *plan.Site
}

func (r siteReader) at(key string) string { return document.Join(r.path, key) }

func (r siteReader) read() {
	f, s := r.file, r.site
	s.Path = r.path
	s.Name = r.Name(r.at("name"), f.Name)
	s.Position = r.Position(r.at("position"), f.Position)
	for i, via := range entry.Few(r.Reader, r.at("via"), f.Via, entry.MostWaypoints) {
		s.Via = append(s.Via, r.Position(document.At(r.at("via"), i), via))
	}
	s.WaterDepth = r.waterDepth()
	s.Alternate = r.Choice(r.at("priority"), f.Priority, "primary", "alternate") == 1
	s.ApprovedTo = r.Depth(r.at("approved_to"), f.ApprovedTo)
	s.Refusal = r.refusal(r.at("refusal"), f.Refusal, r.ship.refusal)
	s.Cap = unit.Duration(r.Maybe(r.at("cap"), f.Cap, entry.CapMeasure))
	s.Hanging = r.Choice(r.at("move"), f.Move, "pipe recovered", "pipe hanging") == 1
	s.Layers = r.layers()
	if s.ApprovedTo == 0 && !f.ApprovedTo.Given {
		r.Warn("site %s: no approved depth is given, so no target is held against one", s.Name)
	}
	s.Items = r.items()
	r.assumeLayer()
	s.Climate = r.climate()
	r.stops()
	s.Places = r.places()
	if f.NotBefore.Given {
		s.NotBefore = r.Date(r.at("not_before"), f.NotBefore)
	}
	if f.NotAfter.Given {
		s.NotAfter = r.Date(r.at("not_after"), f.NotAfter)
	}
	if !s.NotAfter.IsZero() && !s.NotAfter.After(s.NotBefore) {
		r.Fault(r.at("not_after"), f.NotAfter.Value, "a date after not_before")
	}
}

// waterDepth is the depth below sea level.
func (r siteReader) waterDepth() unit.Length {
	depth := unit.Length(r.Number(r.at("water_depth"), r.file.WaterDepth, entry.WaterMeasure))
	if r.Choice(r.at("datum"), r.file.Datum, "sea level", "rig floor") == 1 {
		if depth -= r.ship.RigFloor; depth <= 0 {
			r.Fault(r.at("water_depth"), r.file.WaterDepth.Value, "more than the height of the rig floor, "+unit.OfLength.Format(float64(r.ship.RigFloor), "m"))
		}
	}
	return depth
}

// deepest is the deepest target of the site.
func (r siteReader) deepest() (deepest unit.Depth) {
	for _, item := range r.site.Items {
		if item.Hole != nil {
			deepest = max(deepest, bottomOf(item.Hole))
		}
	}
	return deepest
}

// bottomOf is the deepest that a hole may go.
func bottomOf(h *plan.Hole) unit.Depth {
	deepest := h.DrillAheadTo
	for _, stage := range h.Stages {
		deepest = max(deepest, stage.To)
	}
	return deepest
}

// places reads what the tables of known places are used for.
func (r siteReader) places() plan.Places {
	f, path := r.file.Places, r.at("places")
	use := plan.Places(r.Choice(path, f, "check only", "built in", "off"))
	if use == plan.PlacesMet && !places.YearAt(r.site.Position).Open() {
		r.Fault(path, f.Value, "a place that ice leaves open in a month at least, or check only: here it closes all twelve ("+places.IceSource+")")
	}
	return use
}
