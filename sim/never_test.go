package sim

import (
	"strings"
	"testing"

	"coredays/model/activity"
	"coredays/model/unit"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// The piston corer works in up to 0.2 m of sea; there are 0.5 m for ever.
func TestAProgrammeThatTheSeaNeverAllowsIsGivenUpAndReported(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 100))
	for i := range p.Ship.Limits {
		if p.Ship.Limits[i].For == activity.PistonCoring {
			p.Ship.Limits[i].Most = 0.2
		}
	}
	p.SeaDays = 60 * unit.Day
	r := replicated(t, p, 2, 1)
	s := r.Summary()
	if days := s.Needed.Total.P50 / 86400; days < 60*statistics.MostTimes || days > 60*statistics.MostTimes+1 {
		t.Errorf("given up after %.1f d, want %d", days, 60*statistics.MostTimes)
	}
	if days := s.Sites[0].Days.P50 / 86400; days < 60*statistics.MostTimes-5 {
		t.Errorf("%.1f d on site", days)
	}
	if s.Allotted.Late > 0 {
		t.Error("a ship that is bound is held up too")
	}
	if !strings.Contains(strings.Join(s.Warnings, " "), "100 % of the replications the programme never ended") {
		t.Errorf("warnings: %q", s.Warnings)
	}
}
