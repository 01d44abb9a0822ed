package chart

import (
	"fmt"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"

	"coredays/model/result"
	"coredays/output"
	"coredays/output/sheet"
	"coredays/output/words"
)

// siteChart draws a site by depth: the layers, when each hole came how deep, and what is recovered.
func siteChart(r *output.Report, n int) *Chart {
	site := &r.Summary.Sites[n]
	if len(site.Section) == 0 || site.Target <= 0 {
		return nil
	}
	stay := r.Logged(site)
	days, deepest := reach(&stay)
	bottom := max(float64(site.Target), deepest)
	for i := range site.Holes {
		for _, m := range usualMarks(&site.Holes[i]) {
			bottom = max(bottom, float64(m.Depth))
		}
	}
	c := &Chart{Name: fmt.Sprintf("site-%d", n+1), Title: words.SiteName(site) + ": depth against days, and what comes up", width: chartWidth, height: 7.8 * vg.Centimeter,
		Key: siteKey, Behind: behindSite(r, site)}
	way, section := wayPlot(site, days, c), sectionPlot(site)
	for _, p := range []*plot.Plot{way, section} {
		p.Y.Min, p.Y.Max, p.Y.Scale = 0, bottom*1.11, plot.InvertedScale{Normalizer: plot.LinearScale{}}
		p.Y.Tick.Marker = evenly(0, bottom, roundStep(bottom, 7), func(x float64) string { return fmt.Sprintf("%.0f", x) })
	}
	if r.Log != nil {
		c.Key += loggedKey
		loggedWays(way, &stay, c)
	}
	c.panels = []panel{{way, 0, 0.7}, {section, 0.7, 1}}
	c.Desc += fmt.Sprintf("P50 of the section recovered in at least one hole: %s %%.", words.Percent(words.Middle(site.Coverage)))
	return c
}

// siteKey says how the chart of a site is read.
const siteKey = "First panel: layers, and each hole's way down, P50 as a line and P10 to P90 as a band; depths that fewer than half of the holes begun came to are left out. Tasks and logging take the time between. " +
	"Second: by depth, the share of what was cored that came up (dashes) and of the section that came up in at least one hole (line, filled)."

// behindSite are the tables behind the chart of a site.
func behindSite(r *output.Report, site *result.Site) []*sheet.Table {
	list := []*sheet.Table{sheet.Way(r.Summary).Where("site", site.Name).Only("hole", "depth_m", "share", "days_p10", "days_p50", "days_p90"),
		sheet.Section(r.Summary).Where("site", site.Name).Only("from_m", "to_m", "cored_m", "recovered_m", "recovered_percent", "covered"),
		sheet.Layers(r.Summary).Where("site", site.Name).Only("layer", "bottom_m")}
	if r.Log != nil {
		list = append(list, sheet.Logged(r.Summary, r.Log).Where("site", site.Name).Only("hole", "depth_m", "days_logged", "share", "days_p10", "days_p50", "days_p90"))
	}
	return list
}
