package output

import (
	"fmt"
	"html/template"
	"slices"
	"strings"

	"coredays/model/check"
	"coredays/model/logbook"
)

// reportView is what the page shows, ready to be set.
type reportView struct {
	Style       template.CSS
	Title, Sub  string
	Headline    []string
	Facts       []fact
	Warnings    []string
	Pictures    map[string]*picture
	Sites       []siteView
	Orders      *ordersView
	SiteKey     string // how to read the charts of all sites
	Consumables *sheet
	Verdict     string
	Checked     string // the verdict in a sentence
	Found       []verdictView
	Basis       []basisGroup
	BasisWords  string
	Matters     *sheet
	Filled      []string
	Cautions    []string
	Run         *sheet
	Call        string
}

// picture is a chart set into the page.
type picture struct {
	Title, Key string
	SVG        template.HTML
	Behind     []*sheet
}

// siteView is a site with its chart and its holes.
type siteView struct {
	Name    string
	Picture *picture
	Facts   string
	Holes   *sheet
}

type verdictView struct {
	Heading string
	Table   *sheet
	Folded  bool
}

type basisGroup struct {
	Name  string
	Table *sheet
}

// reportViewOf gathers what the page shows.
func reportViewOf(r *Report) (*reportView, error) {
	s := r.Summary
	v := &reportView{Style: template.CSS(reportStyle), Title: orElse(s.Scenario, "Unnamed scenario"), Sub: subtitle(r), Headline: append(headlines(s), otherOrder(r.Orders)...),
		Facts: facts(s), Warnings: s.Warnings, Pictures: map[string]*picture{}, Consumables: consumablesSheet(s), Cautions: check.Cautions(),
		Run: runSheet(r).only("what", "value"), Call: call(s), BasisWords: basisCounted(r.Basis) + " Three figures are the 1-in-10, the even and the 9-in-10 value.", Matters: mattersSheet(r)}
	for _, c := range charts(r) {
		svg, err := c.svg()
		if err != nil {
			return nil, err
		}
		pic := &picture{c.title, c.key, svg, c.behind}
		if strings.HasPrefix(c.name, "site-") {
			pic.Key, v.SiteKey = "", c.key // told once, not for each site
		}
		v.Pictures[c.name] = pic
	}
	holes := holesSheet(s)
	for i := range s.Sites {
		site := &s.Sites[i]
		stay, told := r.Logged(site), siteWords(site)
		if logged := loggedWords(site, &stay); logged != "" {
			told += " Logged " + logged
		}
		v.Sites = append(v.Sites, siteView{siteName(site), v.Pictures[fmt.Sprintf("site-%d", i+1)], strings.ReplaceAll(told, " %", "\u00a0%"), // no line begins with %
			holes.where("site", site.Name).only(holeColumns(site)...)})
	}
	v.verdicts(r)
	var err error
	if v.Orders, err = ordersViewOf(r.Orders); err != nil {
		return nil, err
	}
	for _, group := range groups(r.Basis) {
		v.Basis = append(v.Basis, basisGroup{group, basisSheet(inGroup(r.Basis, group)).only("site", "number", "low", "mid", "high", "unit", "varies", "from", "source")})
	}
	return v, nil
}

// holeColumns are the columns that the page has of a site's holes. Only holes that hang on others are ever not called for.
func holeColumns(site *logbook.Site) []string {
	columns := []string{"hole", "rank", "chance_done", "days_p10", "days_p50", "days_p90", "depth_p50", "refusal_p50", "chance_refused", "section_p50"}
	if slices.ContainsFunc(site.Holes, func(h logbook.Hole) bool { return h.Conditional }) {
		return slices.Insert(columns, 3, "chance_not_called_for", "chance_dropped")
	}
	return columns
}

// allMadeUp says what the demonstration is.
const allMadeUp = ". An invented demonstration: ship, ports, sites and programme are made up"

func subtitle(r *Report) string {
	s := r.Summary
	text := orElse(s.Ship, "unnamed ship")
	if !s.Sails.IsZero() {
		text += ", sails " + moment(s.Sails)
	}
	text += fmt.Sprintf(", %s sea days", given(s.Allotted.SeaDays.Days()))
	if s.Invented {
		text += allMadeUp
	}
	return text
}

// verdicts sets out what the check found.
func (v *reportView) verdicts(r *Report) {
	v.Verdict, v.Checked = verdictLine(r.Found), checkedWords(r.Found)
	for _, grade := range []check.Verdict{check.Stop, check.Caution, check.Pass} {
		found := check.Of(r.Found, grade)
		if grade == check.Pass {
			found = together(found)
		}
		if len(found) > 0 {
			v.Found = append(v.Found, verdictView{mark(grade) + " " + verdictHeadings[grade],
				checkSheet(toldInFull(found)).only("site", "hole", "what", "value", "limit", "unit", "source"), grade == check.Pass})
		}
	}
	if r.Plan != nil {
		v.Filled = r.Plan.Warnings
	}
}

// mostMattering is how many numbers are told to matter most.
const mostMattering = 10

// mattersSheet is the numbers behind what drives the days needed; nil where no simulation tells.
func mattersSheet(r *Report) *sheet {
	first := mattering(r.Basis)
	if len(first) == 0 {
		return nil
	}
	t := basisSheet(first[:min(mostMattering, len(first))]).only("share", "causes", "site", "number", "low", "mid", "high", "unit", "varies", "from", "source")
	t.title = "The numbers behind it. " + behindWords(r.Basis)
	return t
}
