package sea

import (
	"slices"
	"time"
)

// Season is all the year or one of its quarters.
type Season int

// The seasons, by the months that they hold.
const (
	AllYear Season = iota
	DJF
	MAM
	JJA
	SON
	Seasons
)

func (s Season) String() string { return [Seasons]string{"all", "DJF", "MAM", "JJA", "SON"}[s] }

// Division groups the months of the year; group 0 is all the year.
type Division [12]int

// BySeason has a group for each Season, ByMonth one for each month, January being 1.
var (
	BySeason = Division{int(DJF), int(DJF), int(MAM), int(MAM), int(MAM), int(JJA), int(JJA), int(JJA), int(SON), int(SON), int(SON), int(DJF)}
	ByMonth  = Division{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}
)

// groups is how many groups a division has, with all the year.
func (d Division) groups() int { return slices.Max(d[:]) + 1 }

// months says the month of an hour counted from a start, hour after hour.
type months struct {
	start time.Time
	month int
	until int // first hour of the month that follows
}

func newMonths(start time.Time) *months { return &months{start: start, until: -1} }

// of is the month of an hour, from 0. Hours must be asked for in order.
func (m *months) of(hour int) int {
	if hour >= m.until {
		at := m.start.Add(time.Duration(hour) * time.Hour)
		m.month = int(at.Month()) - 1
		next := time.Date(at.Year(), at.Month()+1, 1, 0, 0, 0, 0, time.UTC)
		m.until = int(next.Sub(m.start).Hours() + 0.999)
	}
	return m.month
}
