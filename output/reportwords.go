package output

import (
	"fmt"

	"coredays/model/check"
	"coredays/model/logbook"
)

// headlines tell the answer in sentences.
func headlines(s *logbook.Summary) []string {
	if s.Replications == 0 {
		return []string{"No replication finished, so there is no answer."}
	}
	days, sea := inDays(s.Needed.Total), given(s.Allotted.SeaDays.Days())
	p10, p50, p90 := quantiles(days, places(days.P50, days.P90))
	if p10 == "" {
		return []string{fmt.Sprintf("The whole programme needs %s days, port to port.", p50),
			happens(s.Allotted.ChanceAll, s.Replications, "It fits into the "+sea+" sea days", "It does not fit into the "+sea+" sea days")}
	}
	return []string{
		fmt.Sprintf("Half of the expeditions need more than %s days for the whole programme, port to port; one in ten more than %s, nine in ten more than %s.", p50, p90, p10),
		happens(s.Allotted.ChanceAll, s.Replications, "In the "+sea+" sea days it is finished", "In the "+sea+" sea days it is not finished") + " " +
			happens(s.Allotted.ChancePrimary, s.Replications, "Everything of rank 1 at the primary sites gets done", "Not everything of rank 1 at the primary sites gets done"),
	}
}

// checkedWords tells the verdict of the check in a sentence.
func checkedWords(found []check.Finding) string {
	worst := check.Worst(found)
	text := mark(worst) + " The check finds nothing to stop for"
	if n := len(check.Of(found, check.Stop)); n > 0 {
		text = fmt.Sprintf("%s The check STOPS the plan: %d to stop for", mark(worst), n)
	}
	if n := len(check.Of(found, check.Caution)); n > 0 {
		text += fmt.Sprintf(" and %d to look at", n)
	}
	return text + "."
}

// facts are the figures of the headline.
func facts(s *logbook.Summary) []fact {
	if s.Replications == 0 {
		return nil
	}
	needed, hand := inDays(s.Needed.Total), inDays(s.Allotted.InHand)
	ofAll := orLess("of the expeditions", s.Replications >= 2) // one is no share of many
	return []fact{
		spreadFact("days needed", needed, places(needed.P90, needed.P50), "d"),
		{"whole programme within the days", chance(s.Allotted.ChanceAll, s.Replications) + perCent(s), exact(s.Allotted.ChanceAll), ofAll},
		{"all of rank 1 within the days", chance(s.Allotted.ChancePrimary, s.Replications) + perCent(s), exact(s.Allotted.ChancePrimary), ofAll},
		spreadFact("days in hand at the end", hand, places(hand.P10, hand.P50, hand.P90), "d"),
		spreadFact("core recovered within the days", s.Allotted.Recovered, 0, "m"),
		{"port reached too late", chance(s.Allotted.Late, s.Replications) + perCent(s), exact(s.Allotted.Late), ofAll},
	}
}

func perCent(s *logbook.Summary) string { return orLess(" %", s.Replications >= 2) }

// spreadFact tells P50, and P10 and P90 below it.
func spreadFact(label string, s logbook.Spread, places int, unit string) fact {
	p10, p50, p90 := quantiles(s, places)
	note := ""
	if p10 != "" {
		note = "P50; P10–P90 " + between(p10, p90) + " " + unit
	}
	return fact{label, p50 + " " + unit, exact(middle(s)), note}
}

// siteWords tells a site in a sentence.
func siteWords(site *logbook.Site) string {
	text := fmt.Sprintf("Water depth %s m, target %s m below the sea floor. ", given(float64(site.WaterDepth)), given(float64(site.Target)))
	if neverReached(site) {
		return text + "Not reached."
	}
	days, waiting := inDays(site.Days), inDays(site.Waiting)
	return text + fmt.Sprintf("%s days on site, of which %s waiting on weather; %s m recovered, %s %% of what was cored; reached in %s %%, complete in %s %% of the expeditions within the days.",
		ranged(days, places(days.P90)), ranged(waiting, places(days.P90)), ranged(site.Recovered, 0), ranged(site.Percent, 0),
		percent(site.ChanceReached), percent(site.ChanceComplete))
}

// fact is a figure of the headline, with all its digits for programs.
type fact struct{ Label, Value, Exact, Note string }
