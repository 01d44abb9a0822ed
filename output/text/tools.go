package text

import (
	"fmt"

	"coredays/model/coring"
	"coredays/model/result"
	"coredays/output/words"
)

// tools prints what the whole programme brings up, by tool.
func (p *printer) tools(s *result.Summary) error {
	p.heading("Recovery by coring tool (whole programme)")
	p.WriteByte('\n')
	below := words.OrLess("\nP50 (P10–P90)", s.Replications >= 2)
	cols := []column{wordColumn("tool", 10), numberColumn("cores" + below), numberColumn("cored (m)" + below),
		numberColumn("recovered (m)" + below), numberColumn("recovered (%)" + below)}
	var rows [][]string
	for tool, r := range s.Recovery.ByTool {
		if r.Cores.N > 0 && (r.Cores.Mean != 0 || r.Cored.Mean != 0) {
			rows = append(rows, toolRow(coring.Tool(tool).String(), r))
		}
	}
	all := s.Recovery
	rows = append(rows, toolRow("all tools", result.ToolRecovery{Cores: all.Cores, Cored: all.Cored, Recovered: all.Recovered, Percent: all.Percent}))
	if err := p.table(cols, rows); err != nil {
		return err
	}
	p.says(Deck(&s.Deck))
	return nil
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
