package output

// tables are all sheets but that of the replications, in the order in which they are listed.
func tables(r *Report) []*sheet {
	s := r.Summary
	list := []*sheet{runSheet(r), resultsSheet(s), chancesSheet(s), sitesSheet(s), holesSheet(s), passagesSheet(r), classesSheet(s), driversSheet(s),
		consumablesSheet(s), curveSheet(s), waySheet(s), sectionSheet(s), layersSheet(s), seaSheet(r.Seas), checkSheet(r.Found), basisSheet(r.Basis)}
	if r.Log != nil {
		list = append(list, loggedSheet(s, r.Log))
	}
	if r.Orders != nil {
		list = append(list, alternativesSheet(r.Orders), differencesSheet(r.Orders))
	}
	return list
}
