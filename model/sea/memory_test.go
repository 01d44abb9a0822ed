package sea

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// The made-up record has memories of 30 and 4 h, and its 3-hour means are a little smoother.
func TestMemoryOfAMadeUpRecordIsFoundAgain(t *testing.T) {
	r := madeUp(t, 20)
	table, err := TableOf(r)
	if err != nil {
		t.Fatal(err)
	}
	m := MemoryOf(r, table)
	near(t, "long memory, h", m.Long.Hours(), 30, 4)
	near(t, "short memory, h", m.Short.Hours(), 4.3, 0.8)
	made, fitted := NewProcess(30*unit.Hour, 4*unit.Hour, unit.Hour), NewProcess(m.Long, m.Short, unit.Hour)
	for _, lag := range []unit.Duration{1, 6, 24, 72} {
		near(t, "correlation", fitted.Correlation(lag*unit.Hour), made.Correlation(lag*unit.Hour), 0.03)
	}
}

// At the correlation that is found two normals cross heights as often as the scores do.
func TestFirstCorrelationIsThatOfTheCrossings(t *testing.T) {
	p := NewProcess(30*unit.Hour, 4*unit.Hour, unit.Hour)
	near(t, "correlation over an hour", firstCorrelation(scores(p, 1_000_000, 9)), p.Correlation(unit.Hour), 0.0003)
}

func TestShortMemoryGivesTheCorrelationAskedFor(t *testing.T) {
	p := Process{long: 40, short: shortFor(40, 0.995).Hours()}
	near(t, "correlation", p.Correlation(unit.Hour), 0.995, 1e-9)
}

// Memories fitted to buoys in 3-hour means by another program, on correlations alone: NDBC 46059
// 33.9 and 5.1 h, 46085 28.3/3.5, 44008 18.4/6.5, 44007 25.1/2.3, 41044 38.9/5.3.
func TestLongMemoriesOfBuoysAreThoseOfAnotherProgram(t *testing.T) {
	directory := dataset(t)
	for station, long := range map[string]float64{"46059_west_california_offshore_2000_2008": 33.9, "46085_gulf_of_alaska_2014_2020": 28.3, "44008_nantucket_2015_2020": 18.4,
		"44007_portland_me_1996_2017": 25.1, "41044_tropical_atlantic_ne_st_martin_2014_2020": 38.9} {
		r := buoy(t, directory+"/ndbc_"+station+".csv")
		table, err := TableOf(r)
		if err != nil {
			t.Fatal(err)
		}
		m := MemoryOf(r, table)
		t.Logf("%s: %.1f h and %.1f h", station[:5], m.Long.Hours(), m.Short.Hours())
		near(t, "ratio of long memories", m.Long.Hours()/long, 1, 0.05)
	}
}

func TestCorrelationsSkipGaps(t *testing.T) {
	z := scores(NewProcess(30*unit.Hour, 4*unit.Hour, unit.Hour), 300_000, 12)
	for i := range z {
		if i/50%3 == 0 {
			z[i] = math.NaN()
		}
	}
	near(t, "correlation over 6 h", correlations(z)[6], NewProcess(30*unit.Hour, 4*unit.Hour, unit.Hour).Correlation(6*unit.Hour), 0.02)
}
