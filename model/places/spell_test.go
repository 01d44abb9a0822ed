package places

import (
	"math"
	"testing"
	"time"

	"coredays/model/chance"
	"coredays/model/geo"
	"coredays/model/unit"
)

var philippineSea = geo.Position{Latitude: 20, Longitude: 130}

// share is that of the hours of a month in which a place is closed, over many years, with its standard error
// over the years.
func share(t *testing.T, y *Year, month time.Month, years int) (mean, sigma float64) {
	t.Helper()
	sum, squares := 0.0, 0.0
	for n := range years {
		stream := chance.Replication(1, n)
		from := time.Date(2030, month, 1, 0, 0, 0, 0, time.UTC)
		to := from.AddDate(0, 1, 0)
		closed := 0.0
		for at := from; at.Before(to); {
			shut, until, found := y.At(stream, at)
			if !found || until.After(to) {
				until = to
			}
			if !until.After(at) {
				t.Fatalf("from %v until %v", at, until)
			}
			if shut {
				closed += until.Sub(at).Hours()
			}
			at = until
		}
		part := closed / to.Sub(from).Hours()
		sum, squares = sum+part, squares+part*part
	}
	mean = sum / float64(years)
	return mean, math.Sqrt((squares/float64(years) - mean*mean) / float64(years))
}

// Storms of the month before reach into a month and its last ones beyond it, so months with like neighbours are
// held: at 20 N 130 E August to October have 0.925, 0.85 and 0.975 storms.
func TestSpellsCloseThePlaceForTheShareOfTheFrequencies(t *testing.T) {
	y := YearAt(philippineSea)
	mean, sigma := share(t, y, time.September, 4000)
	want := y.Closed(time.September)
	if math.Abs(mean-want) > 4*sigma || sigma > 0.003 {
		t.Errorf("closed for %.4f ± %.4f of September, want %.4f", mean, sigma, want)
	}
	if mean, _ := share(t, y, time.February, 1000); mean > 0.01 {
		t.Errorf("closed for %.4f of February", mean)
	}
}

func TestIceClosesItsMonthsAndNoOthers(t *testing.T) {
	y := &Year{}
	y.Ice[time.August-1], y.Ice[time.September-1], y.Ice[time.July-1] = IceAsARule, IceAsARule, IceAtEdge
	at := time.Date(2030, time.July, 20, 5, 0, 0, 0, time.UTC)
	if shut, until, found := y.At(1, at); shut || !found || !until.Equal(time.Date(2030, time.August, 1, 0, 0, 0, 0, time.UTC)) {
		t.Errorf("in July: %v until %v", shut, until)
	}
	if shut, until, found := y.At(1, at.AddDate(0, 1, 0)); !shut || !found || !until.Equal(time.Date(2030, time.October, 1, 0, 0, 0, 0, time.UTC)) {
		t.Errorf("in August: %v until %v", shut, until)
	}
	for m := range y.Ice {
		y.Ice[m] = IceAsARule
	}
	if shut, _, found := y.At(1, at); !shut || found || y.Open() {
		t.Error("ice all the year opens")
	}
	if _, _, found := (&Year{}).At(1, at); found {
		t.Error("something closes a place where nothing does")
	}
}

func TestTheSameMomentMeetsTheSameSpellFromWhereverItIsLookedFor(t *testing.T) {
	y := YearAt(philippineSea)
	for n := range 300 {
		stream := chance.Replication(7, n)
		from := time.Date(2031, time.July, 1, 0, 0, 0, 0, time.UTC)
		shut, until, _ := y.At(stream, from)
		for h := 0; h < 24*120; h += 5 {
			at := from.Add(time.Duration(h) * time.Hour)
			for !at.Before(until) {
				shut, until, _ = y.At(stream, until)
			}
			if again, end, _ := y.At(stream, at); again != shut || !end.Equal(until) {
				t.Fatalf("replication %d at %v: %v until %v, from before %v until %v", n, at, again, end, shut, until)
			}
		}
	}
}

func TestNeighboursMeetTheSameStorms(t *testing.T) {
	a, b := YearAt(geo.Position{Latitude: 20.5, Longitude: 130.5}), YearAt(geo.Position{Latitude: 22, Longitude: 131.5})
	if a.Key != b.Key || a.Key == YearAt(geo.Position{Latitude: 20.5, Longitude: 136}).Key {
		t.Error("regions of 5 degrees share their storms, and no others")
	}
}

// Mean 1.25: the chance of none is 0.2865, of at most one 0.6446, of at most two 0.8685 (e^-1.25 times 1, 2.25 and
// 3.03125).
func TestPoissonNumbersByHand(t *testing.T) {
	for u, want := range map[float64]int{0.01: 0, 0.286: 0, 0.287: 1, 0.644: 1, 0.645: 2, 0.868: 2, 0.869: 3} {
		if got := poisson(1.25, u); got != want {
			t.Errorf("%g gives %d, want %d", u, got, want)
		}
	}
}

// By hand for August at 19 N 129 E: 1.0 storm, there for 24 h (see grid_test.go), with a day before and half a day
// after 60 h; 1 - exp(-1 × 2.5 d / 31 d) is 7.75 %.
func TestTheShareClosedByHand(t *testing.T) {
	y := YearAt(geo.Position{Latitude: 19, Longitude: 129})
	if lasts := y.Cyclones[7].Lasts(); lasts != 60*unit.Hour {
		t.Errorf("%v h", lasts.Hours())
	}
	if closed := y.Closed(time.August); math.Abs(closed-0.0775) > 0.0001 {
		t.Errorf("closed for %.4f of August", closed)
	}
}
