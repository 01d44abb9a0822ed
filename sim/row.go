package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/voyage"
)

// row is what is kept of one replication: a number a column. NaN marks what did not happen.
type row []float64

// Columns of a row; sites and items follow.
const (
	colDays      = iota // s from leaving port to reaching port
	colInPort           // s in port before sailing
	colInHand           // s left of the sea days
	colAll              // 1 when nothing at any primary site was left undone
	colFirst            // 1 when nothing of the first rank was
	colNever            // 1 when port was never reached
	colBehind           // s that the laboratory was behind at most
	colMostCores        // cores on deck on the busiest day
	colClass            // s by class
	colCause     = colClass + int(activity.Classes)
	colTool      = colCause + int(activity.Causes) // cores, m cored, m recovered
	colUsed      = colTool + 3*int(coring.Tools)
	firstColumn  = colUsed + int(usedThings)
)

// Columns of a site.
const (
	siteReached  = iota // 1 when it was
	siteComplete        // 1 when nothing was left undone
	siteArrived         // s after sailing
	siteLeft
	siteWaited
	siteCored
	siteRecovered
	siteCores
	siteCovered
	siteColumns
)

// Columns of an item.
const (
	itemDone      = iota // 1 when it was completed
	itemNotCalled        // 1 when its condition did not arise; neither for what was left undone: dropped or cut short
	itemTook             // s
	itemDepth
	itemRefused
	itemCovered // share of the site's section recovered when it was finished
	itemCored
	itemRecovered
	itemColumns
)

// columns lays out the rows of a voyage.
type columns struct {
	voyage *voyage.Voyage
	width  int
}

func newColumns(v *voyage.Voyage) columns {
	return columns{v, firstColumn + len(v.Sites)*siteColumns + v.Items*itemColumns}
}

func (c columns) site(site, column int) int { return firstColumn + site*siteColumns + column }

func (c columns) item(item, column int) int {
	return firstColumn + len(c.voyage.Sites)*siteColumns + item*itemColumns + column
}

// write fills a row from a ship that is home.
func (c columns) write(r row, s *ship) {
	r[colDays] = s.clock
	r[colInPort] = s.inPort
	r[colInHand] = c.voyage.Deadline - s.clock
	r[colNever] = flag(s.stuck)
	r[colBehind], r[colMostCores] = s.deck.behind, float64(s.deck.mostCores)
	clear(r[colClass:colTool])
	for k, t := range s.spent {
		traits := activity.Kind(k).Of()
		r[colClass+int(traits.Class)] += t
		r[colCause+int(traits.Cause)] += t
	}
	for t, log := range s.tools {
		copy(r[colTool+3*t:], []float64{float64(log.cores), log.cored, log.recovered})
	}
	for i, n := range s.used {
		r[colUsed+i] = float64(n)
	}
	r[colAll], r[colFirst] = 1, 1
	for i := range s.sites {
		c.writeSite(r, s, i)
	}
}

func (c columns) writeSite(r row, s *ship, n int) {
	log, site := &s.sites[n], &c.voyage.Sites[n]
	reached := log.state == underWay || log.state == done
	complete := true
	for i := range site.Items {
		item := &site.Items[i]
		undone := c.writeItem(r, s, item)
		complete = complete && !undone
		if !site.Alternate && undone {
			r[colAll] = 0
			if item.Rank <= 1 {
				r[colFirst] = 0
			}
		}
	}
	values := [siteColumns]float64{flag(reached), flag(complete), log.arrived, log.left, log.waited,
		log.cored, log.recovered, float64(log.cores), s.covered(n)}
	if !reached {
		for i := siteArrived; i < siteColumns; i++ {
			values[i] = math.NaN()
		}
	}
	copy(r[c.site(n, 0):], values[:])
}

// writeItem tells whether an item was left undone. What is not called for is not.
func (c columns) writeItem(r row, s *ship, i *voyage.Item) (undone bool) {
	log := &s.items[i.Number]
	complete, notCalled := log.state == done && !log.incomplete, log.state == notCalled
	values := [itemColumns]float64{flag(complete), flag(notCalled), log.took, log.depth, log.refused, log.covered, log.cored, log.recovered}
	if log.began == 0 {
		for i := itemTook; i < itemColumns; i++ {
			values[i] = math.NaN()
		}
	}
	if log.refused == 0 {
		values[itemRefused] = math.NaN()
	}
	copy(r[c.item(i.Number, 0):], values[:])
	return !complete && !notCalled
}

func flag(yes bool) float64 {
	if yes {
		return 1
	}
	return 0
}
