package text

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"coredays/model/result"
	"coredays/output/words"
)

// Why are the sentences that say why what gets done is not what the days needed let one expect; none where nothing
// needs saying.
func Why(s *result.Summary) (list []string) {
	for _, sentence := range []string{tooMany(s), turning(s), beforeAll(s), unused(s)} {
		if sentence != "" {
			list = append(list, sentence)
		}
	}
	return list
}

// tooMany tells of a programme that hardly any expedition has the days for, and what helps.
func tooMany(s *result.Summary) string {
	least, sea := words.InDays(s.Needed.Total).P10, s.Allotted.SeaDays.Days()
	if s.Replications < 2 || !(least > sea) {
		return ""
	}
	return fmt.Sprintf("Nine in ten expeditions need more than %s days, and there are %s: coredays compare --drop says what to leave out.", words.Fixed(least, words.DayPlaces), words.Given(sea))
}

// apartBy is from which difference on chances are told apart: what a reader sees in whole per cent.
const apartBy = 0.01

// turning tells the expeditions that have time enough and do not finish, since nobody at sea knows the end.
func turning(s *result.Summary) string {
	fits, done := s.Needed.Fits, s.Allotted.ChanceAll
	if s.Replications < 2 || !(fits-done >= apartBy) || words.Often(fits, s.Replications) == words.Often(done, s.Replications) {
		return ""
	}
	rules := " and"
	if caps := binding(s); caps != "" {
		rules = ", keeps to the caps of " + caps + ", and"
	}
	return fmt.Sprintf("The %s days would be enough %s if nobody had to turn for home; the programme gets done %s, since the crew leaves in time for port by its own "+
		"estimate and forecast%s drops what it does not expect to fit.", words.Given(s.Allotted.SeaDays.Days()), words.Often(fits, s.Replications), words.Often(done, s.Replications),
		rules)
}

// binding names the sites whose cap is less than what one expedition in ten would take there, each with its cap.
func binding(s *result.Summary) string {
	var list []string
	for i := range s.Sites {
		if site := &s.Sites[i]; site.Cap > 0 && !site.Alternate && site.Days.P90 > float64(site.Cap) {
			list = append(list, fmt.Sprintf("%s (%s d)", site.Name, words.Given(site.Cap.Days())))
		}
	}
	return listing(list)
}

// listing is a list in a sentence.
func listing(list []string) string {
	if n := len(list) - 1; n > 0 {
		return strings.Join(list[:n], ", ") + " and " + list[n]
	}
	return strings.Join(list, "")
}

// beforeAll tells of alternates that are reached more often than the programme gets done.
func beforeAll(s *result.Summary) string {
	var names []string
	most := 0.0
	for i := range s.Sites {
		if site := &s.Sites[i]; site.Alternate && site.ChanceReached-s.Allotted.ChanceAll >= apartBy {
			names, most = append(names, site.Name), max(most, site.ChanceReached)
		}
	}
	if len(names) == 0 || s.Replications < 2 {
		return ""
	}
	return fmt.Sprintf("%s is reached %s, more often than the programme gets done: where the next hole is too long for the days left%s, the crew goes to an alternate.",
		strings.Join(names, " or "), words.Often(most, s.Replications), words.OrLess(" or for the cap of its site", binding(s) != ""))
}

// manyUnused is the share of the sea days from which days in hand are many. Our choice.
const manyUnused = 0.1

// unused tells of many days left over.
func unused(s *result.Summary) string {
	days := words.InDays(s.Allotted.InHand)
	sea := s.Allotted.SeaDays.Days()
	if s.Replications < 2 || !(words.Middle(days) >= manyUnused*sea) {
		return ""
	}
	return fmt.Sprintf("Half of the expeditions bring home %s of the %s days unused, or more.", words.Fixed(days.P50, words.DayPlaces), words.Given(sea))
}

// mostLeftOut is how many holes are told that get left out.
const mostLeftOut = 4

// LeftOut names the holes and tasks of primary sites that get dropped most often; empty where hardly one is.
func LeftOut(s *result.Summary) string {
	type drop struct {
		name string
		h    *result.Hole
	}
	var list []drop
	for i := range s.Sites {
		site := &s.Sites[i]
		for j := range site.Holes {
			if h := &site.Holes[j]; !site.Alternate && h.ChanceDropped >= apartBy {
				list = append(list, drop{site.Name + " " + h.Name, h})
			}
		}
	}
	if len(list) == 0 || s.Replications < 2 {
		return ""
	}
	slices.SortStableFunc(list, func(a, b drop) int { return cmp.Compare(rounded(b.h.ChanceDropped), rounded(a.h.ChanceDropped)) })
	var shown []string
	for _, d := range list[:min(len(list), mostLeftOut)] {
		shown = append(shown, fmt.Sprintf("%s %s %% (rank %d)", d.name, words.Percent(d.h.ChanceDropped), d.h.Rank))
	}
	return "Dropped or cut short most often: " + strings.Join(shown, ", ") + "."
}

// rounded is a share as it is read: what reads alike stays in the order of the visits.
func rounded(share float64) float64 { return math.Round(100 * share) }
