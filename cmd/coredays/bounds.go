package main

import (
	"errors"
	"fmt"
	"time"

	"coredays/model/unit"
	"coredays/scenario/dates"
)

// bound is what a numeric flag takes, and why not more.
type bound struct {
	flag        string
	least, most int
	why         string
}

// What people can mean by the numeric flags. A seed may be any number, and so may the number of the replication
// of a diary.
var (
	replicationsBound = bound{"replications", 1, 1_000_000, "each takes about 5 kB of memory, and a quantile is known long before"} // --precision ends there too
	simulateBound     = bound{"simulate", 0, replicationsBound.most, replicationsBound.why}
	workersBound      = bound{"workers", 0, 1000, "each keeps two ships, and few machines have more processors"}
	yearsBound        = bound{"years", 1, 2000, "a month's shares are known to a tenth of a per cent by then"}
	datesBound        = bound{"departures", 2, 100, "each date is an expedition to simulate"}
)

// holds refuses a number that is beyond the bounds.
func (b bound) holds(n int) error {
	if n < b.least || n > b.most {
		return fmt.Errorf("--%s %d: give a whole number from %d to %d; %s", b.flag, n, b.least, b.most, b.why)
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

// parseDates reads the dates of --departures.
func parseDates(text string, sails time.Time) ([]time.Time, error) {
	list, err := departures(text, sails)
	if err != nil {
		return nil, fmt.Errorf("--departures %q: %w", text, err)
	}
	return list, nil
}

// departures are the dates to try, each once, as a flag and the desk take them.
func departures(text string, sails time.Time) ([]time.Time, error) {
	list, err := dates.Of(text, sails, datesBound.most)
	switch {
	case errors.Is(err, dates.ErrTooMany):
		return nil, fmt.Errorf("%w; %s", err, datesBound.why)
	case err != nil:
		return nil, err
	case len(list) < 2:
		return nil, fmt.Errorf("two dates or more are needed to compare; %s", dates.Wanted)
	}
	return list, nil
}
