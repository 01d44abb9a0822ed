package scenario

import (
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/unit"
)

// sites reads the sites and warns once of what was filled in at several.
func (c *clerk) sites(given []siteFile, ship vessel) []plan.Site {
	if len(given) == 0 {
		c.fault("sites", "", "at least one site")
	}
	sites := make([]plan.Site, len(given))
	seen := map[string]bool{}
	for i, f := range given {
		path := at("sites", i)
		s := siteReader{c, path, f, ship, &sites[i]}
		s.read()
		if name := sites[i].Name; seen[name] && name != "" {
			c.fault(join(path, "name"), name, "a name that no other site has")
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

func (r siteReader) at(key string) string { return join(r.path, key) }

func (r siteReader) read() {
	f, s := r.file, r.site
	s.Name = r.name(r.at("name"), f.Name)
	s.Position = r.position(r.at("position"), f.Position)
	for i, via := range f.Via {
		s.Via = append(s.Via, r.position(at(r.at("via"), i), via))
	}
	s.WaterDepth = r.waterDepth()
	s.Alternate = r.choice(r.at("priority"), f.Priority, "primary", "alternate") == 1
	s.ApprovedTo = r.depth(r.at("approved_to"), f.ApprovedTo)
	s.Refusal = r.refusal(r.at("refusal"), f.Refusal, r.ship.refusal)
	s.Cap = unit.Duration(r.maybe(r.at("cap"), f.Cap, capMeasure))
	s.Hanging = r.choice(r.at("move"), f.Move, "pipe recovered", "pipe hanging") == 1
	s.Layers = r.layers()
	if s.ApprovedTo == 0 && !f.ApprovedTo.given {
		r.warn("site %s: no approved depth is given, so no target is held against one", s.Name)
	}
	s.Items = r.items()
	r.assumeLayer()
	s.Climate = r.climate()
}

// waterDepth is the depth below sea level.
func (r siteReader) waterDepth() unit.Length {
	depth := unit.Length(r.number(r.at("water_depth"), r.file.WaterDepth, waterMeasure))
	if r.choice(r.at("datum"), r.file.Datum, "sea level", "rig floor") == 1 {
		if depth -= r.ship.RigFloor; depth <= 0 {
			r.fault(r.at("water_depth"), r.file.WaterDepth.value, "more than the height of the rig floor, "+r.ship.RigFloor.Tell())
		}
	}
	return depth
}

// layers reads the layers.
func (r siteReader) layers() []ground.Layer {
	var layers []ground.Layer
	last := unit.Depth(0)
	for i, f := range r.file.Layers {
		path := at(r.at("layers"), i)
		bottom := unit.Depth(r.number(join(path, "bottom"), f.Bottom, depthMeasure))
		if bottom > 0 && bottom <= last {
			r.fault(join(path, "bottom"), f.Bottom.value, "deeper than the layer above, "+last.Tell())
		}
		last = max(last, bottom)
		layers = append(layers, ground.Layer{Bottom: bottom, Lithology: r.altered(path, f, r.lithologyOf(path, f))})
	}
	return layers
}

// lithologyOf finds the lithology of a layer.
func (r siteReader) lithologyOf(path string, f layerFile) ground.Lithology {
	stock := builtIn().lithologies
	if !f.Lithology.given {
		r.fault(join(path, "lithology"), "", listed(names(stock)))
		return ground.Lithology{}
	}
	name := r.name(join(path, "lithology"), f.Lithology)
	l, found := named(stock, name)
	if !found && name != "" {
		wanted, _ := suggest(name, names(stock), "lithology")
		r.fault(join(path, "lithology"), name, wanted)
	}
	return l
}

// assumedLithology is the ground where nothing is said of it: the most common sediment of the
// open ocean above the depth where carbonate dissolves, from memory.
const assumedLithology = "nannofossil ooze"

// assumeLayer fills in the ground where no layers are given.
func (r siteReader) assumeLayer() {
	if len(r.file.Layers) > 0 || r.site.ApprovedTo == 0 && r.deepest() == 0 {
		return
	}
	l, _ := named(builtIn().lithologies, assumedLithology)
	bottom := max(r.site.ApprovedTo, r.deepest())
	r.site.Layers = []ground.Layer{{Bottom: bottom, Lithology: l}}
	r.warn("site %s: no layers are given, so %s is assumed down to %s", r.site.Name, assumedLithology, bottom.Tell())
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

// allowed is the depth that refusal may be looked for to: the lesser of what is approved and
// what is known of the ground; 0 where neither is given.
func (r siteReader) allowed() unit.Depth {
	known := r.site.ApprovedTo
	if n := len(r.site.Layers); n > 0 && (known == 0 || r.site.Layers[n-1].Bottom < known) {
		known = r.site.Layers[n-1].Bottom
	}
	return known
}
