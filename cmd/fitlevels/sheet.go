package main

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"time"
)

// sheet reads a CSV table by column name and keeps a list of the rows it could not read.
// Lines that begin with # are comments: sources and rules at the head of an extract.
type sheet struct {
	name   string
	csv    *csv.Reader
	column map[string]int
	record []string
	line   int
	rowBad bool
	faults []string
}

func openSheet(name string, r io.Reader, columns ...string) (*sheet, error) {
	s := &sheet{name: name, csv: csv.NewReader(r), column: map[string]int{}}
	s.csv.Comment = '#'
	head, err := s.csv.Read()
	if err != nil {
		return nil, fmt.Errorf("%s: heading line: %w", name, err)
	}
	for i, title := range head {
		s.column[title] = i
	}
	var missing []error
	for _, c := range columns {
		if _, ok := s.column[c]; !ok {
			missing = append(missing, fmt.Errorf("%s: no column %q", name, c))
		}
	}
	return s, errors.Join(missing...)
}

// next moves to the next row; a row the CSV reader refuses is listed and passed over.
func (s *sheet) next() bool {
	for {
		record, err := s.csv.Read()
		if err == io.EOF {
			return false
		}
		s.rowBad = false
		if err == nil {
			s.record = record
			s.line, _ = s.csv.FieldPos(0)
			return true
		}
		s.faults = append(s.faults, fmt.Sprintf("%s: %v", s.name, err))
		if !errors.Is(err, csv.ErrFieldCount) {
			return false // a broken quote loses the rest of the file
		}
	}
}

// head is the heading line.
func (s *sheet) head() []string {
	head := make([]string, len(s.column))
	for title, i := range s.column {
		head[i] = title
	}
	return head
}

func (s *sheet) text(column string) string { return s.record[s.column[column]] }

func (s *sheet) bad(column, wanted string) {
	s.rowBad = true
	s.faults = append(s.faults, fmt.Sprintf("%s line %d: %s %q: want %s", s.name, s.line, column, s.text(column), wanted))
}

// number must be there and finite.
func (s *sheet) number(column string) float64 {
	x, err := strconv.ParseFloat(s.text(column), 64)
	if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
		s.bad(column, "a number")
	}
	return x
}

// known is number, but a blank cell ("not in the source") reads as NaN.
func (s *sheet) known(column string) float64 {
	if s.text(column) == "" {
		return math.NaN()
	}
	return s.number(column)
}

// moment reads a time; blank is the zero time, which no record carries.
func (s *sheet) moment(column string) time.Time {
	if s.text(column) == "" {
		return time.Time{}
	}
	t, err := time.Parse("2006-01-02T15:04", s.text(column))
	if err != nil {
		s.bad(column, "a time like 1987-03-18T03:00")
	}
	return t
}
