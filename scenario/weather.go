package scenario

import (
	"fmt"

	"coredays/model/sea"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// climate reads the sea at a site: built in, by months, or the user's own record.
func (r siteReader) climate() sea.Climate {
	w, path := r.file.Weather, r.at("weather")
	switch {
	case w == nil:
		climate := r.builtInClimate()
		r.Warn("site %s: no weather is given, so the built-in climate is used (%s)", r.site.Name, climate.Source)
		return climate
	case w.Climate.Given && w.Months != nil:
		r.Fault(path, "", "either climate or months, not both")
	case w.Record.Given && (w.Climate.Given || w.Months != nil):
		r.Fault(path, "", "either climate, months or record, not two of them")
	case w.Record.Given:
		return r.seaRecord(document.Join(path, "record"), w)
	case w.Months != nil:
		return r.months(document.Join(path, "months"), w)
	default:
		if !w.Climate.Given {
			r.Fault(path, "", "climate: built in, or months, or record")
		}
		r.Choice(document.Join(path, "climate"), w.Climate, "built in")
	}
	return r.builtInClimate()
}

func (r siteReader) builtInClimate() sea.Climate {
	climate, err := sea.BuiltIn(r.site.Position.Latitude, r.site.Position.Longitude)
	if err != nil {
		r.Fault(r.at("position"), r.file.Position.Value, "a place at sea, or months under weather ("+err.Error()+")")
	}
	return climate.NearShore(r.site.WaterDepth)
}

// months reads a climate of the user's own, January first.
func (r siteReader) months(path string, w *weatherFile) sea.Climate {
	climate := sea.Climate{Source: r.Words(document.Join(r.at("weather"), "source"), w.Source, r.Source(path))}
	if len(w.Months) != len(climate.Mean) {
		r.Fault(path, fmt.Sprintf("%d months", len(w.Months)), "12 months, January first")
		return climate
	}
	for m, f := range w.Months {
		mean := r.Number(document.Join(document.At(path, m), "hs"), f.Hs, entry.HeightMeasure)
		deviation := r.Number(document.Join(document.At(path, m), "sd"), f.SD, entry.HeightMeasure)
		climate.Mean[m] = unit.Length(mean)
		if mean > 0 {
			climate.Variation[m] = deviation / mean
		}
		if climate.Variation[m] >= 3 {
			r.Fault(document.Join(document.At(path, m), "sd"), f.SD.Value, "less than three times hs")
		}
	}
	return climate
}
