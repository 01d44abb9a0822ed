package statefile

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"time"

	"coredays/scenario/spreadsheet"
)

// Wave is a height forecast for a moment.
type Wave struct {
	At     time.Time
	Height float64 // m
}

const (
	highest    = 25.0 // m: above any significant height on record [from memory]
	mostFaults = 20
)

// ReadForecast reads a table of waves forecast, with the columns time (UTC or with a zone) and hs_m; others, such as
// a period, are left to those who keep it. Times must rise.
func ReadForecast(name string, data []byte) (list []Wave, err error) {
	t, err := spreadsheet.Read(name, data)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	at, hs := -1, -1
	var wrong []error
	for _, row := range t.Rows {
		if at < 0 || hs < 0 {
			for i, cell := range row.Cells {
				switch strings.ToLower(strings.TrimSpace(cell)) {
				case "time":
					at = i
				case "hs_m":
					hs = i
				}
			}
			continue
		}
		if len(row.Cells) <= max(at, hs) || strings.TrimSpace(row.Cells[at]) == "" {
			continue
		}
		when, errTime := momentOf(strings.TrimSpace(row.Cells[at]))
		height, errHeight := strconv.ParseFloat(strings.TrimSpace(row.Cells[hs]), 64)
		switch {
		case errTime != nil:
			wrong = append(wrong, fmt.Errorf("%s:%d: time %q, wanted one such as 2027-03-18T03:00Z", name, row.Number, row.Cells[at]))
		case errHeight != nil || !(height > 0 && height <= highest):
			wrong = append(wrong, fmt.Errorf("%s:%d: hs_m %q, wanted a significant wave height above 0 and up to %g m", name, row.Number, row.Cells[hs], highest))
		case len(list) > 0 && !when.After(list[len(list)-1].At):
			wrong = append(wrong, fmt.Errorf("%s:%d: time %s is not after that of the row above", name, row.Number, when.Format(time.RFC3339)))
		default:
			list = append(list, Wave{when, height})
		}
		if len(wrong) == mostFaults {
			break
		}
	}
	switch {
	case at < 0 || hs < 0:
		return nil, fmt.Errorf("%s: a forecast has the columns time and hs_m", name)
	case len(wrong) == 0 && len(list) == 0:
		return nil, fmt.Errorf("%s: there is no row below the heading", name)
	}
	return list, errors.Join(wrong...)
}
