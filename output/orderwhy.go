package output

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"

	"coredays/model/activity"
	"coredays/model/logbook"
	"coredays/model/unit"
)

// why sets the first order beside the one with the shortest track.
func (p *page) why(c *logbook.Comparison) error {
	if c.Reference < 0 {
		return nil
	}
	best, short := &c.Alternatives[c.Best], &c.Alternatives[c.Reference]
	if c.Best == c.Reference {
		p.heading("Its track is the shortest of all orders sailed: %s nmi", figures(float64(best.Distance/unit.NauticalMile)))
		return nil
	}
	p.heading("Why not the shortest track: %s", short.Name)
	p.item(fmt.Sprintf("Way: %s nmi against %s nmi; sailing takes %s d against %s d.", miles(best), miles(short),
		meanOf(best, activity.Sailing), meanOf(short, activity.Sailing)))
	p.item(fmt.Sprintf("Season and sea: waiting takes %s d against %s d, at each site as below.", meanOf(best, activity.Waiting), meanOf(short, activity.Waiting)))
	p.item("Port: when days run out, the last site pays. " + lastSites(best, short) + ".")
	p.item(capsSentence(best))
	p.WriteByte('\n')
	if err := p.visitsCompared(best, short); err != nil {
		return err
	}
	return p.itemsCompared(c, best, short)
}

func miles(a *logbook.Alternative) string { return figures(float64(a.Distance / unit.NauticalMile)) }

func meanOf(a *logbook.Alternative, class activity.Class) string {
	return fixed(a.Summary.Needed.ByClass[class].Mean/float64(unit.Day), 1)
}

// lastSites tells which site pays in either order.
func lastSites(best, short *logbook.Alternative) string {
	one, other := lastSite(best), lastSite(short)
	if one.Name == other.Name {
		return "That is " + one.Name + " in both"
	}
	return fmt.Sprintf("Here that is %s, on the shortest track %s", shareOfFirst(one), shareOfFirst(other))
}

// lastSite is the last of the primary sites.
func lastSite(a *logbook.Alternative) (last logbook.Site) {
	for _, s := range a.Summary.Sites {
		if !s.Alternate {
			last = s
		}
	}
	return last
}

// shareOfFirst tells how much of a site is of rank 1.
func shareOfFirst(s logbook.Site) string {
	ones := 0
	for _, h := range s.Holes {
		if h.Rank <= 1 {
			ones++
		}
	}
	return fmt.Sprintf("%s with %d of its %s of rank 1", s.Name, ones, counted(len(s.Holes), "item"))
}

// capsSentence lists the caps of the sites.
func capsSentence(a *logbook.Alternative) string {
	var list string
	for i, name := range a.Order {
		if cap := a.Caps[i]; cap > 0 {
			list += orLess("; ", list != "") + fmt.Sprintf("%s may take %s d", name, figures(cap.Days()))
		}
	}
	if list == "" {
		return "Caps: no site has one."
	}
	return "Caps, in any order the same: " + list + "."
}

// visitsCompared prints arrivals, waiting and completion of each site in both orders.
func (p *page) visitsCompared(best, short *logbook.Alternative) error {
	columns := []column{words("site", siteWidth), numbers("arrives, P50:\nfirst"), numbers("\nshortest"), numbers("waits (d), mean:\nfirst"), numbers("\nshortest"),
		numbers("complete (%):\nfirst"), numbers("\nshortest")}
	var rows [][]string
	for i := range best.Summary.Sites {
		one := &best.Summary.Sites[i]
		other := siteNamed(short.Summary, one.Name)
		if one.Alternate || other == nil {
			continue
		}
		rows = append(rows, []string{one.Name, arrival(best, one), arrival(short, other), fixed(one.Waiting.Mean/float64(unit.Day), 1),
			fixed(other.Waiting.Mean/float64(unit.Day), 1), percent(one.ChanceComplete), percent(other.ChanceComplete)})
	}
	return p.table(columns, rows)
}

