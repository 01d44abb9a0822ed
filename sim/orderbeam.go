package sim

import (
	"cmp"
	"context"
	"slices"

	"coredays/model/voyage"
)

// widestBeam is how many beginnings of orders of one length are followed up. Up to eight primary
// sites that is all of them; of more, those with the least days reckoned so far and at the least to
// come.
const widestBeam = 50_000

// begun is the beginning of an order, reckoned by the visit book.
type begun struct {
	order  []int
	free   []float32 // s after sailing, by replication: everything done
	bound  []float32 // s after sailing, by replication: what is of lower rank left out when time is short
	failed []bool    // by replication: something of the first rank was not done
	score  float64   // s: mean so far, and at least to come
}

// reckonedOrder is a whole order as reckoned.
type reckonedOrder struct {
	order []int
	merits
}

// reckonOrders reckons the orders of the primary sites, and tells how many it got to the end of and
// whether beginnings were dropped.
func (b *visitBook) reckonOrders(ctx context.Context, rules orderRules, width int) (list []reckonedOrder, dropped bool) {
	beam := []begun{{free: b.start(), bound: b.start(), failed: make([]bool, b.replications)}}
	for range rules.primary {
		var next []begun
		for i := range beam {
			if ctx.Err() != nil {
				return nil, false
			}
			next = b.extend(next, &beam[i], rules)
		}
		if len(next) > width {
			slices.SortStableFunc(next, func(x, y begun) int { return cmp.Compare(x.score, y.score) })
			next, dropped = next[:width], true
		}
		beam = next
	}
	for i := range beam {
		list = append(list, reckonedOrder{beam[i].order, b.brought(&beam[i])})
	}
	return list, dropped
}

// start is the end of the pilotage of the first port.
func (b *visitBook) start() []float32 {
	at := make([]float32, b.replications)
	for r := range at {
		at[r] = float32(b.pilotage())
	}
	return at
}

// extend adds a beginning with each site that may come next.
func (b *visitBook) extend(list []begun, x *begun, rules orderRules) []begun {
	toCome := slices.DeleteFunc(slices.Clone(rules.primary), func(n int) bool { return slices.Contains(x.order, n) })
	for _, site := range toCome {
		if rules.may(site, toCome) {
			rest := slices.DeleteFunc(slices.Clone(toCome), func(n int) bool { return n == site })
			list = append(list, b.visit(x, site, rest))
		}
	}
	return list
}

// visit goes on to a site in every replication.
func (b *visitBook) visit(x *begun, site int, rest []int) begun {
	from := voyage.FromPort
	if n := len(x.order); n > 0 {
		from = voyage.SitePlace(x.order[n-1])
	}
	y := begun{order: append(slices.Clone(x.order), site), free: make([]float32, b.replications),
		bound: make([]float32, b.replications), failed: slices.Clone(x.failed)}
	way, reserve := b.legs[from][voyage.SitePlace(site)], b.reserve(site, rest)
	for r := range b.replications {
		at := float64(x.free[r]) + way
		at += b.takes(b.whole, site, r, at)
		y.free[r] = float32(at)
		y.score += at / float64(b.replications)
		left, done := b.within(site, r, float64(x.bound[r])+way, reserve)
		y.bound[r] = float32(left)
		y.failed[r] = y.failed[r] || !done
	}
	for _, n := range rest {
		y.score += b.leastLeg[n] + b.leastVisit[n]
	}
	return y
}

// within reckons a visit under the rules of the expedition: when the ship leaves, and whether all
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
		sum += b.estimate[n] + b.leastLeg[n]*contingency + b.home[n]/float64(len(rest))
	}
	return sum
}

// brought home, a reckoned order has its merits.
func (b *visitBook) brought(x *begun) (m merits) {
	home := b.legs[voyage.SitePlace(x.order[len(x.order)-1])][voyage.ToPort] + b.pilotage()
	for r := range b.replications {
		m.days += (float64(x.free[r]) + home) / float64(b.replications)
		if !x.failed[r] {
			m.first += 1 / float64(b.replications)
		}
	}
	return m
}
