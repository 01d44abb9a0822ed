package alternatives

import (
	"cmp"
	"fmt"
	"iter"
	"math"
	"slices"
	"strconv"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/text"
	"coredays/output/words"
)

// why sets the first order beside the one with the shortest track.
func (p *printer) why(c *result.Comparison) error {
	if c.Reference < 0 {
		return nil
	}
	p.Heading("%s", WhyHeading(c))
	if c.Best == c.Reference {
		return nil
	}
	best, short := &c.Alternatives[c.Best], &c.Alternatives[c.Reference]
	for _, line := range WhyLines(best, short) {
		p.Item(line)
	}
	p.WriteByte('\n')
	if err := p.visitsCompared(best, short); err != nil {
		return err
	}
	return p.itemsCompared(best, short)
}

func WhyHeading(c *result.Comparison) string {
	if c.Best == c.Reference {
		return fmt.Sprintf("Its track is the shortest of all orders sailed: %s nmi", miles(&c.Alternatives[c.Best]))
	}
	return "Why not the shortest track: " + Named(c, c.Reference)
}

// WhyLines tell by what the first order and the one with the shortest track differ.
func WhyLines(best, short *result.Alternative) []string {
	return []string{
		fmt.Sprintf("Way: %s nmi against %s nmi; sailing takes %s d against %s d.", miles(best), miles(short),
			meanOf(best, activity.Sailing), meanOf(short, activity.Sailing)),
		fmt.Sprintf("Season and sea: waiting takes %s d against %s d, at each site as below.", meanOf(best, activity.Waiting), meanOf(short, activity.Waiting)),
		"Port: when days run out, the last site pays. " + lastSites(best, short) + ".",
		capsSentence(best),
	}
}

func miles(a *result.Alternative) string {
	return words.Figures(float64(a.Distance / unit.NauticalMile))
}

func meanOf(a *result.Alternative, class activity.Class) string {
	return words.Fixed(a.Summary.Needed.ByClass[class].Mean/float64(unit.Day), 1)
}

// lastSites says which site pays in either order.
func lastSites(best, short *result.Alternative) string {
	one, other := lastSite(best), lastSite(short)
	if one.Name == other.Name {
		return "That is " + one.Name + " in both"
	}
	return fmt.Sprintf("Here that is %s, on the shortest track %s", shareOfFirst(one), shareOfFirst(other))
}

// lastSite is the last of the primary sites.
func lastSite(a *result.Alternative) (last result.Site) {
	for _, s := range a.Summary.Sites {
		if !s.Alternate {
			last = s
		}
	}
	return last
}

// shareOfFirst says how much of a site is of rank 1.
func shareOfFirst(s result.Site) string {
	ones := 0
	for _, h := range s.Holes {
		if h.Rank <= 1 {
			ones++
		}
	}
	return fmt.Sprintf("%s with %d of its %s of rank 1", s.Name, ones, text.Counted(len(s.Holes), "item"))
}

// capsSentence lists the caps of the sites.
func capsSentence(a *result.Alternative) string {
	var list string
	for i, name := range a.Order {
		if cap := a.Caps[i]; cap > 0 {
			list += words.OrLess("; ", list != "") + fmt.Sprintf("%s may take %s d", name, words.Figures(cap.Days()))
		}
	}
	if list == "" {
		return "Caps: no site has one."
	}
	return "Caps, in any order the same: " + list + "."
}

// visitsCompared prints arrivals, waiting and completion of each site in both orders.
func (p *printer) visitsCompared(best, short *result.Alternative) error {
	columns := []text.Column{text.WordColumn("site", text.SiteWidth), text.NumberColumn("arrives, P50:\nfirst"), text.NumberColumn("\nshortest"), text.NumberColumn("waits (d), mean:\nfirst"), text.NumberColumn("\nshortest"),
		text.NumberColumn("complete (%):\nfirst"), text.NumberColumn("\nshortest")}
	var rows [][]string
	for one, other := range VisitsInBoth(best, short) {
		rows = append(rows, []string{one.Name, arrival(best, one), arrival(short, other), words.Fixed(one.Waiting.Mean/float64(unit.Day), 1),
			words.Fixed(other.Waiting.Mean/float64(unit.Day), 1), words.Percent(one.ChanceComplete), words.Percent(other.ChanceComplete)})
	}
	return p.Table(columns, rows)
}

// VisitsInBoth goes through the primary sites in the order of the first, each with itself on the
// shortest track.
func VisitsInBoth(best, short *result.Alternative) iter.Seq2[*result.Site, *result.Site] {
	return func(yield func(one, other *result.Site) bool) {
		for i := range best.Summary.Sites {
			one := &best.Summary.Sites[i]
			if other := siteNamed(short.Summary, one.Name); !one.Alternate && other != nil && !yield(one, other) {
				return
			}
		}
	}
}

func siteNamed(s *result.Summary, name string) *result.Site {
	i := slices.IndexFunc(s.Sites, func(site result.Site) bool { return site.Name == name })
	if i < 0 {
		return nil
	}
	return &s.Sites[i]
}

// arrival is the day of P50.
func arrival(a *result.Alternative, site *result.Site) string {
	at, exists := words.DateAfter(a.Summary.Sails, words.Middle(site.Arrives))
	if !exists {
		return words.Absent
	}
	return words.Day(at)
}

// telltale is the difference in the chance of an item from which it is printed, and mostItems how
// many are.
const (
	telltale  = 0.03
	mostItems = 10
)

// itemInBoth is a hole or a task with its chances in both orders.
type itemInBoth struct {
	Name       string
	Rank       int
	One, Other float64
}

// ItemsInBoth are the holes and tasks whose chances differ most, rank 1 before the others.
func ItemsInBoth(best, short *result.Alternative) (list []itemInBoth) {
	for one, other := range VisitsInBoth(best, short) {
		for i, h := range one.Holes {
			if math.Abs(h.ChanceDone-other.Holes[i].ChanceDone) >= telltale {
				list = append(list, itemInBoth{one.Name + " " + h.Name, h.Rank, h.ChanceDone, other.Holes[i].ChanceDone})
			}
		}
	}
	slices.SortStableFunc(list, func(a, b itemInBoth) int {
		return cmp.Or(cmp.Compare(a.Rank, b.Rank), cmp.Compare(math.Abs(b.One-b.Other), math.Abs(a.One-a.Other)))
	})
	return list[:min(mostItems, len(list))]
}

// itemsCompared prints them.
func (p *printer) itemsCompared(best, short *result.Alternative) error {
	list := ItemsInBoth(best, short)
	if len(list) == 0 {
		return nil
	}
	var rows [][]string
	for _, l := range list {
		rows = append(rows, []string{l.Name, strconv.Itoa(l.Rank), words.Percent(l.One), words.Percent(l.Other)})
	}
	p.Heading("%s", ItemsHeading())
	p.WriteByte('\n')
	return p.Table([]text.Column{text.WordColumn("hole or task", text.SiteWidth), text.NumberColumn("rank"), text.NumberColumn("done (%):\nfirst"), text.NumberColumn("\nshortest")}, rows)
}

func ItemsHeading() string {
	return fmt.Sprintf("What gets done, where it differs by %.0f points or more", 100*telltale)
}
