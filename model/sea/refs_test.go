package sea

import (
	"math"
	"os"
	"path/filepath"
	"sync"
	"testing"
)

// dataset is the directory of the buoy records; the test is skipped where it is not at hand.
func dataset(t *testing.T) string {
	t.Helper()
	directory := os.Getenv("COREDAYS_DATA")
	if directory == "" {
		t.Skip("COREDAYS_DATA is not set: the buoy records are not at hand")
	}
	return filepath.Join(directory, "waves")
}

// buoys are the NOAA NDBC records by their file names, read once.
var buoys = struct {
	sync.Mutex
	records map[string]*Record
}{records: map[string]*Record{}}

func buoy(t *testing.T, path string) *Record {
	t.Helper()
	buoys.Lock()
	defer buoys.Unlock()
	if r := buoys.records[path]; r != nil {
		return r
	}
	file, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	r, err := ReadRecord(file)
	if err != nil {
		t.Fatal(path, err)
	}
	buoys.records[path] = r
	return r
}

var seasonNames = map[string]Season{"3h_all": AllYear, "3h_DJF": DJF, "3h_MAM": MAM, "3h_JJA": JJA, "3h_SON": SON}

// The reference figures were worked out from the same records by another program: shares, mean
// spells and waits of 3-hour means. It counts ways up and down apart, and gaps may differ by an hour, so
// spells and waits agree within 3 %.
func TestSpellsAndWaitsAgreeWithFiguresOfAnotherProgram(t *testing.T) {
	directory := dataset(t)
	worst := map[string]float64{}
	for _, cell := range readRecords(t, filepath.Join(directory, "refs_persistence.csv")) {
		season, found := seasonNames[cell["period"]]
		q := cell.number(t, "exceed")
		if !found || q < 0.01 || q > 0.97 || cell.number(t, "n_upcross") < 30 {
			continue
		}
		r := buoy(t, filepath.Join(directory, cell["station"]+".csv"))
		tally := NewTally(BySeason, []float64{cell.number(t, "threshold_m")})
		tally.Add(r.Start, r.Heights)
		s := tally.At(0, int(season))
		off := func(what string, got, want, most float64) {
			e := math.Abs(got - want)
			if what != "share" {
				e /= want
			}
			worst[what] = max(worst[what], e)
			if e > most {
				t.Errorf("%s %s %s m: %s %.4g, reference %.4g", cell["station"][5:10], cell["period"], cell["threshold_m"], what, got, want)
			}
		}
		off("share", s.ShareAbove(), q, 0.001)
		off("above", s.MeanAbove(), cell.number(t, "mean_above_h"), 0.03)
		off("below", s.MeanBelow(), cell.number(t, "mean_below_h"), 0.03)
		off("wait12", s.MeanWait(0), cell.number(t, "wait12_mean"), 0.03)
		off("wait24", s.MeanWait(1), cell.number(t, "wait24_mean"), 0.03)
		off("wait48", s.MeanWait(2), cell.number(t, "wait48_mean"), 0.03)
		p90, _ := s.CalmAt(0.9)
		off("calm P90", p90, cell.number(t, "below_p90_h"), 0.03)
	}
	t.Log(worst)
}
