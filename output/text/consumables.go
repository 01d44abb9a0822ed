package text

import (
	"coredays/model/result"
	"coredays/output/words"
)

// consumables prints what to have on board.
func (p *Printer) consumables(s *result.Summary) error {
	if len(s.Consumables) == 0 {
		return nil
	}
	p.Heading("What to have on board (whole programme, rounded up)")
	p.WriteByte('\n')
	cols := []Column{WordColumn("item", 50), NumberColumn("P50"), NumberColumn("P90")}
	if s.Replications < 2 {
		cols = []Column{WordColumn("item", 50), NumberColumn("used")}
	}
	var rows [][]string
	for _, c := range s.Consumables {
		rows = append(rows, []string{c.Item, words.Orderable(c.P50), words.Orderable(c.P90)}[:len(cols)])
	}
	return p.Table(cols, rows)
}
