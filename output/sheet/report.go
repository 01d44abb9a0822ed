package sheet

import "coredays/output"

// OfReport are all sheets but that of the replications, in the order in which they are listed.
func OfReport(r *output.Report) []*Table {
	s := r.Summary
	list := []*Table{Run(r), resultsSheet(s), Chances(s), Sites(s), Holes(s), Passages(r), Classes(s), Drivers(s),
		Consumables(s), Curve(s), Way(s), Section(s), Layers(s), Sea(r.Seas), Check(r.Found), Basis(r.Basis)}
	if r.Log != nil {
		list = append(list, Logged(s, r.Log))
	}
	if r.Orders != nil {
		list = append(list, Alternatives(r.Orders), Differences(r.Orders))
	}
	return list
}
