package sheet

import (
	"coredays/model/rates"
	"coredays/output/text/crewrates"
	"coredays/output/words"
)

// Rates are the rates learned, each with the ship's figure and the spread to use; three values in one column, so that the
// table is no wider than a page.
func Rates(r *rates.Result) *Table {
	t := &Table{Name: "rates", Title: "P10 / P50 / P90 of the log, of the ship, and to use"}
	for _, f := range [][2]string{{"rate", "rate"}, {"unit", "unit"}, {"n", "n"}, {"log", "log"}, {"ship", "ship"}, {"use", "to use"}, {"varies", "varies by"}, {"why", "remark"}} {
		t.Fields = append(t.Fields, Field{Key: f[0], Heading: f[1], Kind: OfWords})
	}
	for i := range r.Rates {
		x := &r.Rates[i]
		t.Add(x.Of.Of().Key, x.Of.Of().Unit, crewrates.Count(x), crewrates.Triple(x, x.Log), crewrates.Triple(x, x.Ship), crewrates.ToUse(x), x.Shares.String(), x.Why)
	}
	return t
}

// RatePoints are the observations of one rate.
func RatePoints(x *rates.Rate) *Table {
	t := &Table{Name: "rate_" + x.Of.Of().Key, Title: x.Of.Of().Key + ", observed", Fields: []Field{{Key: "along", Heading: x.Along}, {Key: "value", Heading: x.Of.Of().Key + " (" + x.Of.Of().Unit + ")"}, {Key: "bound", Heading: "only a bound", Kind: OfWords}}}
	for _, p := range x.Points {
		t.Add(p.X, x.Of.InUnit(p.Y), words.YesNo(p.Bound))
	}
	return t
}
