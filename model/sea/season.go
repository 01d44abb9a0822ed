package sea

import "time"

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

// SeasonOf is the quarter that a month lies in, January being 0.
func SeasonOf(month int) Season { return DJF + Season((month+1)%12/3) }

// months tells the month of an hour counted from a start, hour after hour.
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
