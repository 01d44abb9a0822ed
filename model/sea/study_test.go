package sea

import (
	"math"
	"testing"

	"coredays/model/unit"
)

func question(t *testing.T, years int) Question {
	l := likenessOf(t, years)
	return Question{Place: "here", Source: "made up", Course: l.Course, Table: l.Table, Likeness: l, Years: 30, Seed: 1,
		Limits: []Limit{{"piston coring", 3}, {"logging", 2}}, Coring: 0}
}

// A process is known to its crossings and its record is one draw of it; pieces of the record are
// its own. Both should show in a study of a made-up record.
func TestAStudySetsTheRecordBesideASeaLikeIt(t *testing.T) {
	for years, most := range map[int]float64{3: 0.15, 8: 0.08} {
		s := question(t, years).Study(t.Context())
		if len(s.Heights) < 5 || s.Times < leastTimes {
			t.Errorf("%d years: heights %v, %d times", years, s.Heights, s.Times)
		}
		for i, h := range s.Heights {
			one, made := s.Seasons.At(i, 0), s.Made.At(i, 0)
			if q := one.ShareAbove(); q < 0.05 || q > 0.95 {
				continue
			}
			near(t, "share above", made.ShareAbove(), one.ShareAbove(), 0.015)
			if off := made.MeanAbove()/one.MeanAbove() - 1; math.Abs(off) > most {
				t.Errorf("%d years, %g m: spells above %.1f h, of the record %.1f h", years, h, made.MeanAbove(), one.MeanAbove())
			}
		}
		for m := range 12 {
			near(t, "mean of a month, m", s.MadeYear.Mean(m), s.Months.Mean(m), 0.25)
		}
	}
}

func TestDaysLostAreStormsAndTheShortCalmsBetween(t *testing.T) {
	s := question(t, 2).Study(t.Context())
	for m := range 13 {
		spells := s.Work.At(0, m)
		lost := s.Lost(m)
		if lost < spells.ShareAbove() || lost > 1 {
			t.Errorf("month %d: lost %.3f, above the limit %.3f", m, lost, spells.ShareAbove())
		}
	}
	if winter, summer := s.Lost(1), s.Lost(7); winter < 2*summer {
		t.Errorf("lost in January %.3f, in July %.3f: the made-up winter is much rougher", winter, summer)
	}
}

func TestASeaFromAClimateStandsForBoth(t *testing.T) {
	q := Question{Course: ByProcess(NewProcess(LongMemory, ShortMemory, unit.Hour)), Table: tableOf(t, flat(2, 0.3)), Years: 10, Coring: -1}
	s := q.Study(t.Context())
	if s.Times != 0 || s.Seasons.At(0, 0) == nil || s.Seasons.At(1, 2).ShareAbove() != s.Made.At(1, 2).ShareAbove() {
		t.Errorf("%d times", s.Times)
	}
	near(t, "mean of March, m", s.Months.Mean(2), 2, 0.1)
	near(t, "deviation of March, m", s.Months.Deviation(2), 0.6, 0.1)
	for _, h := range s.Heights {
		if h > 6 {
			t.Errorf("%g m does not occur in a sea of 2 m and 0.6 m", h)
		}
	}
}

func TestASeaLikeAShortRecordSaysWhatToExpect(t *testing.T) {
	l := likenessOf(t, 2)
	if n := len(l.Notes); n < 2 || l.Memory.Long < 10*unit.Hour {
		t.Errorf("%q", l.Notes)
	}
}
