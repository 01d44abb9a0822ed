package sea

import (
	"context"
	"math"

	"coredays/model/places"
	"coredays/model/unit"
)

// Question asks for the sea of a place.
type Question struct {
	Place    string
	Source   string
	Notes    []string // what to know of the source
	Course   Course
	Table    *Table
	Likeness *Likeness // where the sea is made like a record, nil for a climate
	Limits   []Limit
	Coring   int // which of the limits is that of coring; -1 for none
	Years    int // of sea to make, rounded up
	Seed     uint64
	Known    *places.Year // cyclones and ice of the place; nil where they are not stated
}

// Limit is the sea above which a class of work stops.
type Limit struct {
	Name string
	Most unit.Length // significant wave height
}

// Study is the answer: the sea as it is made, and as the record has it.
type Study struct {
	Question
	Heights  []float64 // m, those of Thresholds that occur
	Seasons  *Tally    // at the heights: of the record, or of the sea made from a climate
	Made     *Tally    // at the heights: over the hours of the record many times, or the same as Seasons
	Times    int       // how often the hours of the record were made; 0 for a climate
	Months   *Moments  // of the record, or of the sea made from a climate
	MadeYear *Moments  // of the sea made
	Work     *Tally    // at the limits by month, of the sea made
}

// Thresholds are the heights that spells are given for, m.
var Thresholds = []float64{1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8}

// leastTimes is how often at least the hours of a record are made to compare with it.
const leastTimes = 20

// Study works the answer out; it is nil where the context ends before that.
func (q Question) Study(ctx context.Context) *Study {
	limits := make([]float64, len(q.Limits))
	for i, l := range q.Limits {
		limits[i] = float64(l.Most)
	}
	made := madeYears(ctx, q.Course, q.Table, Thresholds, limits, q.Seed, q.Years)
	if made == nil {
		return nil
	}
	s := &Study{Question: q, Work: made.months, MadeYear: &made.moments}
	if q.Likeness == nil {
		s.Seasons, s.Made, s.Months = made.seasons, made.seasons, &made.moments
	} else {
		s.compare(ctx, q.Likeness.Record)
	}
	if ctx.Err() != nil {
		return nil
	}
	s.keep()
	return s
}

// compare counts the record and makes its hours over and over.
func (s *Study) compare(ctx context.Context, r *Record) {
	s.Seasons, s.Months = NewTally(BySeason, Thresholds), new(Moments)
	s.Seasons.Add(r.Start, r.Heights)
	s.Months.add(r.Start, r.Heights)
	s.Times = max(leastTimes, int(math.Ceil(float64(s.Years)/(float64(len(r.Heights))/hoursOfYear))))
	s.Made = r.Twins(ctx, s.Course, s.Table, Thresholds, s.Seed, s.Times)
}

// keep leaves out heights that the sea is never or always above.
func (s *Study) keep() {
	var seasons, made [][]Spells
	for i, h := range Thresholds {
		if share := s.Seasons.At(i, 0).ShareAbove(); share > 0 && share < 1 {
			s.Heights = append(s.Heights, h)
			seasons, made = append(seasons, s.Seasons.spells[i]), append(made, s.Made.spells[i])
		}
	}
	s.Seasons = &Tally{BySeason, s.Heights, seasons}
	s.Made = &Tally{BySeason, s.Heights, made}
}

// Lost is the share of a month that a coring ship should expect to lose, January being 1 and all
// the year 0: the time above the limit of coring, and calms too short to come back to work in,
// under 12 h [judgement: pipe out and in again in deep water takes about as long].
func (s *Study) Lost(month int) float64 {
	return 1 - s.Work.At(s.Coring, month).ShareInWindows(0)
}
