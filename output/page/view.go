package page

import (
	"fmt"
	"html/template"
	"slices"
	"strings"

	"coredays/model/check"
	"coredays/model/result"
	"coredays/output"
	"coredays/output/chart"
	"coredays/output/sheet"
	"coredays/output/text"
	"coredays/output/words"
)

// reportView is what the page shows, ready to be set.
type reportView struct {
	Style       template.CSS
	Title, Sub  string
	Dated       string // empty for none
	Headline    []string
	Why         []string // of the headline
	Facts       []text.Fact
	Warnings    []string
	Pictures    map[string]*picture
	Sites       []siteView
	SiteTable   *sheet.Table // all of them
	ToolTable   *sheet.Table
	Deck        string
	LeftOut     string
	Orders      *ordersView
	SiteKey     string // how to read the charts of all sites
	Consumables *sheet.Table
	Verdict     string
	Checked     string // the verdict in a sentence
	Found       []verdictView
	Basis       []basisGroup
	BasisWords  string
	Matters     *sheet.Table
	Filled      []string
	Cautions    []string
	Run         *sheet.Table
	Call        string
}

// picture is a chart set into the page.
type picture struct {
	Title, Key string
	SVG        template.HTML
	Phone      template.HTML // the same, drawn for a narrow screen
	Behind     []*sheet.Table
}

// pictureOf sets a chart into a page.
func pictureOf(c *chart.Chart) (*picture, error) {
	svg, err := c.SVG()
	if err != nil {
		return nil, err
	}
	phone, err := c.PhoneSVG()
	return &picture{c.Title, c.Key, svg, phone, c.Behind}, err
}

// siteView is a site with its chart and its holes.
type siteView struct {
	Name    string
	Picture *picture
	Facts   string
	Holes   *sheet.Table
}

type verdictView struct {
	Heading string
	Table   *sheet.Table
	Folded  bool
}

type basisGroup struct {
	Name  string
	Table *sheet.Table
}

// reportViewOf gathers what the page shows.
func reportViewOf(r *output.Report) (*reportView, error) {
	s := r.Summary
	v := &reportView{Style: template.CSS(reportStyle), Title: words.OrElse(s.Scenario, "Unnamed scenario"), Sub: subtitle(r), Dated: r.Dated, Headline: append(text.Answer(s), otherOrder(r.Orders)...), Why: whyOf(s),
		Facts: append(text.Facts(s), text.MoreFacts(s, r.Found)...), Warnings: s.Warnings, Pictures: map[string]*picture{}, Consumables: sheet.Consumables(s), Cautions: check.Cautions(),
		Run: sheet.Run(r).Only("what", "value"), Call: text.Call(s), BasisWords: text.BasisCounted(r.Basis) + " Three figures are P10, P50 and P90.", Matters: mattersSheet(r)}
	for _, c := range chart.Of(r) {
		pic, err := pictureOf(c)
		if err != nil {
			return nil, err
		}
		if strings.HasPrefix(c.Name, "site-") {
			pic.Key, v.SiteKey = "", c.Key // stated once, not for each site
		}
		v.Pictures[c.Name] = pic
	}
	v.SiteTable = sheet.Sites(s).Only("site", "ranks", "days_p10", "days_p50", "days_p90", "waiting_p50", "waiting_p90", "recovered_p50", "recovered_percent_p50", "section_p50", "chance_reached", "chance_complete")
	v.SiteTable.Name = "sites-in-short"
	for i := range s.Sites {
		v.SiteTable.Rows[i][0] = words.SiteName(&s.Sites[i])
	}
	v.ToolTable, v.Deck, v.LeftOut = sheet.Tools(s).Only("tool", "cores_p50", "cored_p50", "recovered_p50", "recovered_percent_p10", "recovered_percent_p50", "recovered_percent_p90"), text.Deck(&s.Deck), text.LeftOut(s)
	holes := sheet.Holes(s)
	for i := range s.Sites {
		site := &s.Sites[i]
		stay, about := r.Logged(site), text.SiteWords(site)
		if logged := text.LoggedWords(site, &stay); logged != "" {
			about += " Logged " + logged
		}
		v.Sites = append(v.Sites, siteView{words.SiteName(site), v.Pictures[fmt.Sprintf("site-%d", i+1)], about,
			holes.Where("site", site.Name).Only(holeColumns(site)...)})
	}
	v.verdicts(r)
	var err error
	if v.Orders, err = ordersViewOf(r.Orders); err != nil {
		return nil, err
	}
	for _, group := range text.Groups(r.Basis) {
		v.Basis = append(v.Basis, basisGroup{group, sheet.Basis(text.InGroup(r.Basis, group)).Only("site", "number", "low", "mid", "high", "unit", "varies", "from", "source")})
	}
	return v, nil
}

// whyOf is empty where nothing was simulated.
func whyOf(s *result.Summary) []string {
	if s.Replications == 0 {
		return nil
	}
	return text.Why(s)
}

// holeColumns are the columns that the page has of a site's holes. Only holes that hang on others are ever not called for.
func holeColumns(site *result.Site) []string {
	columns := []string{"hole", "rank", "chance_done", "days_p10", "days_p50", "days_p90", "depth_p50", "refusal_p50", "chance_refused", "section_p50"}
	if slices.ContainsFunc(site.Holes, func(h result.Hole) bool { return h.Conditional }) {
		return slices.Insert(columns, 3, "chance_not_called_for", "chance_dropped")
	}
	return columns
}

// allMadeUp says what the demonstration is.
const allMadeUp = ". An invented demonstration: ship, ports, sites and programme are made up"

func subtitle(r *output.Report) string {
	s := r.Summary
	text := words.OrElse(s.Ship, "unnamed ship")
	if !s.Sails.IsZero() {
		text += ", sails " + words.Moment(s.Sails)
	}
	text += fmt.Sprintf(", %s sea days", words.Given(s.Allotted.SeaDays.Days()))
	if s.Invented {
		text += allMadeUp
	}
	return text
}

// verdicts sets out what the check found.
func (v *reportView) verdicts(r *output.Report) {
	v.Verdict, v.Checked = text.VerdictLine(r.Found), text.CheckedWords(r.Found)
	for _, grade := range []check.Verdict{check.Stop, check.Caution, check.Pass} {
		found := check.Of(r.Found, grade)
		switch grade {
		case check.Pass:
			found = text.Together(found)
		case check.Caution:
			found = text.Gathered(found)
		}
		if len(found) > 0 {
			v.Found = append(v.Found, verdictView{text.Mark(grade) + " " + text.VerdictHeadings[grade],
				sheet.Check(text.ToldInFull(found)).Only("site", "hole", "what", "value", "relation", "limit", "unit", "source"), grade == check.Pass})
		}
	}
	if r.Plan != nil {
		v.Filled = r.Plan.Warnings
	}
}

// mostMattering is how many numbers are given to matter most.
const mostMattering = 10

// mattersSheet is the numbers behind what drives the days needed; nil where no simulation says.
func mattersSheet(r *output.Report) *sheet.Table {
	first := text.Mattering(r.Basis)
	if len(first) == 0 {
		return nil
	}
	t := sheet.Basis(first[:min(mostMattering, len(first))]).Only("share", "causes", "site", "number", "low", "mid", "high", "unit", "varies", "from", "source")
	t.Name, t.Title = "matters", "The numbers behind it. "+text.BehindWords(r.Basis)
	return t
}
