package sim

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/coring"
	"coredays/model/logbook"
	"coredays/model/unit"
)

// Summary describes the results.
func (r *Results) Summary() *logbook.Summary {
	v := r.columns.voyage
	s := &logbook.Summary{
		Scenario:     v.Plan.Title,
		File:         v.Plan.File,
		Ship:         v.Plan.Ship.Name,
		Seed:         r.seed,
		Replications: len(r.column(r.bound, colDays)),
		StoppedEarly: r.Stopped,
		Sails:        v.Plan.Sails,
		InPort:       summarise(r.column(r.bound, colInPort)),
		Needed:       r.whole(),
		Allotted:     r.allotted(),
		Recovery:     r.recovery(),
		Deck:         logbook.Deck{MostCores: summarise(r.column(r.needed, colMostCores)), Behind: summarise(r.column(r.needed, colBehind))},
		Drivers:      r.drivers(),
		Consumables:  r.consumables(),
	}
	for _, n := range v.Plan.Order {
		s.Sites = append(s.Sites, r.site(n))
	}
	s.Warnings = append(slices.Clone(v.Plan.Warnings), r.warnings(s)...)
	return s
}

// whole summarises the whole programme without a deadline.
func (r *Results) whole() logbook.Needed {
	n := logbook.Needed{Total: summarise(r.column(r.needed, colDays))}
	for c := range n.ByClass {
		n.ByClass[c] = summarise(r.column(r.needed, colClass+c))
	}
	return n
}

// allotted summarises what gets done within the days.
func (r *Results) allotted() logbook.Allotted {
	inHand := r.column(r.bound, colInHand)
	return logbook.Allotted{
		SeaDays:       r.columns.voyage.Plan.SeaDays,
		ChanceAll:     mean(r.column(r.bound, colAll)),
		ChancePrimary: mean(r.column(r.bound, colFirst)),
		InHand:        summarise(inHand),
		Recovered:     summarise(r.total(r.bound, siteRecovered)),
		Late:          share(inHand, func(left float64) bool { return left < 0 }),
	}
}

// total is a column added up over all sites.
func (r *Results) total(rows []float64, column int) []float64 {
	sum := make([]float64, len(r.column(rows, colDays)))
	for site := range r.columns.voyage.Sites {
		for i, x := range r.column(rows, r.columns.site(site, column)) {
			if !math.IsNaN(x) {
				sum[i] += x
			}
		}
	}
	return sum
}

// recovery summarises what the whole programme brings up.
func (r *Results) recovery() logbook.Recovery {
	cored, recovered := r.total(r.needed, siteCored), r.total(r.needed, siteRecovered)
	rec := logbook.Recovery{
		Cored:     summarise(cored),
		Recovered: summarise(recovered),
		Percent:   summarise(percent(recovered, cored)),
		Cores:     summarise(r.total(r.needed, siteCores)),
	}
	for t := range coring.Tools {
		c := colTool + 3*int(t)
		cores, cored, recovered := r.column(r.needed, c), r.column(r.needed, c+1), r.column(r.needed, c+2)
		rec.ByTool[t] = logbook.ToolRecovery{Cores: summarise(cores), Cored: summarise(cored), Recovered: summarise(recovered),
			Percent: summarise(percent(recovered, cored))}
	}
	return rec
}

