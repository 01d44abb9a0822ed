package sim

import (
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

// mostTimes is how many times its days an expedition may take before it is given up as one that
// never ends: its sea is always too rough, or its ground too hard.
const mostTimes = 20
