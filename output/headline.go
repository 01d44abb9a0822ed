package output

import "coredays/model/logbook"

// needed prints the first result: the whole programme without a deadline.
func (p *page) needed(s *logbook.Summary) error {
	p.heading("Days needed (the whole programme, no deadline)")
	days := inDays(s.Needed.Total)
	p10, p50, p90 := quantiles(days, places(days.P50, days.P90))
	if p10 == "" {
		p.say("%s d, port to port", p50)
		return nil
	}
	p.say("P10 %s d, P50 %s d%s, P90 %s d, port to port.", p10, p50, plusMinus(days), p90)
	p.say("One expedition in ten needs less than %s d, half less than %s d, nine in ten less than %s d.", p10, p50, p90)
	return nil
}

// plusMinus tells the simulation error of P50 where it is large enough to matter.
func plusMinus(days logbook.Spread) string {
	half, telling := simulationError(days)
	if !telling {
		return ""
	}
	return " (±" + fixed(half, places(days.P50)) + " d simulation error)"
}

// allotted prints the second result: what gets done within the days.
func (p *page) allotted(s *logbook.Summary) error {
	a := &s.Allotted
	p.heading("What gets done in %s days (under the rules of the expedition)", given(a.SeaDays.Days()))
	p.say("%s", happens(a.ChanceAll, s.Replications, "The whole programme fits", "The whole programme does not fit"))
	p.say("%s", happens(a.ChancePrimary, s.Replications, "Everything of rank 1 at the primary sites gets done",
		"Not everything of rank 1 at the primary sites gets done"))
	p.say("%s", happens(a.Late, s.Replications, "Port is reached too late", "Port is reached in time"))
	p.WriteByte('\n')
	hand := inDays(a.InHand)
	return p.table(threeColumns(words("result", 44), s.Replications, "figure", ""), [][]string{
		threeCells("days in hand at the end (d)", hand, places(hand.P10, hand.P50, hand.P90), s.Replications),
		threeCells("core recovered (m)", a.Recovered, 0, s.Replications),
	})
}

// threeColumns heads a column of words and P10, P50, P90; a single replication has one number.
func threeColumns(first column, replications int, single, unit string) []column {
	if replications < 2 {
		return []column{first, numbers(single)}
	}
	return []column{first, numbers("P10" + unit), numbers("P50" + unit), numbers("P90" + unit)}
}

// threeCells fills them.
func threeCells(first string, s logbook.Spread, places, replications int) []string {
	p10, p50, p90 := quantiles(s, places)
	if replications < 2 {
		return []string{first, p50}
	}
	return []string{first, p10, p50, p90}
}
