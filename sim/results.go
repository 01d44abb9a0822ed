package sim

import "coredays/model/voyage"

// Results are the rows of all replications that were done.
type Results struct {
	columns columns
	seed    uint64
	workers int       // that they were sailed by; 0 for one a processor
	first   int       // number of the first replication
	needed  []float64 // row after row: the whole programme, no deadline
	bound   []float64 // the same replications under the rules of the expedition
	done    []bool    // by replication
	marks   []float32 // s after sailing, by replication, item and mark of its depth; NaN where it was not reached
	section broughtUp // what was cored, came up and is covered by depth
	Stopped bool      // the context ended the run
}

// newResults are those of no replication yet.
func newResults(v *voyage.Voyage, seed uint64, first int) *Results {
	return &Results{columns: newColumns(v), seed: seed, first: first, section: newBroughtUp(v)}
}

// grow makes room for so many replications more.
func (r *Results) grow(by int) {
	r.needed = append(r.needed, make([]float64, by*r.columns.width)...)
	r.bound = append(r.bound, make([]float64, by*r.columns.width)...)
	r.done = append(r.done, make([]bool, by)...)
	r.marks = append(r.marks, make([]float32, by*r.columns.voyage.Items*depthMarks)...)
}

// row is that of a replication among the needed or the bound.
func (r *Results) row(rows []float64, n int) row {
	return rows[n*r.columns.width : (n+1)*r.columns.width]
}

// Replications is how many there are, done or not.
func (r *Results) Replications() int { return len(r.done) }

// column collects a column over the replications that were done.
func (r *Results) column(rows []float64, column int) []float64 {
	values := make([]float64, 0, len(r.done))
	for n, done := range r.done {
		if done {
			values = append(values, rows[n*r.columns.width+column])
		}
	}
	return values
}
