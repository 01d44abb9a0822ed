package sea

import (
	"bytes"
	"fmt"
	"math"
	"testing"
	"time"

	"coredays/model/chance"
	"coredays/model/unit"
)

func newYear(year int) time.Time { return time.Date(year, 1, 1, 0, 0, 0, 0, time.UTC) }

// madeUp is an invented record: a sea with a season, made by a process, hourly from a new year on.
func madeUp(t testing.TB, years int) *Record {
	t.Helper()
	r, err := ReadRecord(bytes.NewReader(madeUpText(t, years, 1)))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// madeUpText is the file of an invented record, a row every so many hours.
func madeUpText(t testing.TB, years, every int) []byte {
	t.Helper()
	c := flat(1, 0.4)
	for m := range 12 {
		c.Mean[m] = unit.Length(2.2 + 0.8*math.Cos(2*math.Pi*float64(m)/12))
	}
	table := tableOf(t, c)
	var s Series
	s.Begin(ByProcess(NewProcess(30*unit.Hour, 4*unit.Hour, unit.Hour)), chance.Replication(7, 0), newYear(2010))
	var text bytes.Buffer
	text.WriteString("time,hs (m)\n")
	for hour := 0; hour < years*8766; hour += every {
		fmt.Fprintf(&text, "%s,%.3f\n", newYear(2010).Add(time.Duration(hour)*time.Hour).Format("2006-01-02T15:04Z"), s.Height(hour, table))
	}
	return text.Bytes()
}

func likenessOf(t testing.TB, years int) *Likeness {
	t.Helper()
	l, err := NewLikeness(madeUp(t, years), "made up")
	if err != nil {
		t.Fatal(err)
	}
	return l
}
