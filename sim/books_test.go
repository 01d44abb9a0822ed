package sim

import (
	"math"

	"coredays/model/voyage"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// balances looks at the books of a ship that is home or was given up.
func (w *watch) balances() {
	var sum float64
	for _, x := range w.Spent {
		sum += x
	}
	if math.Abs(sum-w.Clock) > 1e-2 {
		w.wrong("the activities add up to %g s of %g", sum, w.Clock)
	}
	if w.Home == w.Stuck {
		w.wrong("home %v, given up %v", w.Home, w.Stuck)
	}
	if w.Stuck && w.Clock < w.Longest() {
		w.wrong("given up after %.1f d of %.1f", w.Clock/86400, w.Longest()/86400)
	}
	if w.Home && (w.Bit != 0 || w.Here != nil) {
		w.wrong("home with the bit at %g m", w.Bit)
	}
	for n := range w.Sites {
		w.siteBalances(n)
	}
}

// siteBalances looks at the books of a site.
func (w *watch) siteBalances(n int) {
	site, log := &w.Voyage.Sites[n], &w.Sites[n]
	var took float64
	begun := false
	for i := range site.Items {
		item := &site.Items[i]
		took += w.Items[item.Number].Took
		begun = begun || w.Items[item.Number].Began > 0
		w.itemBalances(site.Name+" "+item.Name, item)
	}
	if log.State == ship.UnderWay {
		w.wrong("%s was never left", site.Name)
	}
	if log.State != ship.Done {
		return
	}
	days := log.Left - log.Arrived
	if log.Waited < -1e-6 || log.Waited > days+1e-3 {
		w.wrong("%s: waited %g s of %g", site.Name, log.Waited, days)
	}
	if took > days+1e-3 || begun && !w.Stuck && took < days-1e-3 {
		w.wrong("%s: the items took %g s of %g", site.Name, took, days)
	}
	if !begun && !w.slow[voyage.SitePlace(n)] {
		w.wrong("%s was visited for nothing", site.Name)
	}
}

// itemBalances looks at the books of a hole or task.
func (w *watch) itemBalances(name string, item *voyage.Item) {
	log := &w.Items[item.Number]
	if log.State == ship.UnderWay && !w.Stuck || log.Took < 0 {
		w.wrong("%s: state %d, took %g s", name, log.State, log.Took)
	}
	if item.Hole == nil || log.Began == 0 {
		return
	}
	target := float64(item.Target())
	if log.Depth > target+1e-6 || log.Refused > log.Depth {
		w.wrong("%s: to %g m, refused at %g m, target %g m", name, log.Depth, log.Refused, target)
	}
	short := log.Depth < target-ship.Shortest-1e-6
	if log.State == ship.Done && log.Refused == 0 && !log.Incomplete && short {
		w.wrong("%s: complete at %g m of %g", name, log.Depth, target)
	}
	if log.State == ship.Done && log.Incomplete && !short && len(item.Hole.Logging) == 0 {
		w.wrong("%s: incomplete at %g m of %g", name, log.Depth, target)
	}
}

// agrees holds what a worker wrote against the ship, and looks for numbers that mean nothing: NaN
// marks what did not happen and nothing else.
func (w *watch) agrees(written statistics.Row, c statistics.Layout) {
	again := make(statistics.Row, c.Width)
	writeRow(c, again, w.expedition)
	for i, x := range written {
		if x != again[i] && !(math.IsNaN(x) && math.IsNaN(again[i])) {
			w.wrong("column %d is %g, and %g when sailed again", i, x, again[i])
		}
		if math.IsInf(x, 0) || math.IsNaN(x) && i < statistics.FirstColumn {
			w.wrong("column %d is %g", i, x)
		}
	}
	for n := range w.Sites {
		reached := written[c.Site(n, statistics.SiteReached)] == 1
		for column := range statistics.SiteColumns {
			if math.IsNaN(written[c.Site(n, column)]) == reached && column >= statistics.SiteArrived {
				w.wrong("site %d, column %d: %g, reached %v", n, column, written[c.Site(n, column)], reached)
			}
		}
	}
	for n := range w.Items {
		if math.IsNaN(written[c.Item(n, statistics.ItemTook)]) == (w.Items[n].Began > 0) {
			w.wrong("item %d begun at %g s, took %g s", n, w.Items[n].Began, written[c.Item(n, statistics.ItemTook)])
		}
	}
}
