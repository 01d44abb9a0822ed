package text

import (
	"strconv"

	"coredays/model/result"
	"coredays/output/words"
)

// holes prints the holes and tasks of each site.
func (p *Printer) holes(s *result.Summary) error {
	p.Heading("Holes and tasks of each site")
	p.WriteByte('\n')
	several := s.Replications >= 2
	below := words.OrLess("\nP50 (P10–P90)", several)
	cols := []Column{
		WordColumn("site and hole", SiteWidth),
		NumberColumn("rank"),
		NumberColumn("days (d)" + below),
		NumberColumn("depth (mbsf)" + below),
		NumberColumn("refusal (mbsf)" + below),
		NumberColumn("section\n(%)"),
		NumberColumn("done" + words.OrLess("\n(%)", several)),
	}
	var rows [][]string
	for i := range s.Sites {
		rows = append(rows, []string{headOf(&s.Sites[i]), "", "", "", "", "", ""})
		for j := range s.Sites[i].Holes {
			rows = append(rows, holeRow(&s.Sites[i].Holes[j], words.DayPlaces, s.Replications))
		}
	}
	if err := p.Table(cols, rows); err != nil {
		return err
	}
	p.Say("Refusal: of a piston corer, over the expeditions in which one was refused. Section: share of the site's section "+
		"recovered in this hole or one before it%s. Done: within %s days.", words.OrLess(", P50", several), words.Given(s.Allotted.SeaDays.Days()))
	return p.conditional(s)
}

// conditional prints what becomes of the holes and tasks that are wanted only as another hole turns out.
func (p *Printer) conditional(s *result.Summary) error {
	var rows [][]string
	for i := range s.Sites {
		for _, h := range s.Sites[i].Holes {
			if h.Conditional {
				rows = append(rows, []string{s.Sites[i].Name + " " + h.Name, words.Chance(h.ChanceDone, s.Replications),
					words.Chance(h.ChanceNotCalled, s.Replications), words.Chance(h.ChanceDropped, s.Replications)})
			}
		}
	}
	if len(rows) == 0 {
		return nil
	}
	several := s.Replications >= 2
	p.WriteByte('\n')
	cols := []Column{WordColumn("wanted only as another turns out", SiteWidth), NumberColumn("done" + words.OrLess(" (%)", several)),
		NumberColumn("not called for" + words.OrLess(" (%)", several)), NumberColumn("dropped" + words.OrLess(" (%)", several))}
	if err := p.Table(cols, rows); err != nil {
		return err
	}
	p.Say("Dropped: left out, or cut short. What is not called for leaves its site complete and the programme whole.")
	return nil
}

// headOf is the line above the holes of a site.
func headOf(site *result.Site) string {
	if site.ChanceReached == 0 {
		return words.SiteName(site) + ": not reached"
	}
	return words.SiteName(site)
}

// holeRow is the row of one hole or task. A task has no depth and meets no refusal.
func holeRow(h *result.Hole, places, replications int) []string {
	name, depth, refusal, section := "  "+h.Name, words.Ranged(h.Depth, 0), words.Ranged(h.Refusal, 0), words.Percent(words.Middle(h.Covered))
	if h.Task {
		name, depth, refusal, section = "  task: "+h.Name, "", "", ""
	}
	return []string{name, strconv.Itoa(h.Rank), words.Ranged(words.InDays(h.Days), places), depth, refusal, section, words.Chance(h.ChanceDone, replications)}
}
