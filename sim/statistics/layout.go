package statistics

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/voyage"
)

// Row is what is kept of one replication: a number a column. NaN marks what did not happen.
type Row []float64

// Columns of a row; sites and items follow.
const (
	ColDays      = iota // s from leaving port to reaching port
	ColInPort           // s in port before sailing
	ColInHand           // s left of the sea days
	ColAll              // 1 when nothing at any primary site was left undone
	ColFirst            // 1 when nothing of the first rank was
	ColNever            // 1 when port was never reached
	ColBehind           // s that the laboratory was behind at most
	ColMostCores        // cores on deck on the busiest day
	ColClass            // s by class
	ColCause     = ColClass + int(activity.Classes)
	ColTool      = ColCause + int(activity.Causes) // cores, m cored, m recovered
	ColUsed      = ColTool + 3*int(coring.Tools)
	FirstColumn  = ColUsed + int(Consumables)
)

// Columns of a site.
const (
	SiteReached  = iota // 1 when it was
	SiteComplete        // 1 when nothing was left undone
	SiteArrived         // s after sailing
	SiteLeft
	SiteWaited
	SiteCored
	SiteRecovered
	SiteCores
	SiteCovered
	SiteColumns
)

// Columns of an item.
const (
	ItemDone      = iota // 1 when it was completed
	ItemNotCalled        // 1 when its condition did not arise; neither for what was left undone: dropped or cut short
	ItemTook             // s
	ItemDepth
	ItemRefused
	ItemCovered // share of the site's section recovered when it was finished
	ItemCored
	ItemRecovered
	ItemColumns
)

// Layout lays out the rows of a voyage.
type Layout struct {
	Voyage *voyage.Voyage
	Width  int
}

func NewLayout(v *voyage.Voyage) Layout {
	return Layout{v, FirstColumn + len(v.Sites)*SiteColumns + v.Items*ItemColumns}
}

func (c Layout) Site(site, column int) int { return FirstColumn + site*SiteColumns + column }

func (c Layout) Item(item, column int) int {
	return FirstColumn + len(c.Voyage.Sites)*SiteColumns + item*ItemColumns + column
}

// MostTimes is how many times its days an expedition may take before it is given up as one that
// never ends: its sea is always too rough, or its ground too hard.
const MostTimes = 20
