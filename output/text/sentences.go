package text

import (
	"fmt"

	"coredays/model/check"
	"coredays/model/result"
	"coredays/output/words"
)

// Headlines tell the answer in sentences, and why it is so.
func Headlines(s *result.Summary) []string {
	if s.Replications == 0 {
		return Answer(s)
	}
	return append(Answer(s), Why(s)...)
}

// Answer tells the answer in sentences.
func Answer(s *result.Summary) []string {
	if s.Replications == 0 {
		return []string{"No replication finished, so there is no answer."}
	}
	days, sea := words.InDays(s.Needed.Total), words.Given(s.Allotted.SeaDays.Days())
	p10, p50, p90 := words.Quantiles(days, words.DayPlaces)
	if p10 == "" {
		return []string{fmt.Sprintf("The whole programme needs %s days, port to port.", p50),
			words.Happens(s.Allotted.ChanceAll, s.Replications, "It fits into the "+sea+" sea days", "It does not fit into the "+sea+" sea days")}
	}
	return []string{
		fmt.Sprintf("Half of the expeditions need more than %s days for the whole programme, port to port; one in ten more than %s, nine in ten more than %s.", p50, p90, p10),
		words.Happens(s.Allotted.ChanceAll, s.Replications, "In the "+sea+" sea days it gets done", "In the "+sea+" sea days it does not get done") + " " +
			words.Happens(s.Allotted.ChancePrimary, s.Replications, "Everything of rank 1 at the primary sites gets done", "Not everything of rank 1 at the primary sites gets done"),
	}
}

// CheckedWords says the verdict of the check in a sentence.
func CheckedWords(found []check.Finding) string {
	return Mark(check.Worst(found)) + " The check finds " + many(len(check.Of(found, check.Stop)), "stop") + " and " + many(len(check.Of(found, check.Caution)), "caution") + "."
}

// Facts are the figures of the headline.
func Facts(s *result.Summary) []Fact {
	if s.Replications == 0 {
		return nil
	}
	needed, hand := words.InDays(s.Needed.Total), words.InDays(s.Allotted.InHand)
	ofAll := words.OrLess("of the expeditions", s.Replications >= 2) // one is no share of many
	return []Fact{
		spreadFact("days needed", needed, words.DayPlaces, "d"),
		{"whole programme within the days", words.Chance(s.Allotted.ChanceAll, s.Replications) + perCent(s), words.Exact(s.Allotted.ChanceAll), ofAll},
		{"all of rank 1 within the days", words.Chance(s.Allotted.ChancePrimary, s.Replications) + perCent(s), words.Exact(s.Allotted.ChancePrimary), ofAll},
		spreadFact("days in hand at the end", hand, words.DayPlaces, "d"),
		coreFact(&s.Allotted),
		{"port reached too late", words.Chance(s.Allotted.Late, s.Replications) + perCent(s), words.Exact(s.Allotted.Late), ofAll},
	}
}

func perCent(s *result.Summary) string { return words.OrLess(" %", s.Replications >= 2) }

// spreadFact says P50, and P10 and P90 below it.
func spreadFact(label string, s result.Spread, places int, unit string) Fact {
	p10, p50, p90 := words.Quantiles(s, places)
	note := ""
	if p10 != "" {
		note = "P50; P10–P90 " + words.Between(p10, p90) + " " + unit
	}
	return Fact{label, p50 + " " + unit, words.Exact(words.Middle(s)), note}
}

// coreFact says the core within the days, and how much of it alternates bring.
func coreFact(a *result.Allotted) Fact {
	f := spreadFact("core recovered within the days", a.Recovered, 0, "m")
	if a.OfAlternates.P90 > 0 && f.Note != "" {
		f.Note += "; at the primary sites P50 " + words.Fixed(words.Middle(a.OfPrimary), 0) + " m"
	}
	return f
}

// SiteWords describes a site in a sentence.
func SiteWords(site *result.Site) string {
	text := fmt.Sprintf("Water depth %s m, target %s m below the sea floor. ", words.Given(float64(site.WaterDepth)), words.Given(float64(site.Target)))
	if words.NeverReached(site) {
		return text + "Not reached."
	}
	days, waiting := words.InDays(site.Days), words.InDays(site.Waiting)
	return text + fmt.Sprintf("%s days on site, of which %s waiting on weather; %s m recovered, %s %% of what was cored; reached in %s %%, complete in %s %% of the expeditions within the days.",
		words.Ranged(days, words.DayPlaces), words.Ranged(waiting, words.DayPlaces), words.Ranged(site.Recovered, 0), words.Ranged(site.Percent, 0),
		words.Percent(site.ChanceReached), words.Percent(site.ChanceComplete))
}

// Fact is a figure of the headline, with all its digits for programs.
type Fact struct{ Label, Value, Exact, Note string }

// Counted writes a number of things.
func Counted(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}
