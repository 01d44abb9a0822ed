package choice

import (
	"context"
	"math"

	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim"
	"coredays/sim/ship"
)

// visitBook says how long each site takes when the ship comes there on each day, in a few
// replications. What a visit takes hangs on the replication and the date, and hardly on where the
// ship was before, so adding up entries estimates any order of the sites in next to no time. It
// leaves out what little is carried from site to site: pipe already measured, the age of the
// drilling line, what the crew has learned. Orders that look well are sailed.
type visitBook struct {
	v            *voyage.Voyage
	replications int
	days         int
	whole, first [][]float32 // s, by site: all there is to do, and what is of the first rank
	legs         [][]float64 // s, from place to place
	leastLeg     []float64   // s, by site: the shortest way there
	leastVisit   []float64   // s, by site: the shortest mean over the days
	estimate     []float64   // s, by site: the crew's of the first rank
	home         []float64   // s, by site: the crew's of the way home
}

const day = 86400.0 // s

// newVisitBook is the book without its entries.
func newVisitBook(v *voyage.Voyage, replications int) *visitBook {
	crew := sim.EstimateByCrew(v)
	b := &visitBook{v: v, replications: replications, days: lastDay(v, crew)}
	b.whole, b.first = make([][]float32, len(v.Sites)), make([][]float32, len(v.Sites))
	for n := range v.Sites {
		b.whole[n], b.first[n] = make([]float32, replications*b.days), make([]float32, replications*b.days)
		b.estimate = append(b.estimate, firstRank(v, n, crew))
		b.home = append(b.home, crew.Leg[voyage.SitePlace(n)][voyage.ToPort]*ship.Contingency+v.Quantities[rig.Pilotage].Median)
	}
	b.legs = sim.Passages(v)
	return b
}

// lastDay is the day after sailing after which nothing is begun any more, even in the worst sea.
func lastDay(v *voyage.Voyage, crew *ship.CrewEstimates) int {
	longest := v.Deadline
	var calm float64
	for _, t := range crew.Item {
		calm += t
	}
	return 2 + int(max(longest, 1.6*calm)/day)
}

// firstRank is the crew's estimate of what is of the first rank at a site.
func firstRank(v *voyage.Voyage, site int, crew *ship.CrewEstimates) (sum float64) {
	for i := range v.Sites[site].Items {
		if item := &v.Sites[site].Items[i]; item.Rank <= 1 {
			sum += crew.Item[item.Number]
		}
	}
	return sum
}

// fill sails every visit on every day of the replications from one number to before another.
func (b *visitBook) fill(ctx context.Context, seed uint64, processors, from, to int) {
	workers.Share(ctx, processors, from, to, func() func(int) {
		visitor := sim.NewVisitor(ctx, b.v)
		return func(n int) { b.replicate(visitor, seed, n) }
	})
}

// entries are those of some replications in a row: by replication, by site, all of the whole visit and of the first
// rank.
func (b *visitBook) entries(from, to int) (row []float32) {
	b.pages(from, to, func(page []float32) { row = append(row, page...) })
	return row
}

// enter fills in what entries gave.
func (b *visitBook) enter(from, to int, row []float32) {
	b.pages(from, to, func(page []float32) { row = row[copy(page, row):] })
}

// pages goes through the pages of some replications.
func (b *visitBook) pages(from, to int, do func(page []float32)) {
	for n := from; n < to; n++ {
		for site := range b.whole {
			do(b.whole[site][n*b.days : (n+1)*b.days])
			do(b.first[site][n*b.days : (n+1)*b.days])
		}
	}
}

// replicate fills the pages of one replication.
func (b *visitBook) replicate(visitor *sim.Visitor, seed uint64, n int) {
	visitor.Meets(seed, n)
	for site := range b.v.Sites {
		if b.v.Sites[site].Alternate {
			continue
		}
		for d := range b.days {
			whole, first := visitor.Visit(site, float64(d)*day)
			b.whole[site][n*b.days+d], b.first[site][n*b.days+d] = float32(whole), float32(first)
		}
	}
}

// bounds works out the least times.
func (b *visitBook) bounds() {
	for n := range b.v.Sites {
		least, visit := math.Inf(1), math.Inf(1)
		for from := range b.legs {
			if from != int(voyage.ToPort) && from != int(voyage.SitePlace(n)) {
				least = min(least, b.legs[from][voyage.SitePlace(n)])
			}
		}
		for d := range b.days {
			var sum float64
			for r := range b.replications {
				sum += float64(b.whole[n][r*b.days+d])
			}
			visit = min(visit, sum/float64(b.replications))
		}
		b.leastLeg, b.leastVisit = append(b.leastLeg, least), append(b.leastVisit, visit)
	}
}

// takes is an entry of a page at a moment, between two days in proportion.
func (b *visitBook) takes(page [][]float32, site, replication int, at float64) float64 {
	d := min(at/day, float64(b.days-1))
	i := min(int(d), b.days-2)
	row := page[site][replication*b.days:]
	f := d - float64(i)
	return (1-f)*float64(row[i]) + f*float64(row[i+1])
}

// pilotage in and out of a port, s.
func (b *visitBook) pilotage() float64 { return b.v.Quantities[rig.Pilotage].Median }
