package output

import (
	"strings"

	"coredays/model/logbook"
)

// alternativesView is alternatives side by side, on their own page and on that of a simulation.
type alternativesView struct {
	Pictures    []*picture
	Table       *sheet
	Notes       []string
	Differences *sheet // of plans and dates
	Unsettled   []string
	Pairing     string
	Why         *whyView // of orders
	Searched    []string
}

// whyView sets the first order beside the shortest track.
type whyView struct {
	Heading       string
	Lines         []string
	Visits, Items *sheet
}

func alternativesViewOf(c *logbook.Comparison) (*alternativesView, error) {
	pictures, err := picturesOf(alternativesCharts(c))
	if err != nil {
		return nil, err
	}
	v := &alternativesView{Pictures: pictures, Notes: []string{sideNote(c)}}
	if c.Planned >= 0 {
		v.Notes = append(v.Notes, "Planned: the order of the scenario.")
	}
	columns := []string{"alternative", "row", "standing", "chance_primary", "chance_all", "days_p50", "more_mean", "more_low", "more_high"}
	if c.Question == logbook.WhichOrder {
		columns = append(columns, "track_nmi", "recovered_mean")
		v.Why, v.Searched = whyViewOf(c), searchLines(c)
	} else {
		columns = append(columns, "waiting_mean", "recovered_mean")
	}
	if c.Question != logbook.WhichOrder && len(c.Differences) > 0 && c.Replications > 1 {
		v.Differences = differencesShown(c)
		v.Unsettled, v.Pairing = unsettled(c), pairingSentence(c)
	}
	if len(c.Alternatives) > 2 {
		v.Notes = append(v.Notes, "*: "+unbeatenWords+"; it may still stand behind the first, which goes by chance, then days, then core.")
	}
	v.Table = remarked(c, alternativesSheet(c).only(columns...))
	return v, nil
}

// remarked tells beside each alternative what else there is to say of it.
func remarked(c *logbook.Comparison, t *sheet) *sheet {
	t.fields = append(t.fields, field{key: "remarks", heading: "remarks", kind: ofWords})
	for n, i := range byMerit(c) {
		var remarks []string
		if i == c.Planned {
			remarks = append(remarks, "planned")
		}
		if starred(c, i) {
			remarks = append(remarks, "*")
		}
		t.rows[n] = append(t.rows[n], strings.Join(remarks, " "))
	}
	return t
}

// differencesShown are all pairs of few alternatives, and of many those with the first.
func differencesShown(c *logbook.Comparison) *sheet {
	s, columns := differencesSheet(c), []string{"one", "other", "days_mean", "days_low", "days_high", "share_shorter",
		"chance_primary_mean", "chance_primary_low", "chance_primary_high", "recovered_mean", "recovered_low", "recovered_high"}
	if len(c.Alternatives) > mostPaired {
		s = s.where("other", c.Alternatives[c.Best].Name)
		columns = append(columns[:1], columns[2:]...)
	}
	return s.only(columns...)
}

// whyViewOf is nil where no order is the shortest of those sailed.
func whyViewOf(c *logbook.Comparison) *whyView {
	if c.Reference < 0 {
		return nil
	}
	v := &whyView{Heading: whyHeading(c)}
	if c.Best == c.Reference {
		return v
	}
	best, short := &c.Alternatives[c.Best], &c.Alternatives[c.Reference]
	v.Lines, v.Visits = whyLines(best, short), visitsSheet(best, short)
	if items := itemsSheet(best, short); len(items.rows) > 0 {
		v.Items = items
	}
	return v
}

// picturesOf sets charts into a page.
func picturesOf(charts []*chart) (list []*picture, err error) {
	for _, c := range charts {
		svg, err := c.svg()
		if err != nil {
			return nil, err
		}
		list = append(list, &picture{c.title, c.key, svg, c.behind})
	}
	return list, nil
}

// ordersView is the part on the order of the sites of a simulation's page.
type ordersView struct {
	Lines        []string
	Alternatives *alternativesView // nil where the search was stopped before it had any
	Notes        []string
	Call         string
}

// ordersViewOf is nil where nobody looked for an order.
func ordersViewOf(c *logbook.Comparison) (*ordersView, error) {
	if c == nil {
		return nil, nil
	}
	v := &ordersView{Notes: append(madeOf(c), c.Warnings...), Call: compareCall(c)}
	if !answers(c) {
		return v, nil
	}
	v.Lines = append([]string{firstWords(c)}, standingLines(c)...)
	var err error
	v.Alternatives, err = alternativesViewOf(c)
	return v, err
}

// otherOrder tells of an order that is better than that of the scenario, where one was found.
func otherOrder(c *logbook.Comparison) []string {
	if c == nil || !answers(c) || c.Planned < 0 || c.Planned == c.Best || c.Alternatives[c.Planned].Alike {
		return nil
	}
	best := &c.Alternatives[c.Best]
	return []string{"Another order of the sites does better: " + best.Name + ". " +
		happens(best.Summary.Allotted.ChancePrimary, c.Replications, "With it everything of rank 1 at the primary sites gets done", "With it not everything of rank 1 gets done")}
}
