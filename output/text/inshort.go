package text

import (
	"fmt"
	"strings"

	"coredays/model/result"
	"coredays/output/words"
)

// mostInShort is how many causes are told in short.
const mostInShort = 5

// inShort prints a line each of where the days go, what drives their spread, and what to have on board.
func (p *Printer) inShort(s *result.Summary) error {
	p.Heading("In short (whole programme)")
	total := words.InDays(s.Needed.Total)
	var classes []string
	for _, c := range BySize(s.Needed.ByClass) {
		if days := words.InDays(s.Needed.ByClass[c]); days.Mean > 0 {
			classes = append(classes, c.String()+" "+words.Fixed(days.Mean, words.DayPlaces))
		}
	}
	if len(classes) > 0 {
		p.Say("Where the days go: %s; together %s d%s.", strings.Join(classes, ", "), words.Fixed(total.Mean, words.DayPlaces),
			words.OrLess(", all means", s.Replications >= 2))
	}
	if shown, _ := Shown(s.Drivers); len(shown) > 0 && s.Replications >= 2 {
		var causes []string
		for _, d := range shown[:min(len(shown), mostInShort)] {
			causes = append(causes, fmt.Sprintf("%s %s %%", d.Name, words.Percent(d.Share)))
		}
		p.Say("What drives the spread of days needed: %s of its variance.", strings.Join(causes, ", "))
	}
	if len(s.Consumables) > 0 {
		var items []string
		for _, c := range s.Consumables {
			items = append(items, c.Item+" "+words.Orderable(c.P90))
		}
		p.Say("To have on board%s: %s.", words.OrLess(", P90", s.Replications >= 2), strings.Join(items, "; "))
	}
	return nil
}
