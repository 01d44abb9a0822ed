package sea

import (
	"fmt"

	"coredays/model/sea/heave"
	"coredays/model/unit"
)

// Likeness makes seas that are like a record.
type Likeness struct {
	Record *Record
	Table  *Table
	Course Course
	Memory Memory // of the scores, also where blocks are used
	Blocks bool
	Notes  []string // what a user should know of the record and of the likeness
}

const (
	blockSpan  = 5.0 // years from first to last that make blocks of a record worth using
	blockYears = 4.0 // years of heights in them
)

// NewLikeness chooses how to make seas like a record: blocks of it where it is long enough for
// its seasons to be steady, else its distribution by day with a process fitted to its memory. The
// key says records apart; places with the same key have the same sea.
func NewLikeness(r *Record, key string) (*Likeness, error) {
	table, err := TableOf(r)
	if err != nil {
		return nil, err
	}
	l := &Likeness{Record: r, Table: table, Memory: MemoryOf(r, table), Notes: r.Report.Sentences()}
	if f := r.PeriodFactor; f > 0 {
		l.Notes = append(l.Notes, fmt.Sprintf("limits of heave count with its peak periods, in the middle %.2g s times the root of the height in metres (%.2g without)", f, heave.PeriodFactor))
	}
	span := float64(len(r.Heights)) / hoursOfYear
	if span >= blockSpan-0.05 && r.Years() >= blockYears { // five years less a few weeks are five
		if blocks, err := NewBlocks(r); err == nil {
			l.Blocks, l.Course = true, ByBlocks(blocks, table, key)
			l.Notes = append(l.Notes, "seas are made of pieces of 15 to 20 days of it, so none is higher than it was")
			return l, nil
		}
	}
	l.Course = ByProcess(NewProcess(l.Memory.Long, l.Memory.Short, unit.Hour))
	l.Notes = append(l.Notes, fmt.Sprintf("%.2g years of heights are too few for pieces of it: seas have its heights by season and a memory of %.2g h and %.2g h fitted to it; "+
		"expect mean spells within about 15 %%, 40 %% at worst", r.Years(), l.Memory.Long.Hours(), l.Memory.Short.Hours()))
	return l, nil
}
