package statistics

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/coring"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// Summary describes the results.
func (r *Results) Summary() *result.Summary {
	v := r.Layout.Voyage
	s := &result.Summary{
		Scenario:     v.Plan.Title,
		File:         v.Plan.File,
		Ship:         v.Plan.Ship.Name,
		Seed:         r.Seed,
		Replications: len(r.Column(r.Constrained, ColDays)),
		StoppedEarly: r.Stopped,
		Sails:        v.Plan.Sails,
		InPort:       r.spread(r.Constrained, ColInPort),
		Needed:       r.whole(),
		Allotted:     r.allotted(),
		Recovery:     r.recovery(),
		Deck:         result.Deck{MostCores: r.spread(r.Unconstrained, ColMostCores), Behind: r.spread(r.Unconstrained, ColBehind)},
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
func (r *Results) whole() result.Needed {
	days, allotted := r.Column(r.Unconstrained, ColDays), float64(r.Layout.Voyage.Plan.SeaDays)
	n := result.Needed{Total: r.spread(r.Unconstrained, ColDays), Fits: share(days, func(x float64) bool { return x <= allotted })}
	for c := range n.ByClass {
		n.ByClass[c] = r.spread(r.Unconstrained, ColClass+c)
	}
	return n
}

// allotted summarises what gets done within the days.
func (r *Results) allotted() result.Allotted {
	inHand := r.Column(r.Constrained, ColInHand)
	return result.Allotted{
		SeaDays:       r.Layout.Voyage.Plan.SeaDays,
		ChanceAll:     mean(r.Column(r.Constrained, ColAll)),
		ChancePrimary: mean(r.Column(r.Constrained, ColFirst)),
		InHand:        Summarise(inHand),
		Recovered:     takingOver(r.total(r.Constrained, SiteRecovered)),
		OfPrimary:     takingOver(r.totalOf(r.Constrained, SiteRecovered, func(s *voyage.Site) bool { return !s.Alternate })),
		OfAlternates:  takingOver(r.totalOf(r.Constrained, SiteRecovered, func(s *voyage.Site) bool { return s.Alternate })),
		Late:          share(inHand, func(left float64) bool { return left < 0 }),
	}
}

// total is a column added up over all sites.
func (r *Results) total(rows []float64, column int) []float64 {
	return r.totalOf(rows, column, func(*voyage.Site) bool { return true })
}

// totalOf is a column added up over some of the sites.
func (r *Results) totalOf(rows []float64, column int, counts func(*voyage.Site) bool) []float64 {
	sum := make([]float64, len(r.Column(rows, ColDays)))
	for site := range r.Layout.Voyage.Sites {
		if !counts(&r.Layout.Voyage.Sites[site]) {
			continue
		}
		for i, x := range r.Column(rows, r.Layout.Site(site, column)) {
			if !math.IsNaN(x) {
				sum[i] += x
			}
		}
	}
	return sum
}

// recovery summarises what the whole programme brings up.
func (r *Results) recovery() result.Recovery {
	cored, recovered := r.total(r.Unconstrained, SiteCored), r.total(r.Unconstrained, SiteRecovered)
	rec := result.Recovery{
		Cored:     Summarise(cored),
		Recovered: Summarise(recovered),
		Percent:   takingOver(percent(recovered, cored)),
		Cores:     takingOver(r.total(r.Unconstrained, SiteCores)),
	}
	for t := range coring.Tools {
		c := ColTool + 3*int(t)
		cores, cored, recovered := r.Column(r.Unconstrained, c), r.Column(r.Unconstrained, c+1), r.Column(r.Unconstrained, c+2)
		rec.ByTool[t] = result.ToolRecovery{Cores: Summarise(cores), Cored: Summarise(cored), Recovered: Summarise(recovered),
			Percent: takingOver(percent(recovered, cored))}
	}
	return rec
}

// site summarises a site: an alternate over the expeditions that reached it, a primary site over
// the whole programme.
func (r *Results) site(n int) result.Site {
	site := &r.Layout.Voyage.Sites[n]
	rows := r.Unconstrained
	if site.Alternate {
		rows = r.Constrained
	}
	of := func(column int) []float64 { return r.Column(rows, r.Layout.Site(n, column)) }
	chance := func(column int) float64 { return mean(r.Column(r.Constrained, r.Layout.Site(n, column))) }
	spread := func(column int) result.Spread { return r.spread(rows, r.Layout.Site(n, column)) }
	return result.Site{
		Name:           site.Name,
		Alternate:      site.Alternate,
		WaterDepth:     site.WaterDepth,
		Target:         unit.Depth(site.Section),
		Cap:            site.Cap,
		Days:           takingOver(each(of(SiteLeft), of(SiteArrived), func(l, a float64) float64 { return l - a })),
		Waiting:        spread(SiteWaited),
		Arrives:        spread(SiteArrived),
		Leaves:         spread(SiteLeft),
		ChanceReached:  chance(SiteReached),
		ChanceComplete: chance(SiteComplete),
		Cored:          spread(SiteCored),
		Recovered:      spread(SiteRecovered),
		Percent:        takingOver(percent(of(SiteRecovered), of(SiteCored))),
		Cores:          spread(SiteCores),
		Coverage:       spread(SiteCovered),
		Holes:          r.holes(n, rows),
	}
}

// holes summarises the items of a site.
func (r *Results) holes(n int, rows []float64) []result.Hole {
	var holes []result.Hole
	for _, item := range r.Layout.Voyage.Sites[n].Items {
		of := func(column int) []float64 { return r.Column(rows, r.Layout.Item(item.Number, column)) }
		spread := func(column int) result.Spread { return r.spread(rows, r.Layout.Item(item.Number, column)) }
		refused := of(ItemRefused)
		done, notCalled := r.Column(r.Constrained, r.Layout.Item(item.Number, ItemDone)), r.Column(r.Constrained, r.Layout.Item(item.Number, ItemNotCalled))
		h := result.Hole{
			Name:            item.Name,
			Task:            item.Task != nil,
			Rank:            item.Rank,
			Conditional:     item.When != nil,
			Days:            spread(ItemTook),
			Refusal:         Summarise(refused),
			ChanceRefused:   share(refused, func(x float64) bool { return !math.IsNaN(x) }),
			ChanceDone:      mean(done),
			ChanceNotCalled: mean(notCalled),
			ChanceDropped:   mean(each(done, notCalled, func(d, n float64) float64 { return 1 - d - n })),
		}
		if !h.Task {
			h.Depth = spread(ItemDepth)
			h.Covered = spread(ItemCovered)
			h.Cored, h.Recovered = spread(ItemCored), spread(ItemRecovered)
			h.Percent = takingOver(percent(of(ItemRecovered), of(ItemCored)))
		}
		holes = append(holes, h)
	}
	return holes
}

// consumables is what is used up, at the median and the P90 value.
func (r *Results) consumables() []result.Consumable {
	var list []result.Consumable
	for t := range Consumables {
		if s := r.spread(r.Unconstrained, ColUsed+int(t)); s.P90 > 0 {
			list = append(list, result.Consumable{Item: t.String(), P50: math.Ceil(s.P50), P90: math.Ceil(s.P90)})
		}
	}
	return list
}

// inPercent is a share in whole per cent, rounded as the tables of the answer round it: only all is 100.
func inPercent(share float64) string {
	switch {
	case share > 0.99 && share < 1:
		return ">99"
	case share > 0 && share < 0.01:
		return "<1"
	}
	return fmt.Sprintf("%.0f", math.Round(100*share))
}

// warnings says what is weak in the results.
func (r *Results) warnings(s *result.Summary) []string {
	var w []string
	if never := share(r.Column(r.Unconstrained, ColNever), func(x float64) bool { return x > 0 }); never > 0 {
		w = append(w, fmt.Sprintf("In %s %% of the replications the programme never ended: the sea was above a limit, or a layer too hard, for %g times the sea days. Their days count as they stood then.", inPercent(never), float64(MostTimes)))
	}
	if s.Replications < 100 && s.Needed.Total.SD > 0 {
		w = append(w, fmt.Sprintf("%d replications are too few for P10 and P90: take 1000 or more.", s.Replications))
	}
	if s.StoppedEarly {
		w = append(w, fmt.Sprintf("Stopped early after %d replications.", s.Replications))
	}
	if s.Allotted.Late > 0.01 {
		why := "the way home took longer than the crew had estimated"
		if s.Allotted.Late > 0.5 {
			why = "they are too few for the passages"
		}
		w = append(w, fmt.Sprintf("In %s %% of the expeditions port is reached after the sea days: %s.", inPercent(s.Allotted.Late), why))
	}
	return w
}
