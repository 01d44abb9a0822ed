package scenario

import (
	"bytes"
	"errors"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"coredays/scenario/fault"
)

// waveRecord is an invented record of so many hours.
func waveRecord(hours int) []byte {
	var text bytes.Buffer
	text.WriteString("time,hs,tp\n")
	for i := range hours {
		at := time.Date(2011, 1, 1, i, 0, 0, 0, time.UTC)
		hs := 2 + 0.8*math.Sin(float64(i)/9) + 0.7*math.Sin(float64(i)/31)
		fmt.Fprintf(&text, "%s,%.2f,%.1f\n", at.Format("2006-01-02T15:04Z"), hs, 7*math.Sqrt(hs))
	}
	return text.Bytes()
}

// withRecord opens the base scenario with a record of the sea at its first two sites.
func withRecord(t *testing.T, weather string, record []byte) (string, error) {
	t.Helper()
	folder := t.TempDir()
	text := strings.ReplaceAll(readTestFile(t, "broken/base.yaml"), "weather: {climate: built in}", weather)
	for name, data := range map[string][]byte{"plan.yaml": []byte(text), "buoy.csv": record} {
		if err := os.WriteFile(filepath.Join(folder, name), data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	p, err := Open(filepath.Join(folder, "plan.yaml"))
	if err != nil {
		return "", err
	}
	s := p.Sites[0]
	if s.Likeness == nil || s.Climate.Check() != nil || s.Climate.Source != "the record buoy.csv" {
		t.Errorf("likeness %v, climate %+v", s.Likeness, s.Climate)
	}
	return strings.Join(p.Warnings, "\n"), nil
}

func TestARecordOfOnesOwnBesideTheScenarioMakesTheSea(t *testing.T) {
	record := append(waveRecord(2*8766), "2013-02-01T00:00Z,99\nlast week,2\n"...)
	warnings, err := withRecord(t, "weather: {record: buoy.csv}", record)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"buoy.csv: record from 2011-01-01", "1 row (first on line 17534) hold a fill code", "1 row (first on line 17535) have a time that can't be read",
		"buoy.csv: limits of heave count with its peak periods, in the middle 7 s", "too few for pieces"} {
		if strings.Count(warnings, want) != 1 {
			t.Errorf("%q does not say %q once", warnings, want)
		}
	}
}

func TestAnUnusableRecordIsAFaultOnItsLine(t *testing.T) {
	for name, c := range map[string]struct {
		weather string
		record  []byte
		want    string
	}{
		"too short":      {"weather: {record: buoy.csv}", waveRecord(4000), "at least a year is wanted"},
		"no record":      {"weather: {record: none.csv}", nil, "can't be read"},
		"no headings":    {"weather: {record: buoy.csv}", []byte("1,2,3\n"), "no line of headings"},
		"a folder":       {"weather: {record: .}", nil, "can't be read"},
		"two of a kind":  {"weather: {record: buoy.csv, climate: built in}", nil, "not two of them"},
		"no name at all": {`weather: {record: ""}`, nil, "a name that is not empty"},
	} {
		_, err := withRecord(t, c.weather, c.record)
		var fault fault.Fault
		if !errors.As(err, &fault) || fault.Line == 0 || !strings.HasPrefix(fault.Path, "sites[0].weather") || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
