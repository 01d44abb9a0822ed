package sheet

import (
	"coredays/model/rates"
	"coredays/output/text"
	"coredays/output/words"
)

// Rates are the rates learned, each with the ship's figure and the spread to use.
func Rates(r *rates.Result) *Table {
	t := &Table{Name: "rates", Title: "Rates: P10, P50 and P90 of the log, of the ship, and to use", Fields: []Field{{Key: "rate", Heading: "rate", Kind: OfWords}, {Key: "unit", Heading: "unit", Kind: OfWords},
		{Key: "n", Heading: "n"}, {Key: "exposure", Heading: "exposure"},
		{Key: "log_low", Heading: "log, P10"}, {Key: "log_mid", Heading: "log, P50"}, {Key: "log_high", Heading: "log, P90"},
		{Key: "ship_low", Heading: "ship, P10"}, {Key: "ship_mid", Heading: "ship, P50"}, {Key: "ship_high", Heading: "ship, P90"},
		{Key: "use_low", Heading: "to use, P10"}, {Key: "use_mid", Heading: "to use, P50"}, {Key: "use_high", Heading: "to use, P90"},
		{Key: "varies", Heading: "varies by", Kind: OfWords}, {Key: "why", Heading: "remark", Kind: OfWords}}}
	for i := range r.Rates {
		x := &r.Rates[i]
		cells := []any{x.Of.Of().Key, x.Of.Of().Unit, float64(x.N), x.Exposure}
		for _, triple := range []rates.Triple{x.Log, x.Ship, x.Use} {
			for _, v := range triple {
				cells = append(cells, text.InUnit(x.Of, v))
			}
		}
		t.Add(append(cells, x.Shares.String(), x.Why)...)
	}
	return t
}

// RatePoints are the observations of one rate.
func RatePoints(x *rates.Rate) *Table {
	t := &Table{Name: "rate_" + x.Of.Of().Key, Title: x.Of.Of().Key + ", observed", Fields: []Field{{Key: "along", Heading: x.Along}, {Key: "value", Heading: x.Of.Of().Key + " (" + x.Of.Of().Unit + ")"}, {Key: "bound", Heading: "only a bound", Kind: OfWords}}}
	for _, p := range x.Points {
		t.Add(p.X, text.InUnit(x.Of, p.Y), words.YesNo(p.Bound))
	}
	return t
}
