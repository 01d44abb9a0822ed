package json

import "coredays/model/result"

type siteJSON struct {
	Name           string     `json:"name"`
	Alternate      bool       `json:"alternate"`
	WaterDepth     number     `json:"water_depth_m"`
	Target         number     `json:"target_m"` // below the sea floor
	Days           spreadJSON `json:"days"`
	Waiting        spreadJSON `json:"waiting"`
	Arrives        spreadJSON `json:"arrives_after_days"` // since sailing
	Leaves         spreadJSON `json:"leaves_after_days"`
	ArrivesOn      datesJSON  `json:"arrives_on"`
	LeavesOn       datesJSON  `json:"leaves_on"`
	ChanceReached  number     `json:"chance_reached"`
	ChanceComplete number     `json:"chance_complete"`
	Cored          spreadJSON `json:"cored_m"`
	Recovered      spreadJSON `json:"recovered_m"`
	Percent        spreadJSON `json:"percent"`
	Cores          spreadJSON `json:"cores"`
	Coverage       spreadJSON `json:"section_coverage"` // share
	Holes          []holeJSON `json:"holes"`
}

type holeJSON struct {
	Name          string     `json:"name"`
	Task          bool       `json:"task"`
	Rank          int        `json:"rank"`
	Days          spreadJSON `json:"days"`
	Depth         spreadJSON `json:"depth_m"`
	Refusal       spreadJSON `json:"refusal_depth_m"`
	ChanceRefused number     `json:"chance_refused"`
	Cored         spreadJSON `json:"cored_m"`
	Recovered     spreadJSON `json:"recovered_m"`
	Percent       spreadJSON `json:"percent"`
	Covered       spreadJSON `json:"section_coverage"` // share of the site's section, in this hole or one before it
	// What becomes of it within the days; the three add up to 1.
	ChanceDone      number `json:"chance_done"`
	ChanceNotCalled number `json:"chance_not_called_for"`
	ChanceDropped   number `json:"chance_dropped"` // left out, or cut short
	Conditional     bool   `json:"conditional"`    // wanted only as another hole turns out
}

func sitesOf(s *result.Summary) []siteJSON {
	list := []siteJSON{}
	for i := range s.Sites {
		list = append(list, siteOf(&s.Sites[i], s))
	}
	return list
}

func siteOf(site *result.Site, s *result.Summary) siteJSON {
	return siteJSON{
		Name: site.Name, Alternate: site.Alternate,
		WaterDepth: number(site.WaterDepth), Target: number(site.Target),
		Days: daysOf(site.Days), Waiting: daysOf(site.Waiting),
		Arrives: daysOf(site.Arrives), Leaves: daysOf(site.Leaves),
		ArrivesOn: datesOf(s.Sails, site.Arrives), LeavesOn: datesOf(s.Sails, site.Leaves),
		ChanceReached: number(site.ChanceReached), ChanceComplete: number(site.ChanceComplete),
		Cored: spreadOf(site.Cored), Recovered: spreadOf(site.Recovered), Percent: spreadOf(site.Percent),
		Cores: spreadOf(site.Cores), Coverage: spreadOf(site.Coverage), Holes: holesOf(site.Holes),
	}
}

func holesOf(holes []result.Hole) []holeJSON {
	list := []holeJSON{}
	for _, h := range holes {
		list = append(list, holeJSON{h.Name, h.Task, h.Rank, daysOf(h.Days), spreadOf(h.Depth), spreadOf(h.Refusal),
			number(h.ChanceRefused), spreadOf(h.Cored), spreadOf(h.Recovered), spreadOf(h.Percent), spreadOf(h.Covered),
			number(h.ChanceDone), number(h.ChanceNotCalled), number(h.ChanceDropped), h.Conditional})
	}
	return list
}
