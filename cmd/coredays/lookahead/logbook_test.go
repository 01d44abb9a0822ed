package lookahead

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/model/riglog"
	"coredays/scenario/rigfile"
)

// What crews write down is coarser than a diary: the shift log has lines to the quarter hour, with the parts of many
// core cycles in one line; what takes less than that is in none. The core table has times on deck to five minutes.

// crewsPapers are the papers that the crew of a diary would have.
func crewsPapers(t *testing.T, d *result.Diary) *riglog.Papers {
	t.Helper()
	var papers riglog.Papers
	var reading rigfile.Reading
	for name, data := range map[string]string{"cores.csv": coreTable(d), "log.csv": shiftLog(d)} {
		if err := reading.Read(&papers, name, []byte(data)); err != nil {
			t.Fatal(err)
		}
	}
	return &papers
}

const (
	minutes = "2006-01-02T15:04"
	quarter = 15 * time.Minute
)

func shiftLog(d *result.Diary) string {
	var out strings.Builder
	out.WriteString("from,to,what,site,hole,depth_mbsf\n")
	type line struct {
		from, to time.Time
		what     string
		place    result.Place
		depth    string
	}
	var list []line
	for i := range d.Entries {
		e := &d.Entries[i]
		what, depth := e.Kind.String(), ""
		if !math.IsNaN(float64(e.Bottom)) {
			depth = fmt.Sprintf("%.1f", float64(e.Bottom))
		}
		n := len(list) - 1
		switch e.Kind {
		case activity.Connection, activity.BenchWait, activity.CatwalkWait, activity.Sweep, activity.DrillOver:
			if n >= 0 && list[n].place == e.Place { // part of whatever goes on
				what = list[n].what
			}
		case activity.RunBarrel, activity.ShootPiston, activity.OrientationWait, activity.TemperatureStop, activity.PullPiston, activity.FetchCorer,
			activity.HandleCorer, activity.CutCore, activity.DropBarrel, activity.FetchBarrel, activity.HandleBarrel:
			what = "cored"
		}
		if n >= 0 && list[n].what == what && list[n].place == e.Place && what != activity.Breakdown.String() {
			list[n].to = e.To
			continue
		}
		list = append(list, line{e.From, e.To, what, e.Place, depth})
	}
	for _, l := range list {
		from, to := l.from.Round(quarter), l.to.Round(quarter)
		if !to.After(from) {
			continue
		}
		fmt.Fprintf(&out, "%s,%s,%q,%s,%s,%s\n", from.UTC().Format(minutes), to.UTC().Format(minutes), l.what, l.place.Site, l.place.Hole, l.depth)
	}
	return out.String()
}

func coreTable(d *result.Diary) string {
	var out strings.Builder
	out.WriteString("site,hole,core,type,top_depth_mbsf,cored_m,recovered_m,time_on_deck\n")
	for i := range d.Entries {
		e := &d.Entries[i]
		if c, known := coreOf(e); known {
			fmt.Fprintf(&out, "%s,%s,%d,%s,%.1f,%.1f,%.1f,%s\n", e.Place.Site, e.Place.Hole, c.number, c.letter, float64(e.Bottom), c.cored, c.up,
				e.To.Round(5*time.Minute).UTC().Format(minutes))
		}
	}
	return out.String()
}

// core is what a line of a diary notes of one.
type core struct {
	number    int
	letter    string
	cored, up float64
}

func coreOf(e *result.Entry) (c core, known bool) {
	n, _ := fmt.Sscanf(strings.NewReplacer(":", " ", ",", "").Replace(e.Note), "%d%1s %f m cut %f up", &c.number, &c.letter, &c.cored, &c.up)
	return c, n == 4
}
