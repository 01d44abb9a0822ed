package sim

import (
	"math"

	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// balances looks at the books of a ship that is home or was given up.
func (w *watch) balances() {
	var sum float64
	for _, x := range w.spent {
		sum += x
	}
	if math.Abs(sum-w.clock) > 1e-2 {
		w.wrong("the activities add up to %g s of %g", sum, w.clock)
	}
	if w.home == w.stuck {
		w.wrong("home %v, given up %v", w.home, w.stuck)
	}
	if w.stuck && w.clock < w.longest() {
		w.wrong("given up after %.1f d of %.1f", w.clock/86400, w.longest()/86400)
	}
	if w.home && (w.bit != 0 || w.here != nil) {
		w.wrong("home with the bit at %g m", w.bit)
	}
	for n := range w.sites {
		w.siteBalances(n)
	}
}

// siteBalances looks at the books of a site.
func (w *watch) siteBalances(n int) {
	site, log := &w.v.Sites[n], &w.sites[n]
	var took float64
	begun := false
	for i := range site.Items {
		item := &site.Items[i]
		took += w.items[item.Number].took
		begun = begun || w.items[item.Number].began > 0
		w.itemBalances(site.Name+" "+item.Name, item)
	}
	if log.state == underWay {
		w.wrong("%s was never left", site.Name)
	}
	if log.state != done {
		return
	}
	days := log.left - log.arrived
	if log.waited < -1e-6 || log.waited > days+1e-3 {
		w.wrong("%s: waited %g s of %g", site.Name, log.waited, days)
	}
	if took > days+1e-3 || begun && !w.stuck && took < days-1e-3 {
		w.wrong("%s: the items took %g s of %g", site.Name, took, days)
	}
	if !begun && !w.slow[voyage.SitePlace(n)] {
		w.wrong("%s was visited for nothing", site.Name)
	}
}

// itemBalances looks at the books of a hole or task.
func (w *watch) itemBalances(name string, item *voyage.Item) {
	log := &w.items[item.Number]
	if log.state == underWay && !w.stuck || log.took < 0 {
		w.wrong("%s: state %d, took %g s", name, log.state, log.took)
	}
	if item.Hole == nil || log.began == 0 {
		return
	}
	target := float64(item.Target())
	if log.depth > target+1e-6 || log.refused > log.depth {
		w.wrong("%s: to %g m, refused at %g m, target %g m", name, log.depth, log.refused, target)
	}
	short := log.depth < target-shortest-1e-6
	if log.state == done && log.refused == 0 && !log.incomplete && short {
		w.wrong("%s: complete at %g m of %g", name, log.depth, target)
	}
	if log.state == done && log.incomplete && !short && len(item.Hole.Logging) == 0 {
		w.wrong("%s: incomplete at %g m of %g", name, log.depth, target)
	}
}

// agrees holds what a worker wrote against the ship, and looks for numbers that mean nothing: NaN
// marks what did not happen and nothing else.
func (w *watch) agrees(written statistics.Row, c statistics.Layout) {
	again := make(statistics.Row, c.Width)
	writeRow(c, again, w.ship)
	for i, x := range written {
		if x != again[i] && !(math.IsNaN(x) && math.IsNaN(again[i])) {
			w.wrong("column %d is %g, and %g when sailed again", i, x, again[i])
		}
		if math.IsInf(x, 0) || math.IsNaN(x) && i < statistics.FirstColumn {
			w.wrong("column %d is %g", i, x)
		}
	}
	for n := range w.sites {
		reached := written[c.Site(n, statistics.SiteReached)] == 1
		for column := range statistics.SiteColumns {
			if math.IsNaN(written[c.Site(n, column)]) == reached && column >= statistics.SiteArrived {
				w.wrong("site %d, column %d: %g, reached %v", n, column, written[c.Site(n, column)], reached)
			}
		}
	}
	for n := range w.items {
		if math.IsNaN(written[c.Item(n, statistics.ItemTook)]) == (w.items[n].began > 0) {
			w.wrong("item %d begun at %g s, took %g s", n, w.items[n].began, written[c.Item(n, statistics.ItemTook)])
		}
	}
}
