package outputtest

import (
	"bytes"
	"fmt"
	"math"
	"testing"
	"time"

	"coredays/model/sea"
	"coredays/model/unit"
)

// OneClimate is the sea of an invented climate with limits of work.
func OneClimate(t *testing.T) *sea.Study {
	t.Helper()
	var c sea.Climate
	for m := range c.Mean {
		c.Mean[m], c.Variation[m] = unit.Length(2.4+0.9*math.Cos(2*math.Pi*float64(m)/12)), 0.4
	}
	table, err := sea.NewTable(c)
	if err != nil {
		t.Fatal(err)
	}
	return sea.Question{Place: "SITE-1", Source: "invented", Notes: []string{"nobody was there"}, Table: table, Years: 20, Seed: 3,
		Course: sea.ByProcess(sea.NewProcess(sea.LongMemory, sea.ShortMemory, unit.Hour)),
		Limits: []sea.Limit{{Name: "pipe handling", Most: 4.88}, {Name: "piston coring", Most: 4}}, Coring: 1}.Study(t.Context())
}

// OneRecord is the sea of an invented record of two years, without limits.
func OneRecord(t *testing.T) *sea.Study {
	t.Helper()
	var text bytes.Buffer
	text.WriteString("time,hs\n")
	for i := range 2 * 8766 {
		x := float64(i)
		hs := 2 + 0.5*math.Cos(2*math.Pi*x/8766) + 0.7*math.Sin(x/37) + 0.5*math.Sin(x/53+2)
		fmt.Fprintf(&text, "%s,%.2f\n", time.Date(2011, 1, 1, i, 0, 0, 0, time.UTC).Format("2006-01-02T15:04Z"), hs)
	}
	r, err := sea.ReadRecord(&text)
	if err != nil {
		t.Fatal(err)
	}
	l, err := sea.NewLikeness(r, "invented")
	if err != nil {
		t.Fatal(err)
	}
	return sea.Question{Place: "buoy.csv", Source: "an invented record", Notes: l.Notes, Course: l.Course, Table: l.Table, Likeness: l, Years: 10, Seed: 3, Coring: -1}.Study(t.Context())
}