// site summarises a site: an alternate over the expeditions that reached it, a primary site over
// the whole programme.
func (r *Results) site(n int) logbook.Site {
	site := &r.columns.voyage.Sites[n]
	rows := r.needed
	if site.Alternate {
		rows = r.bound
	}
	of := func(column int) []float64 { return r.column(rows, r.columns.site(n, column)) }
	chance := func(column int) float64 { return mean(r.column(r.bound, r.columns.site(n, column))) }
	arrived, left := of(siteArrived), of(siteLeft)
	return logbook.Site{
		Name:           site.Name,
		Alternate:      site.Alternate,
		WaterDepth:     site.WaterDepth,
		Target:         unit.Depth(site.Section),
		Days:           summarise(each(left, arrived, func(l, a float64) float64 { return l - a })),
		Waiting:        summarise(of(siteWaited)),
		Arrives:        summarise(arrived),
		Leaves:         summarise(left),
		ChanceReached:  chance(siteReached),
		ChanceComplete: chance(siteComplete),
		Cored:          summarise(of(siteCored)),
		Recovered:      summarise(of(siteRecovered)),
		Percent:        summarise(percent(of(siteRecovered), of(siteCored))),
		Cores:          summarise(of(siteCores)),
		Coverage:       summarise(of(siteCovered)),
		Holes:          r.holes(n, rows),
	}
}

// holes summarises the items of a site.
func (r *Results) holes(n int, rows []float64) []logbook.Hole {
	var holes []logbook.Hole
	for _, item := range r.columns.voyage.Sites[n].Items {
		of := func(column int) []float64 { return r.column(rows, r.columns.item(item.Number, column)) }
		refused := of(itemRefused)
		done, notCalled := r.column(r.bound, r.columns.item(item.Number, itemDone)), r.column(r.bound, r.columns.item(item.Number, itemNotCalled))
		h := logbook.Hole{
			Name:            item.Name,
			Task:            item.Task != nil,
			Rank:            item.Rank,
			Conditional:     item.When != nil,
			Days:            summarise(of(itemTook)),
			Refusal:         summarise(refused),
			ChanceRefused:   share(refused, func(x float64) bool { return !math.IsNaN(x) }),
			ChanceDone:      mean(done),
			ChanceNotCalled: mean(notCalled),
			ChanceDropped:   mean(each(done, notCalled, func(d, n float64) float64 { return 1 - d - n })),
		}
		if !h.Task {
			h.Depth = summarise(of(itemDepth))
			h.Covered = summarise(of(itemCovered))
			h.Cored, h.Recovered = summarise(of(itemCored)), summarise(of(itemRecovered))
			h.Percent = summarise(percent(of(itemRecovered), of(itemCored)))
		}
		holes = append(holes, h)
	}
	return holes
}

// consumables is what is used up, at the even value and the 9-in-10 value.
func (r *Results) consumables() []logbook.Consumable {
	var list []logbook.Consumable
	for t := range usedThings {
		if s := summarise(r.column(r.needed, colUsed+int(t))); s.P90 > 0 {
			list = append(list, logbook.Consumable{Item: t.String(), P50: math.Ceil(s.P50), P90: math.Ceil(s.P90)})
		}
	}
	return list
}

// inPercent is a share in percent, to two figures.
func inPercent(share float64) string {
	if share > 0.995 {
		return "100"
	}
	return fmt.Sprintf("%.2g", 100*share)
}

// warnings tells what is weak in the results.
func (r *Results) warnings(s *logbook.Summary) []string {
	var w []string
	if never := share(r.column(r.needed, colNever), func(x float64) bool { return x > 0 }); never > 0 {
		w = append(w, fmt.Sprintf("In %s %% of the replications the programme never ended: the sea was above a limit, or a layer too hard, for %g times the sea days. Their days count as they stood then.", inPercent(never), float64(mostTimes)))
	}
	if s.Replications < 100 && s.Needed.Total.SD > 0 {
		w = append(w, fmt.Sprintf("%d replications are too few for P10 and P90: take 1000 or more.", s.Replications))
	}
	if s.StoppedEarly {
		w = append(w, fmt.Sprintf("Stopped early after %d replications.", s.Replications))
	}
	if s.Allotted.Late > 0.01 {
		why := "the way home took longer than the crew had reckoned"
		if s.Allotted.Late > 0.5 {
			why = "they are too few for the passages"
		}
		w = append(w, fmt.Sprintf("In %s %% of the expeditions port is reached after the sea days: %s.", inPercent(s.Allotted.Late), why))
	}
	return w
}
