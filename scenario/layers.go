package scenario

import (
	"coredays/model/ground"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
	"coredays/scenario/lithology"
)

// layers reads the layers.
func (r siteReader) layers() []ground.Layer {
	var layers []ground.Layer
	last := unit.Depth(0)
	for i, f := range entry.Few(r.Reader, r.at("layers"), r.file.Layers, entry.MostLayers) {
		path := document.At(r.at("layers"), i)
		bottom := unit.Depth(r.Number(document.Join(path, "bottom"), f.Bottom, entry.DepthMeasure))
		if bottom > 0 && bottom <= last {
			r.Fault(document.Join(path, "bottom"), f.Bottom.Value, "deeper than the layer above, "+exactly(last))
		}
		last = max(last, bottom)
		layers = append(layers, ground.Layer{Bottom: bottom, Lithology: lithology.Altered(r.Reader, path, f.stated(), r.byStrength(path, f, r.lithologyOf(path, f))),
			Stated: f.DrillingRate != nil || f.RockStrength != nil})
	}
	return layers
}

// byStrength works the rate of drilling out from the strength of the rock, where that is stated.
func (r siteReader) byStrength(path string, f layerFile, l ground.Lithology) ground.Lithology {
	if f.RockStrength == nil {
		return l
	}
	if f.DrillingRate != nil {
		r.Fault(document.Join(path, "rock_strength"), "", "either rock_strength or drilling_rate, not both")
	}
	strength := r.Quantity(document.Join(path, "rock_strength"), f.RockStrength, entry.RockMeasure, l.Rate)
	rate, err := r.ship.Tubulars.RateIn()
	if err != nil || !strength.Given() {
		return l
	}
	strength.Shape = spread.Falling{Of: strength.Shape, By: rate}
	strength.Text = "from a rock strength of " + strength.Text
	l.Rate, l.Ahead = strength, strength
	return l
}

// lithologyOf finds the lithology of a layer.
func (r siteReader) lithologyOf(path string, f layerFile) ground.Lithology {
	stock, _ := lithology.BuiltIn()
	if !f.Lithology.Given {
		r.Fault(document.Join(path, "lithology"), "", fault.Listed(lithology.Names(stock)))
		return ground.Lithology{}
	}
	name := r.Name(document.Join(path, "lithology"), f.Lithology)
	l, found := lithology.Named(stock, name)
	if !found && name != "" {
		wanted, _ := fault.Suggest(name, lithology.Names(stock), "lithology")
		r.Fault(document.Join(path, "lithology"), name, wanted)
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
	stock, _ := lithology.BuiltIn()
	l, _ := lithology.Named(stock, assumedLithology)
	bottom := max(r.site.ApprovedTo, r.deepest())
	r.site.Layers = []ground.Layer{{Bottom: bottom, Lithology: l}}
	r.Warn("site %s: no layers are given, so %s is assumed down to %s", r.site.Name, assumedLithology, exactly(bottom))
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

// stated is what a layer says otherwise of its lithology.
func (f layerFile) stated() lithology.File {
	return lithology.File{SideShear: f.SideShear, DrillingRate: f.DrillingRate, DrillingAheadRate: f.DrillingAheadRate, Sticking: f.Sticking, BitWear: f.BitWear, Recovery: f.Recovery}
}
