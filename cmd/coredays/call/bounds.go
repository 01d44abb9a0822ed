package call

import (
	"errors"
	"fmt"
	"time"

	"coredays/model/unit"
	"coredays/scenario/dates"
)

// Bound is what a numeric flag takes, and why not more.
type Bound struct {
	Flag        string
	Least, Most int
	Why         string
}

// What people can mean by the numeric flags. A seed may be any number, and so may the number of the replication
// of a diary.
var (
	replicationsBound = Bound{"replications", 1, 1_000_000, "each takes about 5 kB of memory, and a quantile is known long before"} // --precision ends there too
	SimulateBound     = Bound{"simulate", 0, replicationsBound.Most, replicationsBound.Why}
	workersBound      = Bound{"workers", 0, 1000, "each keeps two ships, and few machines have more processors"}
	YearsBound        = Bound{"years", 1, 2000, "a month's shares are known to a tenth of a per cent by then"}
	datesBound        = Bound{"departures", 2, 100, "each date is an expedition to simulate"}
)

// Holds refuses a number that is beyond the bounds.
func (b Bound) Holds(n int) error {
	if n < b.Least || n > b.Most {
		return fmt.Errorf("--%s %d: give a whole number from %d to %d; %s", b.Flag, n, b.Least, b.Most, b.Why)
	}
	return nil
}

// --precision: a finer one takes more replications than there can be, a wider one is none.
const (
	finest = unit.Duration(5 * unit.Minute)
	widest = unit.Duration(400 * unit.Day)
)

// precise reads a precision.
func precise(text string) (unit.Duration, error) {
	p, err := unit.OfDuration.Parse(text)
	switch {
	case err != nil:
		return 0, fmt.Errorf("--precision %q %v: give %s", text, err, unit.OfDuration.Wanted())
	case p <= 0:
		return 0, fmt.Errorf("--precision %q: give a time above 0, such as 0.2d", text)
	case unit.Duration(p) < finest || unit.Duration(p) > widest:
		return 0, fmt.Errorf("--precision %q: give a time from %s to %s, such as 0.2d", text, finest.Tell(), widest.Tell())
	}
	return unit.Duration(p), nil
}

// ParseDates reads the dates of --departures.
func ParseDates(text string, sails time.Time) ([]time.Time, error) {
	list, err := Departures(text, sails)
	if err != nil {
		return nil, fmt.Errorf("--departures %q: %w", text, err)
	}
	return list, nil
}

// Departures are the dates to try, each once, as a flag and the desk take them.
func Departures(text string, sails time.Time) ([]time.Time, error) {
	list, err := dates.Of(text, sails, datesBound.Most)
	switch {
	case errors.Is(err, dates.ErrTooMany):
		return nil, fmt.Errorf("%w; %s", err, datesBound.Why)
	case err != nil:
		return nil, err
	case len(list) < 2:
		return nil, fmt.Errorf("two dates or more are needed to compare; %s", dates.Wanted)
	}
	return list, nil
}
