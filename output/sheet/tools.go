package sheet

import (
	"coredays/model/coring"
	"coredays/model/result"
)

// Tools has a row for each coring tool that is used, and one for all of them.
func Tools(s *result.Summary) *Table {
	t := &Table{Name: "tools", Title: "Recovery by coring tool (whole programme)", Fields: []Field{{"tool", "tool", OfWords, ""}}}
	t.Fields = append(t.Fields, threeFields("cores", "cores", "all sites together", ofCount)...)
	t.Fields = append(t.Fields, threeFields("cored", "cored", "all sites together", ofMetres)...)
	t.Fields = append(t.Fields, threeFields("recovered", "recovered", "all sites together", ofMetres)...)
	t.Fields = append(t.Fields, threeFields("recovered_percent", "recovered", "of what was cored", ofPercent)...)
	add := func(name string, r result.ToolRecovery) {
		row := []any{name}
		for _, x := range []result.Spread{r.Cores, r.Cored, r.Recovered, r.Percent} {
			row = append(row, threeOf(x)...)
		}
		t.Add(row...)
	}
	for tool, r := range s.Recovery.ByTool {
		if r.Cores.N > 0 && (r.Cores.Mean != 0 || r.Cored.Mean != 0) {
			add(coring.Tool(tool).String(), r)
		}
	}
	all := s.Recovery
	add("all tools", result.ToolRecovery{Cores: all.Cores, Cored: all.Cored, Recovered: all.Recovered, Percent: all.Percent})
	return t
}
