package choice

import (
	"cmp"
	"context"
	"slices"

	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim/ship"
)

// widestBeam is how many beginnings of orders of one length are followed up. Up to eight primary
// sites that is all of them; of more, those with the least days estimated so far and at the least to
// come.
const widestBeam = 50_000

// beam holds beginnings of orders, all of one length, estimated by the visit book. What is known of a
// beginning by replication stands in rows one after the other, so that two beams serve a whole search in
// turn and leave no garbage.
type beam struct {
	orders [][]int
	free   []float32 // s after sailing, by beginning and replication: everything done
	bound  []float32 // s after sailing, the same: what is of lower rank left out when time is short
	failed []bool    // the same: something of the first rank was not done
}

// hold makes room for beginnings.
func (m *beam) hold(beginnings, replications int) {
	n := beginnings * replications
	m.orders = make([][]int, beginnings)
	if cap(m.free) < n {
		m.free, m.bound, m.failed = make([]float32, n), make([]float32, n), make([]bool, n)
	}
	m.free, m.bound, m.failed = m.free[:n], m.bound[:n], m.failed[:n]
}

// step is a beginning of an order with one more site.
type step struct {
	from  int // index of the beginning
	site  int
	score float64 // s: mean so far, and at least to come
}

// estimatedOrder is a whole order as estimated.
type estimatedOrder struct {
	order []int
	merits
}

// estimateOrders estimates the orders of the primary sites, and says how many it got to the end of and
// whether beginnings were dropped.
func (b *visitBook) estimateOrders(ctx context.Context, rules orderRules, width, processors int) (list []estimatedOrder, dropped bool) {
	now, next := b.start(), &beam{}
	for range rules.primary {
		steps := rules.steps(now.orders)
		if len(steps) > width {
			b.score(ctx, now, steps, rules.primary, processors)
			slices.SortFunc(steps, step.compare)
			steps, dropped = steps[:width], true
		}
		next.hold(len(steps), b.replications)
		workers.Share(ctx, processors, 0, len(steps), func() func(int) {
			return func(i int) { b.visit(next, i, now, steps[i], rules.primary) }
		})
		if ctx.Err() != nil {
			return nil, false
		}
		now, next = next, now
	}
	for i, order := range now.orders {
		list = append(list, estimatedOrder{order, b.brought(now, i)})
	}
	return list, dropped
}

// start is the end of the pilotage of the first port.
func (b *visitBook) start() *beam {
	m := &beam{}
	m.hold(1, b.replications)
	for r := range b.replications {
		m.free[r], m.bound[r], m.failed[r] = float32(b.pilotage()), float32(b.pilotage()), false
	}
	return m
}

// steps lists all ways to go on from beginnings of orders.
func (r orderRules) steps(orders [][]int) (list []step) {
	for i, order := range orders {
		toCome := without(r.primary, order)
		for _, site := range toCome {
			if r.may(site, toCome) {
				list = append(list, step{from: i, site: site})
			}
		}
	}
	return list
}

// without are the sites that are not in a list.
func without(sites, list []int) []int {
	return slices.DeleteFunc(slices.Clone(sites), func(n int) bool { return slices.Contains(list, n) })
}

// compare puts the step with the least days first.
func (x step) compare(y step) int {
	return cmp.Or(cmp.Compare(x.score, y.score), cmp.Compare(x.from, y.from), cmp.Compare(x.site, y.site))
}

// score estimates the days of steps, without keeping what they are by replication.
func (b *visitBook) score(ctx context.Context, now *beam, steps []step, primary []int, processors int) {
	workers.Share(ctx, processors, 0, len(steps), func() func(int) {
		return func(i int) {
			x := &steps[i]
			order := now.orders[x.from]
			way := b.way(order, x.site)
			for r := range b.replications {
				x.score += b.leaves(x.site, r, float64(now.free[x.from*b.replications+r])+way) / float64(b.replications)
			}
			for _, n := range primary {
				if n != x.site && !slices.Contains(order, n) {
					x.score += b.leastLeg[n] + b.leastVisit[n]
				}
			}
		}
	})
}

// way is the passage to a site from the end of a beginning, s.
func (b *visitBook) way(order []int, site int) float64 {
	from := voyage.FromPort
	if n := len(order); n > 0 {
		from = voyage.SitePlace(order[n-1])
	}
	return b.legs[from][voyage.SitePlace(site)]
}

// leaves is when the ship leaves a site at which everything is done, s after sailing.
func (b *visitBook) leaves(site, replication int, at float64) float64 {
	return at + b.takes(b.whole, site, replication, at)
}

// visit goes on to a site in every replication.
func (b *visitBook) visit(next *beam, i int, now *beam, x step, primary []int) {
	order := append(slices.Clone(now.orders[x.from]), x.site)
	next.orders[i] = order
	way, reserve := b.way(order[:len(order)-1], x.site), b.reserve(x.site, without(primary, order))
	from, to := x.from*b.replications, i*b.replications
	for r := range b.replications {
		next.free[to+r] = float32(b.leaves(x.site, r, float64(now.free[from+r])+way))
		left, done := b.within(x.site, r, float64(now.bound[from+r])+way, reserve)
		next.bound[to+r] = float32(left)
		next.failed[to+r] = now.failed[from+r] || !done
	}
}

// within estimates a visit under the rules of the expedition: when the ship leaves, and whether all
// of the first rank was done.
func (b *visitBook) within(site, replication int, at, reserve float64) (left float64, done bool) {
	whole, first := b.takes(b.whole, site, replication, at), b.takes(b.first, site, replication, at)
	last := b.v.Deadline - b.home[site] - at // time there is, home not forgotten
	if limit := float64(b.v.Sites[site].Cap); limit > 0 {
		last = min(last, limit)
	}
	takes := min(whole, max(first, b.v.Deadline-at-reserve))
	return at + max(0, min(takes, last)), first <= last
}

// reserve is the crew's estimate of what is of the first rank at sites to come, with the shortest
// ways there, and home.
func (b *visitBook) reserve(site int, rest []int) (sum float64) {
	if len(rest) == 0 {
		return b.home[site]
	}
	for _, n := range rest {
		sum += b.estimate[n] + b.leastLeg[n]*ship.Contingency + b.home[n]/float64(len(rest))
	}
	return sum
}

// brought home, an estimated order has its merits.
func (b *visitBook) brought(now *beam, i int) (m merits) {
	order := now.orders[i]
	home := b.legs[voyage.SitePlace(order[len(order)-1])][voyage.ToPort] + b.pilotage()
	for r := i * b.replications; r < (i+1)*b.replications; r++ {
		m.days += (float64(now.free[r]) + home) / float64(b.replications)
		if !now.failed[r] {
			m.first += 1 / float64(b.replications)
		}
	}
	return m
}
