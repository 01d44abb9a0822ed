package text

import (
	"coredays/model/result"
	"coredays/output/words"
)

// needed prints the first result: the whole programme without a deadline.
func (p *Printer) needed(s *result.Summary) error {
	p.Heading("Days needed (the whole programme, no deadline)")
	days := words.InDays(s.Needed.Total)
	p10, p50, p90 := words.Quantiles(days, words.DayPlaces)
	if p10 == "" {
		p.Say("%s d, port to port.", p50)
		p.Says(CoreWords(&s.Recovery))
		p.Says(Deck(&s.Deck))
		return nil
	}
	p.Say("P10 %s d, P50 %s d%s, P90 %s d, port to port.", p10, p50, plusMinus(days), p90)
	p.Says(CoreWords(&s.Recovery))
	p.Says(Deck(&s.Deck))
	return nil
}

// plusMinus says the simulation error of P50 where it is large enough to matter.
func plusMinus(days result.Spread) string {
	half, telling := words.SimulationError(days)
	if !telling {
		return ""
	}
	return " (±" + words.Fixed(half, words.DayPlaces) + " d simulation error)"
}

// allotted prints the second result: what gets done within the days.
func (p *Printer) allotted(s *result.Summary) error {
	a := &s.Allotted
	p.Heading("What gets done in %s days (under the rules of the expedition)", words.Given(a.SeaDays.Days()))
	p.Say("%s", words.Happens(a.ChanceAll, s.Replications, "The whole programme gets done", "The whole programme does not get done"))
	p.Say("%s", words.Happens(a.ChancePrimary, s.Replications, "Everything of rank 1 at the primary sites gets done",
		"Not everything of rank 1 at the primary sites gets done"))
	p.Say("%s", words.Happens(a.Late, s.Replications, "Port is reached too late", "Port is reached in time"))
	for _, sentence := range append(Why(s), LeftOut(s)) {
		p.Says(sentence)
	}
	p.WriteByte('\n')
	hand := words.InDays(a.InHand)
	rows := [][]string{threeCells("days in hand at the end (d)", hand, words.DayPlaces, s.Replications),
		threeCells("core recovered (m)", a.Recovered, 0, s.Replications)}
	if a.OfAlternates.P90 > 0 {
		rows = append(rows, threeCells("  at the primary sites", a.OfPrimary, 0, s.Replications), threeCells("  at alternates", a.OfAlternates, 0, s.Replications))
	}
	return p.Table(threeColumns(WordColumn("result", 44), s.Replications, "figure", ""), rows)
}

// threeColumns heads a column of words and P10, P50, P90; a single replication has one number.
func threeColumns(first Column, replications int, single, unit string) []Column {
	if replications < 2 {
		return []Column{first, NumberColumn(single)}
	}
	return []Column{first, NumberColumn("P10" + unit), NumberColumn("P50" + unit), NumberColumn("P90" + unit)}
}

// threeCells fills them.
func threeCells(first string, s result.Spread, places, replications int) []string {
	p10, p50, p90 := words.Quantiles(s, places)
	if replications < 2 {
		return []string{first, p50}
	}
	return []string{first, p10, p50, p90}
}
