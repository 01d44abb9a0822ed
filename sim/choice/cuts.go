package choice

import (
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/statistics"
)

// moreDays are the days whose worth is given, beside the sea days.
var moreDays = []float64{-2, -1, 1, 2}

// Cuts is the trial of the plan, the plan without each of the things that can be cut from it, and the plan
// with some days more or less.
func Cuts(v *voyage.Voyage) (*Trial, error) {
	cuts := v.Plan.Cuts()
	alternatives := []Alternative{{"as planned", v}}
	for _, cut := range cuts {
		rest, err := voyage.Compile(cut.Plan)
		if err != nil {
			return nil, err
		}
		alternatives = append(alternatives, Alternative{nameOfCut(cut), rest})
	}
	for _, d := range moreDays {
		if days := v.Plan.SeaDays + unit.Duration(d)*unit.Day; days > 0 {
			alternatives = append(alternatives, Alternative{"", v.WithDays(days)})
		}
	}
	return &Trial{alternatives, func(sailed []sailedAlternative, run sim.Run, stopped bool) *result.Comparison {
		c := compared(sailed[:min(1, len(sailed))], run, stopped, 1-confidence)
		c.Question = result.WhatToCut
		if len(sailed) > 0 {
			weigh(c, sailed, cuts)
		}
		return c
	}}, nil
}

// CutAlternatives is how many alternatives the trial of cuts has.
func CutAlternatives(v *voyage.Voyage) int { return 1 + len(v.Plan.Cuts()) + len(moreDays) }

func nameOfCut(cut plan.Cut) string {
	if cut.What == "" {
		return "without " + cut.Site
	}
	return "without " + cut.Site + " " + cut.What
}

// weigh holds what was sailed against the plan, which was sailed first.
func weigh(c *result.Comparison, sailed []sailedAlternative, cuts []plan.Cut) {
	planned := &sailed[0]
	for i := range sailed[1:] {
		s := &sailed[1+i]
		if i < len(cuts) {
			c.Cuts = append(c.Cuts, weighCut(planned, s, cuts[i]))
			d := difference(planned.outcomes, s.outcomes)
			d.A, d.B = 0, len(c.Alternatives)
			c.Alternatives, c.Differences = append(c.Alternatives, alternativeOf(s)), append(c.Differences, d)
		} else {
			c.Days = append(c.Days, worthOfDays(planned, s))
		}
	}
}

// weighCut is what a cut saves and costs.
func weighCut(planned, rest *sailedAlternative, cut plan.Cut) result.Cut {
	saved := make([]float64, len(rest.outcomes))
	for n := range saved {
		saved[n] = planned.outcomes[n][daysNeeded] - rest.outcomes[n][daysNeeded]
	}
	t := oneInterval(len(saved))
	return result.Cut{
		Cut:         cut,
		Alternative: rest.summary,
		Saves:       statistics.Summarise(saved),
		Metres:      pair(planned.outcomes, rest.outcomes, metresWhole).interval(t),
		Within:      pair(planned.outcomes, rest.outcomes, metresWithin).interval(t),
		Section:     sectionLess(planned.summary, rest.summary, cut.Site),
		First:       discord(rest.outcomes, planned.outcomes, rankOneDone).score(tailOfOneInterval),
		All:         discord(rest.outcomes, planned.outcomes, allDone).score(tailOfOneInterval),
	}
}

// sectionLess is the share of a site's section, as deep as it is planned, that is recovered no more.
func sectionLess(planned, rest *result.Summary, site string) float64 {
	before, deep := section(planned, site)
	after, _ := section(rest, site)
	if deep == 0 {
		return 0
	}
	return (before - after) / deep
}

// section is the mean length of a site's section that is recovered, and how deep it goes, m; 0 where the
// site is not visited.
func section(s *result.Summary, site string) (recovered, deep float64) {
	for i := range s.Sites {
		if s.Sites[i].Name == site {
			deep = float64(s.Sites[i].Target)
			return s.Sites[i].Coverage.Mean * deep, deep
		}
	}
	return 0, 0
}

// worthOfDays is what other sea days bring.
func worthOfDays(planned, other *sailedAlternative) result.DayMore {
	more := func(figure int) result.Interval {
		return discord(other.outcomes, planned.outcomes, figure).score(tailOfOneInterval)
	}
	a := &other.summary.Allotted
	return result.DayMore{
		Days:  (other.Voyage.Deadline - planned.Voyage.Deadline) / day,
		First: a.ChancePrimary, All: a.ChanceAll, FirstMore: more(rankOneDone), AllMore: more(allDone),
		Metres: a.Recovered.Mean, MetresMore: pair(other.outcomes, planned.outcomes, metresWithin).interval(oneInterval(len(other.outcomes))), InHand: a.InHand,
	}
}
