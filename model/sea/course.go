package sea

import (
	"math"
	"time"

	"coredays/model/chance"
)

// Course is how the sea of a place goes on in time: by a process of its score, or in blocks of a
// record. It does not change; a Series is what one replication makes of it. Courses go in steps of
// an hour.
type Course struct {
	process *Process
	blocks  *Blocks
	table   *Table // of the record, for the scores of its heights
	key     chance.Key
}

// ByProcess is the course of a process in steps of an hour. All courses of this kind follow the same random numbers:
// where it is rough in one place it is rough at the others.
func ByProcess(p *Process) Course { return Course{process: p} }

// ByBlocks is the course of pieces of a record, with the table of the same record. The key says
// records apart.
func ByBlocks(b *Blocks, t *Table, key string) Course {
	return Course{blocks: b, table: t, key: chance.KeyOf("sea by blocks", key)}
}

// Series is the sea of one replication along a course, hour by hour from a start on, worked out
// on demand and remembered: what comes at an hour does not depend on when it is asked for. The
// zero value must begin first; it may begin again and again and keeps its memory.
type Series struct {
	course  Course
	stream  chance.Source
	firstAt float64   // h of the year at which step 0 begins
	values  []float32 // scores of a process, m of blocks
	state   State
	blocks  int // begun so far
}

// theSeasScore is the purpose of the random numbers of processes.
var theSeasScore = chance.KeyOf("sea")

// Begin starts the series of a replication at a moment.
func (s *Series) Begin(c Course, stream chance.Source, start time.Time) {
	start = start.UTC()
	hours := start.Sub(time.Date(start.Year(), 1, 1, 0, 0, 0, 0, time.UTC)).Hours()
	*s = Series{course: c, stream: stream.For(theSeasScore), firstAt: hours, values: s.values[:0]}
	if c.blocks != nil {
		s.stream = stream.For(c.key)
		return
	}
	s.state = c.process.Start(s.stream.Normal(0), s.stream.Normal(1))
	s.values = append(s.values, float32(s.state.Score()))
}

// CopyFrom makes the series a copy of another that goes on by itself.
func (s *Series) CopyFrom(o *Series) {
	values := append(s.values[:0], o.values...)
	*s = *o
	s.values = values
}

// Score is the standard normal score of a step.
func (s *Series) Score(step int) float64 {
	x := s.value(step)
	if s.course.blocks != nil {
		return s.course.table.Score(s.Day(step), x)
	}
	return x
}

// Height is the significant wave height of a step in metres, at a place with the table.
func (s *Series) Height(step int, t *Table) float64 {
	x := s.value(step)
	if s.course.blocks != nil {
		return x
	}
	return t.Height(s.Day(step), x)
}

// Day is the day of the year of a step, from 1.
func (s *Series) Day(step int) int { return s.hour(step)/24 + 1 }

// hour is the hour of the year of a step.
func (s *Series) hour(step int) int {
	h := s.firstAt + float64(step)
	if h >= hoursOfYear {
		h -= hoursOfYear * float64(int(h/hoursOfYear))
	}
	return int(h)
}

func (s *Series) value(step int) float64 {
	for step >= len(s.values) {
		s.extend()
	}
	return float64(s.values[step])
}

// extend works out what follows: the next step of a process, or the next block.
func (s *Series) extend() {
	n := len(s.values)
	if s.course.blocks == nil {
		s.state = s.course.process.Next(s.state, s.stream.Normal(2*n), s.stream.Normal(2*n+1))
		s.values = append(s.values, float32(s.state.Score()))
		return
	}
	b := s.course.blocks
	last := noMatch
	if n > 0 {
		last = float32(math.Log(float64(s.values[n-1])))
	}
	from, length, _ := b.pick(s.stream.For(chance.Key(s.blocks)), s.hour(n), last)
	s.blocks++
	s.values = append(s.values, b.heights[from:from+length]...)
}
