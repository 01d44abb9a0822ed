package output

import "coredays/model/logbook"

// consumables prints what to have on board.
func (p *page) consumables(s *logbook.Summary) error {
	if len(s.Consumables) == 0 {
		return nil
	}
	p.heading("What to have on board (whole programme, rounded up)")
	p.WriteByte('\n')
	cols := []column{words("item", 50), numbers("P50"), numbers("P90")}
	if s.Replications < 2 {
		cols = []column{words("item", 50), numbers("used")}
	}
	var rows [][]string
	for _, c := range s.Consumables {
		rows = append(rows, []string{c.Item, orderable(c.P50), orderable(c.P90)}[:len(cols)])
	}
	return p.table(cols, rows)
}
