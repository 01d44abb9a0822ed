package page

import (
	"strings"

	"coredays/model/result"
	"coredays/output/chart"
	"coredays/output/sheet"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// alternativesView is alternatives side by side, on their own page and on that of a simulation.
type alternativesView struct {
	Pictures    []*picture
	Table       *sheet.Table
	Notes       []string
	Differences *sheet.Table // of plans and dates
	Unsettled   []string
	Pairing     string
	Why         *whyView // of orders
	Searched    []string
}

// whyView sets the first order beside the shortest track.
type whyView struct {
	Heading       string
	Lines         []string
	Visits, Items *sheet.Table
}

func alternativesViewOf(c *result.Comparison) (*alternativesView, error) {
	pictures, err := picturesOf(chart.Alternatives(c))
	if err != nil {
		return nil, err
	}
	v := &alternativesView{Pictures: pictures, Notes: []string{alternatives.SideNote(c)}}
	if c.Planned >= 0 {
		v.Notes = append(v.Notes, "Planned: the order of the scenario.")
	}
	columns := append([]string{"alternative", "row", "standing", "chance_primary", "chance_all", "days_p50"}, sheet.ShownMore...)
	if c.Question == result.WhichOrder {
		columns = append(columns, "track_nmi", "recovered_mean")
		v.Why, v.Searched = whyViewOf(c), alternatives.SearchLines(c)
	} else {
		columns = append(columns, "waiting_mean", "recovered_mean")
	}
	if c.Question != result.WhichOrder && len(c.Differences) > 0 && c.Replications > 1 {
		v.Differences = differencesShown(c)
		v.Unsettled, v.Pairing = alternatives.Unsettled(c), alternatives.PairingSentence(c)
	}
	if len(c.Alternatives) > 2 {
		v.Notes = append(v.Notes, "*: "+alternatives.UnbeatenWords+"; it may still stand behind the first, which goes by chance, then days, then core.")
	}
	v.Table = remarked(c, sheet.Alternatives(c).Only(columns...))
	return v, nil
}

// remarked says beside each alternative what else there is to say of it.
func remarked(c *result.Comparison, t *sheet.Table) *sheet.Table {
	t.Fields = append(t.Fields, sheet.Field{Key: "remarks", Heading: "remarks", Kind: sheet.OfWords})
	for n, i := range alternatives.ByMerit(c) {
		var remarks []string
		if i == c.Planned {
			remarks = append(remarks, "planned")
		}
		if alternatives.Starred(c, i) {
			remarks = append(remarks, "*")
		}
		t.Rows[n] = append(t.Rows[n], strings.Join(remarks, " "))
	}
	return t
}

// differencesShown are all pairs of few alternatives, and of many those with the first.
func differencesShown(c *result.Comparison) *sheet.Table {
	s, columns := sheet.Differences(c), []string{"one", "other", "days_mean", "days_low", "days_high", "share_shorter",
		"chance_primary_mean", "chance_primary_low", "chance_primary_high", "recovered_mean", "recovered_low", "recovered_high"}
	if len(c.Alternatives) > alternatives.MostPaired {
		s = s.Where("other", c.Alternatives[c.Best].Name)
		columns = append(columns[:1], columns[2:]...)
	}
	return s.Only(columns...)
}

// whyViewOf is nil where no order is the shortest of those sailed.
func whyViewOf(c *result.Comparison) *whyView {
	if c.Reference < 0 {
		return nil
	}
	v := &whyView{Heading: alternatives.WhyHeading(c)}
	if c.Best == c.Reference {
		return v
	}
	best, short := &c.Alternatives[c.Best], &c.Alternatives[c.Reference]
	v.Lines, v.Visits = alternatives.WhyLines(best, short), sheet.Visits(best, short)
	if items := sheet.Items(best, short); len(items.Rows) > 0 {
		v.Items = items
	}
	return v
}

// picturesOf sets charts into a page.
func picturesOf(charts []*chart.Chart) (list []*picture, err error) {
	for _, c := range charts {
		p, err := pictureOf(c)
		if err != nil {
			return nil, err
		}
		list = append(list, p)
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
func ordersViewOf(c *result.Comparison) (*ordersView, error) {
	if c == nil {
		return nil, nil
	}
	v := &ordersView{Notes: append(alternatives.MadeOf(c), alternatives.Warnings(c)...), Call: alternatives.Call(c)}
	if !alternatives.Answers(c) {
		return v, nil
	}
	v.Lines = append([]string{firstWords(c)}, alternatives.StandingLines(c)...)
	var err error
	v.Alternatives, err = alternativesViewOf(c)
	return v, err
}

// otherOrder gives an order that is better than that of the scenario, where one was found.
func otherOrder(c *result.Comparison) []string {
	if c == nil || !alternatives.Answers(c) || c.Planned < 0 || c.Planned == c.Best || c.Alternatives[c.Planned].Alike {
		return nil
	}
	best := &c.Alternatives[c.Best]
	return []string{"Another order of the sites does better: " + alternatives.Named(c, c.Best) + ". " +
		words.Happens(best.Summary.Allotted.ChancePrimary, c.Replications, "With it everything of rank 1 at the primary sites gets done", "With it not everything of rank 1 gets done")}
}
