package sea

import (
	"context"
	"time"

	"coredays/model/chance"
	"coredays/model/workers"
)

// census is all that is counted of a made sea.
type census struct {
	seasons, months *Tally
	moments         Moments
}

func newCensus(heights, limits []float64) *census {
	return &census{seasons: NewTally(BySeason, heights), months: NewTally(ByMonth, limits)}
}

func (c *census) add(start time.Time, series []float32) {
	c.seasons.Add(start, series)
	c.months.Add(start, series)
	c.moments.add(start, series)
}

// Twins makes the hours of a record so many times over along a course, with the record's gaps, and
// counts them by season.
func (r *Record) Twins(ctx context.Context, c Course, t *Table, heights []float64, seed uint64, times int) *Tally {
	made := inParallel(ctx, times, heights, nil, func(into *census, s *Series, n int) {
		s.Begin(c, chance.Replication(seed, n), r.Start)
		into.seasons.Add(r.Start, r.twin(s, t))
	})
	if made == nil {
		return nil
	}
	return made.seasons
}

// twin is a sea over the hours of the record, with its gaps.
func (r *Record) twin(s *Series, t *Table) []float32 {
	made := make([]float32, len(r.Heights))
	for i, h := range r.Heights {
		if made[i] = h; h == h {
			made[i] = float32(s.Height(i, t))
		}
	}
	return made
}

// pieceYears is how long the pieces are that a sea of many years is made in.
const pieceYears = 10

// madeYears makes a sea of so many years, in pieces, and counts it.
func madeYears(ctx context.Context, c Course, t *Table, heights, limits []float64, seed uint64, years int) *census {
	start := time.Date(2001, 1, 1, 0, 0, 0, 0, time.UTC) // any year will do
	return inParallel(ctx, (years+pieceYears-1)/pieceYears, heights, limits, func(into *census, s *Series, n int) {
		s.Begin(c, chance.Replication(seed, n), start)
		made := make([]float32, pieceYears*hoursOfYear)
		for i := range made {
			made[i] = float32(s.Height(i, t))
		}
		into.add(start, made)
	})
}

// inParallel counts a number of pieces on all processors and adds them up in their order, so that
// the sum does not depend on who did what. It is nil where the context ends before all are counted.
func inParallel(ctx context.Context, pieces int, heights, limits []float64, work func(into *census, s *Series, n int)) *census {
	parts := make([]*census, pieces)
	workers.Share(ctx, 0, 0, pieces, func() func(int) {
		var s Series
		return func(n int) {
			parts[n] = newCensus(heights, limits)
			work(parts[n], &s, n)
		}
	})
	if ctx.Err() != nil {
		return nil
	}
	total := newCensus(heights, limits)
	for _, part := range parts {
		total.seasons.merge(part.seasons)
		total.months.merge(part.months)
		total.moments.merge(&part.moments)
	}
	return total
}