func siteNamed(s *logbook.Summary, name string) *logbook.Site {
	i := slices.IndexFunc(s.Sites, func(site logbook.Site) bool { return site.Name == name })
	if i < 0 {
		return nil
	}
	return &s.Sites[i]
}

// arrival is the day of P50.
func arrival(a *logbook.Alternative, site *logbook.Site) string {
	at, exists := dateAfter(a.Summary.Sails, middle(site.Arrives))
	if !exists {
		return absent
	}
	return day(at)
}

// telltale is the difference in the chance of an item from which it is printed, and mostItems how
// many are.
const (
	telltale  = 0.03
	mostItems = 10
)

// itemsCompared prints the holes and tasks whose chances differ most, rank 1 before the others.
func (p *page) itemsCompared(c *logbook.Comparison, best, short *logbook.Alternative) error {
	type both struct {
		name       string
		rank       int
		one, other float64
	}
	var list []both
	for _, site := range best.Summary.Sites {
		other := siteNamed(short.Summary, site.Name)
		for i, h := range site.Holes {
			if other != nil && !site.Alternate && math.Abs(h.ChanceDone-other.Holes[i].ChanceDone) >= telltale {
				list = append(list, both{site.Name + " " + h.Name, h.Rank, h.ChanceDone, other.Holes[i].ChanceDone})
			}
		}
	}
	if len(list) == 0 {
		return nil
	}
	slices.SortStableFunc(list, func(a, b both) int {
		return cmp.Or(cmp.Compare(a.rank, b.rank), cmp.Compare(math.Abs(b.one-b.other), math.Abs(a.one-a.other)))
	})
	var rows [][]string
	for _, l := range list[:min(mostItems, len(list))] {
		rows = append(rows, []string{l.name, strconv.Itoa(l.rank), percent(l.one), percent(l.other)})
	}
	p.heading("What gets done, where it differs by %.0f points or more", 100*telltale)
	p.WriteByte('\n')
	return p.table([]column{words("hole or task", siteWidth), numbers("rank"), numbers("done (%):\nfirst"), numbers("\nshortest")}, rows)
}

// searched says what was looked at to find the first order.
func (p *page) searched(c *logbook.Comparison) error {
	s := c.Search
	p.heading("What was searched")
	switch {
	case s.Uncounted:
		p.item(fmt.Sprintf("More than %d orders keep the rules. Of beginnings of orders, those with the least days reckoned were followed up; %d orders were "+
			"reckoned from single visits to each site.", s.Allowed, s.Reckoned))
	case s.Reckoned > 0:
		p.item(fmt.Sprintf("%d orders by the rules of the scenario. All were reckoned from single visits to each site on each day.", s.Allowed))
	default:
		p.item(counted(s.Allowed, "order") + " in all by the rules of the scenario, and all were sailed.")
	}
	if a := &c.Alternatives[c.Best]; slices.ContainsFunc(a.Summary.Sites, func(s logbook.Site) bool { return s.Alternate }) {
		p.item("Alternates come after the primary sites in any order, where time is left.")
	}
	for _, stage := range s.Stages {
		p.item(fmt.Sprintf("%d orders were sailed in %s.", stage.Orders, counted(stage.Replications, "replication")))
	}
	if s.Reckoned > 0 {
		next := daysInterval(s.NextDays)
		p.item(fmt.Sprintf("The next order, which was not sailed, is behind the first by %s points of chance and %s d as reckoned. "+
			"Sailed less reckoned, the orders above differ among themselves by %s points and %s d (standard deviation): the reckoning is no proof.",
			signedFixed(100*s.NextFirst, 0), signedFixed(next.Mean, 1), figures(100*s.ErrorFirst), figures(s.ErrorDays/float64(unit.Day))))
	}
	if s.LeftOut > 0 {
		p.item(fmt.Sprintf("%d orders were left out that nothing had ruled out, for being behind by the estimates so far.", s.LeftOut))
	}
	p.item(fmt.Sprintf("The %d orders above were sailed in %s with luck that none of them was picked for.", len(c.Alternatives), counted(c.Replications, "replication")))
	p.item("Ruled out by: " + s.Rule + ".")
	return nil
}
