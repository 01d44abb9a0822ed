package sheet

import (
	"coredays/model/result"
	"coredays/output/words"
)

// replicationsSheet has a row for each replication and a column for each result; main leaves out those
// of tools, causes and holes.
func replicationsSheet(r *result.Replications, main bool) *Table {
	t := &Table{Name: "replications", Title: "Each replication", Fields: []Field{{"replication", "replication", ofCount, "its number, for coredays diary --replication"}}}
	var columns []result.Column
	var sizes []float64
	for _, c := range r.Columns {
		if main && !c.Main {
			continue
		}
		k, size := kindOf(c.Of)
		t.Fields = append(t.Fields, Field{c.Key, c.Key, k, c.Meaning})
		columns, sizes = append(columns, c), append(sizes, size)
	}
	t.long = func(yield func([]any) bool) {
		row := make([]any, len(t.Fields))
		for n, number := range r.Numbers {
			row[0] = float64(number)
			for i := range columns {
				row[i+1] = columns[i].Values[n] / sizes[i]
			}
			if !yield(row) {
				return
			}
		}
	}
	return t
}

// kindOf is the kind of a measure and the size of its unit.
func kindOf(m result.Measure) (Kind, float64) {
	switch m {
	case result.Seconds:
		return ofDays, words.SecondsOfDay
	case result.Metres:
		return ofMetres, 1
	case result.Share:
		return ofShare, 1
	}
	return ofCount, 1
}
