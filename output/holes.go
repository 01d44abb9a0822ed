package output

import (
	"strconv"

	"coredays/model/logbook"
)

// holes prints the holes and tasks of each site.
func (p *page) holes(s *logbook.Summary) error {
	p.heading("Holes and tasks of each site")
	p.WriteByte('\n')
	several := s.Replications >= 2
	below := orLess("\nP50 (P10–P90)", several)
	cols := []column{
		words("site and hole", siteWidth),
		numbers("rank"),
		numbers("days (d)" + below),
		numbers("depth (mbsf)" + below),
		numbers("refusal (mbsf)" + below),
		numbers("section\n(%)"),
		numbers("done" + orLess("\n(%)", several)),
	}
	decimals := places(longestHoles(s.Sites)...)
	var rows [][]string
	for i := range s.Sites {
		rows = append(rows, []string{headOf(&s.Sites[i]), "", "", "", "", "", ""})
		for j := range s.Sites[i].Holes {
			rows = append(rows, holeRow(&s.Sites[i].Holes[j], decimals, s.Replications))
		}
	}
	if err := p.table(cols, rows); err != nil {
		return err
	}
	p.say("Refusal: of a piston corer, over the expeditions in which one was refused. Section: share of the site's section "+
		"recovered in this hole or one before it%s. Done: within %s days.", orLess(", P50", several), given(s.Allotted.SeaDays.Days()))
	return p.conditional(s)
}

// conditional prints what becomes of the holes and tasks that are wanted only as another hole turns out.
func (p *page) conditional(s *logbook.Summary) error {
	var rows [][]string
	for i := range s.Sites {
		for _, h := range s.Sites[i].Holes {
			if h.Conditional {
				rows = append(rows, []string{s.Sites[i].Name + " " + h.Name, chance(h.ChanceDone, s.Replications),
					chance(h.ChanceNotCalled, s.Replications), chance(h.ChanceDropped, s.Replications)})
			}
		}
	}
	if len(rows) == 0 {
		return nil
	}
	several := s.Replications >= 2
	p.WriteByte('\n')
	cols := []column{words("wanted only as another turns out", siteWidth), numbers("done" + orLess(" (%)", several)),
		numbers("not called for" + orLess(" (%)", several)), numbers("dropped" + orLess(" (%)", several))}
	if err := p.table(cols, rows); err != nil {
		return err
	}
	p.say("Dropped: left out, or cut short. What is not called for leaves its site complete and the programme whole.")
	return nil
}

// longestHoles are the days that decide how many decimals all of them get.
func longestHoles(sites []logbook.Site) (days []float64) {
	for _, site := range sites {
		for _, h := range site.Holes {
			days = append(days, inDays(h.Days).P50, inDays(h.Days).P90)
		}
	}
	return days
}

// headOf is the line above the holes of a site.
func headOf(site *logbook.Site) string {
	if site.ChanceReached == 0 {
		return siteName(site) + ": not reached"
	}
	return siteName(site)
}

// holeRow is the row of one hole or task. A task has no depth and meets no refusal.
func holeRow(h *logbook.Hole, places, replications int) []string {
	name, depth, refusal, section := "  "+h.Name, ranged(h.Depth, 0), ranged(h.Refusal, 0), percent(middle(h.Covered))
	if h.Task {
		name, depth, refusal, section = "  task: "+h.Name, "", "", ""
	}
	return []string{name, strconv.Itoa(h.Rank), ranged(inDays(h.Days), places), depth, refusal, section, chance(h.ChanceDone, replications)}
}
