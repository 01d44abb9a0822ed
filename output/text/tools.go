package text

import (
	"fmt"

	"coredays/model/coring"
	"coredays/model/result"
	"coredays/output/words"
)

// tools prints what the whole programme brings up, by tool.
func (p *Printer) tools(s *result.Summary) error {
	p.Heading("Recovery by coring tool (whole programme)")
	p.WriteByte('\n')
	below := words.OrLess("\nP50 (P10–P90)", s.Replications >= 2)
	cols := []Column{WordColumn("tool", 10), NumberColumn("cores" + below), NumberColumn("cored (m)" + below),
		NumberColumn("recovered (m)" + below), NumberColumn("recovered (%)" + below)}
	var rows [][]string
	for tool, r := range s.Recovery.ByTool {
		if r.Cores.N > 0 && (r.Cores.Mean != 0 || r.Cored.Mean != 0) {
			rows = append(rows, toolRow(coring.Tool(tool).String(), r))
		}
	}
	all := s.Recovery
	rows = append(rows, toolRow("all tools", result.ToolRecovery{Cores: all.Cores, Cored: all.Cored, Recovered: all.Recovered, Percent: all.Percent}))
	return p.Table(cols, rows)
}

// Deck says how fast cores are recovered and whether the laboratory keeps pace; empty where nothing was cored.
func Deck(d *result.Deck) string {
	if d.MostCores.N == 0 {
		return ""
	}
	return fmt.Sprintf("On the busiest day %s cores come up; the laboratory is %s h behind at most.", words.Ranged(d.MostCores, 0), words.Ranged(words.InHours(d.Behind), 0))
}

func toolRow(name string, r result.ToolRecovery) []string {
	return []string{name, words.Ranged(r.Cores, 0), words.Ranged(r.Cored, 0), words.Ranged(r.Recovered, 0), words.Ranged(r.Percent, 0)}
}
