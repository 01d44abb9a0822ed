package scenario

import (
	"fmt"

	"coredays/model/sea"
	"coredays/model/unit"
)

// climate reads the sea at a site: built in, by months, or the user's own record.
func (r siteReader) climate() sea.Climate {
	w, path := r.file.Weather, r.at("weather")
	switch {
	case w == nil:
		climate := r.builtInClimate()
		r.warn("site %s: no weather is given, so the built-in climate is used (%s)", r.site.Name, climate.Source)
		return climate
	case w.Climate.given && w.Months != nil:
		r.fault(path, "", "either climate or months, not both")
	case w.Record.given && (w.Climate.given || w.Months != nil):
		r.fault(path, "", "either climate, months or record, not two of them")
	case w.Record.given:
		return r.seaRecord(join(path, "record"), w)
	case w.Months != nil:
		return r.months(join(path, "months"), w)
	default:
		if !w.Climate.given {
			r.fault(path, "", "climate: built in, or months, or record")
		}
		r.choice(join(path, "climate"), w.Climate, "built in")
	}
	return r.builtInClimate()
}

func (r siteReader) builtInClimate() sea.Climate {
	climate, err := sea.BuiltIn(r.site.Position.Latitude, r.site.Position.Longitude)
	if err != nil {
		r.fault(r.at("position"), r.file.Position.value, "a place at sea, or months under weather ("+err.Error()+")")
	}
	return climate.NearShore(r.site.WaterDepth)
}

// months reads a climate of the user's own, January first.
func (r siteReader) months(path string, w *weatherFile) sea.Climate {
	climate := sea.Climate{Source: r.words(join(r.at("weather"), "source"), w.Source, r.source(path))}
	if len(w.Months) != len(climate.Mean) {
		r.fault(path, fmt.Sprintf("%d months", len(w.Months)), "12 months, January first")
		return climate
	}
	for m, f := range w.Months {
		mean := r.number(join(at(path, m), "hs"), f.Hs, heightMeasure)
		deviation := r.number(join(at(path, m), "sd"), f.SD, heightMeasure)
		climate.Mean[m] = unit.Length(mean)
		if mean > 0 {
			climate.Variation[m] = deviation / mean
		}
		if climate.Variation[m] >= 3 {
			r.fault(join(at(path, m), "sd"), f.SD.value, "less than three times hs")
		}
	}
	return climate
}
