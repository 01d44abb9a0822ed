package result

// Measure is what a column of replications counts.
type Measure int

// The measures.
const (
	Seconds Measure = iota
	Metres
	Share
	Count
	Truth // 1 for yes, 0 for no
)

// Column is one result over all replications. NaN marks what did not happen.
type Column struct {
	Key     string // parts joined by points: "whole.SB-01.arrives"
	Meaning string
	Of      Measure
	Main    bool // of the expedition and its sites, not of a tool, a cause or a hole
	Values  []float64
}

// Replications is what came out of each one, a column for each result.
type Replications struct {
	Numbers []int // of the replications, for coredays diary
	Columns []Column
}
