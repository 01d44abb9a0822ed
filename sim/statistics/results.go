package statistics

import (
	"slices"

	"coredays/model/result"
	"coredays/model/voyage"
)

// Results are the rows of all replications that were done.
type Results struct {
	Layout        Layout
	Seed          uint64
	Workers       int       // that they were sailed by; 0 for one a processor
	First         int       // number of the first replication
	Unconstrained []float64 // row after row: the whole programme, no deadline
	Constrained   []float64 // the same replications under the rules of the expedition
	Done          []bool    // by replication
	Marks         []float32 // s after sailing, by replication, item and mark of its depth; NaN where it was not reached
	Section       BroughtUp // what was cored, was recovered and is covered by depth
	Stopped       bool      // the context ended the run

	scratch []float64 // a column while it is summarised
}

// NewResults are those of no replication yet.
func NewResults(v *voyage.Voyage, seed uint64, first int) *Results {
	return &Results{Layout: NewLayout(v), Seed: seed, First: first, Section: NewBroughtUp(v)}
}

// mostReserved is for how many replications room is reserved at once: more may never be done.
const mostReserved = 1 << 16

// Reserve says that there will be so many replications, so that rows need not be copied as they grow.
func (r *Results) Reserve(replications int) {
	n := min(replications, mostReserved)
	r.Unconstrained = slices.Grow(r.Unconstrained, n*r.Layout.Width)
	r.Constrained = slices.Grow(r.Constrained, n*r.Layout.Width)
	r.Done = slices.Grow(r.Done, n)
	r.Marks = slices.Grow(r.Marks, n*r.Layout.Voyage.Items*DepthMarks)
}

// Grow makes room for so many replications more.
func (r *Results) Grow(by int) {
	r.Unconstrained = append(r.Unconstrained, make([]float64, by*r.Layout.Width)...)
	r.Constrained = append(r.Constrained, make([]float64, by*r.Layout.Width)...)
	r.Done = append(r.Done, make([]bool, by)...)
	r.Marks = append(r.Marks, make([]float32, by*r.Layout.Voyage.Items*DepthMarks)...)
}

// Row is that of a replication among the needed or the bound.
func (r *Results) Row(rows []float64, n int) Row {
	return rows[n*r.Layout.Width : (n+1)*r.Layout.Width]
}

// Replications is how many there are, done or not.
func (r *Results) Replications() int { return len(r.Done) }

// Column collects a column over the replications that were done.
func (r *Results) Column(rows []float64, column int) []float64 {
	return r.appendColumn(make([]float64, 0, len(r.Done)), rows, column)
}

func (r *Results) appendColumn(values, rows []float64, column int) []float64 {
	for n, done := range r.Done {
		if done {
			values = append(values, rows[n*r.Layout.Width+column])
		}
	}
	return values
}

// spread summarises a column over the replications that were done. There are hundreds of columns, so all are copied
// to one place.
func (r *Results) spread(rows []float64, column int) result.Spread {
	r.scratch = r.appendColumn(r.scratch[:0], rows, column)
	return takingOver(r.scratch)
}
