package sheet

import "coredays/output"

// OfReport are all sheets but that of the replications, in the order in which they are listed.
func OfReport(r *output.Report) []*Table {
	s := r.Summary
	list := []*Table{RunSheet(r), resultsSheet(s), ChancesSheet(s), SitesSheet(s), HolesSheet(s), PassagesSheet(r), ClassesSheet(s), DriversSheet(s),
		ConsumablesSheet(s), CurveSheet(s), WaySheet(s), SectionSheet(s), LayersSheet(s), SeaSheet(r.Seas), CheckSheet(r.Found), BasisSheet(r.Basis)}
	if r.Log != nil {
		list = append(list, LoggedSheet(s, r.Log))
	}
	if r.Orders != nil {
		list = append(list, AlternativesSheet(r.Orders), DifferencesSheet(r.Orders))
	}
	return list
}
