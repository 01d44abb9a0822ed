package scenario

import (
	"coredays/model/places"
	"coredays/model/plan"
)

// places reads what the tables of known places are used for.
func (r siteReader) places() plan.Places {
	f, path := r.file.Places, r.at("places")
	use := plan.Places(r.Choice(path, f, "check only", "built in", "off"))
	if use == plan.PlacesMet && !places.YearAt(r.site.Position).Open() {
		r.Fault(path, f.Value, "a place that ice leaves open in a month at least, or check only: here it closes all twelve ("+places.IceSource+")")
	}
	return use
}
