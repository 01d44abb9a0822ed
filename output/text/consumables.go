package text

import (
	"coredays/model/result"
	"coredays/output/words"
)

// consumables prints what to have on board.
func (p *printer) consumables(s *result.Summary) error {
	if len(s.Consumables) == 0 {
		return nil
	}
	p.heading("What to have on board (whole programme, rounded up)")
	p.WriteByte('\n')
	cols := []column{wordColumn("item", 50), numberColumn("P50"), numberColumn("P90")}
	if s.Replications < 2 {
		cols = []column{wordColumn("item", 50), numberColumn("used")}
	}
	var rows [][]string
	for _, c := range s.Consumables {
		rows = append(rows, []string{c.Item, words.Orderable(c.P50), words.Orderable(c.P90)}[:len(cols)])
	}
	return p.table(cols, rows)
}
