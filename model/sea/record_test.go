package sea

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"coredays/model/unit"
)

// twoYears is a record with the rows given put between two hourly years of made-up heights; the
// first of them is on line 17534.
func twoYears(t testing.TB, rows ...string) (*Record, error) {
	t.Helper()
	text := string(madeUpText(t, 2, 1))
	return ReadRecord(strings.NewReader(text + strings.Join(rows, "\n") + "\n"))
}

func TestBadRowsAreLeftOutAndReportedWithTheirLine(t *testing.T) {
	const first = 17534
	for _, c := range []struct {
		name string
		rows []string
		want map[Trouble]Finding
	}{
		{"a time that is none", []string{"yesterday,2", "2012-13-01T00:00Z,2"}, map[Trouble]Finding{BadTime: {2, first}}},
		{"a day before its month", []string{"31/01/2012 00:00,2"}, map[Trouble]Finding{BadTime: {1, first}}},
		{"a year that is a slip", []string{"0212-01-02T00:00Z,2", "2912-01-02T00:00Z,2"}, map[Trouble]Finding{BadTime: {2, first}}},
		{"a word", []string{"2012-01-02T00:00Z,rough"}, map[Trouble]Finding{BadNumber: {1, first}}},
		{"fill codes", []string{"2012-01-02T00:00Z,99.00", "2012-01-02T01:00Z,999", "2012-01-02T02:00Z,-9", "2012-01-02T03:00Z,-999.9", "2012-01-02T04:00Z,9999",
			"2012-01-02T05:00Z,", "2012-01-02T06:00Z,NaN", "2012-01-02T07:00Z,MM", "2012-01-02T08:00Z", "2012-01-02T09:00Z,1e20"}, map[Trouble]Finding{FillCode: {10, first}}},
		{"impossible heights", []string{"2012-01-02T00:00Z,-0.3", "2012-01-02T01:00Z,31", "2012-01-02T02:00Z,2.1"}, map[Trouble]Finding{Impossible: {2, first}}},
		{"a time twice", []string{"2012-01-02T00:00Z,2", "2012-01-02T00:00Z,7"}, map[Trouble]Finding{Duplicate: {1, first + 1}}},
		{"no order", []string{"2012-01-03T02:00Z,2", "2012-01-03T01:00Z,2.1", "2012-01-03T03:00Z,2.2"}, map[Trouble]Finding{Unordered: {1, first + 1}}},
		{"a frozen day", hours("2012-01-02", 25, func(int) float64 { return 2.345 }), map[Trouble]Finding{Frozen: {25, first}}},
		{"half a frozen day", hours("2012-01-02", 12, func(int) float64 { return 2.345 }), nil},
		{"a decimal comma between commas", []string{"2012-01-02T00:00Z,2,31", "2012-01-02T01:00Z,2.4,", "2012-01-02T02:00Z,2.5, ,"}, map[Trouble]Finding{Overfull: {1, first}}},
		{"a quotation mark without its second", []string{"2012-01-02T00:00Z,\"2.3", "2012-01-02T01:00Z,2.4"}, map[Trouble]Finding{Torn: {1, first}}},
		{"a remark and an empty line", []string{"# tended on Tuesday", ""}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			r, err := twoYears(t, c.rows...)
			if err != nil {
				t.Fatal(err)
			}
			for trouble, found := range r.Report.Found {
				if want := c.want[Trouble(trouble)]; found != want {
					t.Errorf("%s: %+v, want %+v", troubleWords[trouble], found, want)
				}
			}
			told := strings.Join(r.Report.Sentences(), "\n")
			for trouble, f := range c.want {
				if want := fmt.Sprintf("(first on line %d) %s", f.FirstLine, troubleWords[trouble]); !strings.Contains(told, want) {
					t.Errorf("%q does not tell %q", told, want)
				}
			}
		})
	}
}

// hours are rows, one an hour, from a day on.
func hours(day string, n int, height func(int) float64) (rows []string) {
	at, _ := time.Parse("2006-01-02", day)
	for i := range n {
		rows = append(rows, fmt.Sprintf("%s,%.3f", at.Add(time.Duration(i)*time.Hour).Format("2006-01-02T15:04Z"), height(i)))
	}
	return rows
}

func TestTheFirstOfTwoHeightsAtOneTimeCounts(t *testing.T) {
	r, err := twoYears(t, "2012-02-02T00:00Z,2", "2012-02-02T00:00Z,7", "2012-02-02T01:00Z,2", "2012-02-02T02:00Z,2")
	if err != nil {
		t.Fatal(err)
	}
	near(t, "height, m", float64(r.Heights[len(r.Heights)-2]), 2, 1e-6)
}

// The 3-hour mean of 1, 2, 6 is 3, that of 2, 6, 6 an hour later 14/3; at the ends of a gap two of three hours do.
func TestHeightsAreMeansOfThreeHoursAndShortGapsAreFilled(t *testing.T) {
	rows := []string{"2012-02-02T00:00Z,1", "2012-02-02T01:00Z,2", "2012-02-02T02:00Z,6", "2012-02-02T03:00Z,6", "2012-02-02T07:00Z,6", "2012-02-02T08:00Z,6",
		"2012-02-02T13:00Z,4", "2012-02-02T14:00Z,4"}
	r, err := twoYears(t, rows...)
	if err != nil {
		t.Fatal(err)
	}
	from := len(r.Heights) - 15
	near(t, "mean of three", float64(r.Heights[from+1]), 3, 1e-6)
	near(t, "mean of the three an hour later", float64(r.Heights[from+2]), 14.0/3, 1e-6)
	near(t, "in a gap of three hours", float64(r.Heights[from+5]), 6, 1e-5)
	near(t, "at the end of a gap of four", float64(r.Heights[from+8]), 6, 1e-5)
	if h := r.Heights[from+11]; h == h {
		t.Errorf("a gap of four hours is filled with %g m", h)
	}
	if g := r.Report.Gaps; g != 2 { // that one, and from new year to the second of February
		t.Errorf("%d gaps, want 2", g)
	}
}

func TestColumnsAreKnownByManyHeadings(t *testing.T) {
	for name, c := range map[string]struct{ heading, row string }{
		"time and hs":                   {"time_utc,hs_m", "%Y-%m-%dT%H:%MZ,2.5"},
		"swh of a reanalysis":           {"valid_time,swh", "%Y-%m-%d %H:%M:00,2.5"},
		"significant wave height":       {"Timestamp;Significant Wave Height [m];Tp [s]", "%Y-%m-%d %H:%M;2,5;9,1"},
		"date beside time":              {"Date\tTime\tHm0 (m)", "%Y-%m-%d\t%H:%M\t2.5"},
		"columns of a buoy centre":      {"#YY  MM DD hh mm WDIR WSPD GST  WVHT   DPD", "%Y %m %d %H %M 120  8.1 9.9  2.50  9.10"},
		"a buoy centre without minutes": {"YYYY MM DD hh WVHT DPD", "%Y %m %d %H 2.50 9.10"},
		"feet":                          {"time,Hs (ft)", "%Y-%m-%dT%H:%MZ,8.2021"},
		"words above":                   {"Exported by hand\n\ntime,depth,VHM0", "%Y-%m-%dT%H:%M:00Z,120,2.5"},
		"an offset from UTC":            {"time,hs", "%Y-%m-%dT%H:%M+00:00,2.5"},
		"quotes":                        {`"time","hs"`, `"%Y-%m-%d %H:%M","2.5"`},
	} {
		t.Run(name, func(t *testing.T) {
			var text strings.Builder
			text.WriteString(c.heading + "\n")
			for hour := range 366 * 24 {
				at := newYear(2012).Add(time.Duration(hour) * time.Hour)
				row := strings.NewReplacer("%Y", at.Format("2006"), "%m", at.Format("01"), "%d", at.Format("02"), "%H", at.Format("15"), "%M", at.Format("04")).Replace(c.row)
				if hour%2 > 0 { // heights that do not freeze
					row = strings.NewReplacer("2.5", "2.6", "2,5", "2,6", "8.20", "8.53").Replace(row)
				}
				text.WriteString(row + "\n")
			}
			r, err := ReadRecord(strings.NewReader(text.String()))
			if err != nil {
				t.Fatal(err)
			}
			if !r.Start.Equal(newYear(2012)) || len(r.Heights) != 366*24 || r.Report.Covered() != 1 {
				t.Errorf("starts %v with %d hours, %+v", r.Start, len(r.Heights), r.Report)
			}
			near(t, "height, m", float64(r.Heights[100]), 2.55, 0.03)
			if strings.Contains(c.row, "9") {
				near(t, "period factor", r.PeriodFactor, 9.1/math.Sqrt(2.55), 0.2)
			}
		})
	}
}

func TestARecordThatCannotBeUsedSaysWhy(t *testing.T) {
	year := func(every, rows int) string {
		text := bytes.NewBufferString("time,hs\n")
		for i := range rows {
			fmt.Fprintf(text, "%s,%.2f\n", newYear(2012).Add(time.Duration(i*every)*time.Hour).Format("2006-01-02T15:04Z"), 2+float64(i%7)/10)
		}
		return text.String()
	}
	for name, c := range map[string]struct{ text, want string }{
		"nothing":       {"", "the file is empty"},
		"no headings":   {"2012-01-01T00:00Z,2\n", "no line of headings"},
		"no height":     {"time,wind\n2012-01-01T00:00Z,2\n", "no line of headings"},
		"no rows":       {"time,hs\n", "no row has both"},
		"only fill":     {"time,hs\n2012-01-01T00:00Z,99\n", "no row has both"},
		"one row":       {"time,hs\n2012-01-01T00:00Z,2\n", "1 row usable"},
		"half a year":   {year(1, 4380), "at least a year"},
		"daily heights": {year(24, 800), "24 h apart"},
		"mostly a gap":  {year(1, 2000) + "2014-01-01T00:00Z,2\n", "at least a year"},
	} {
		if _, err := ReadRecord(strings.NewReader(c.text)); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, want %q", name, err, c.want)
		}
	}
}

func TestARecordWithoutASeasonSaysWhichIsMissing(t *testing.T) {
	var rows []string
	for _, line := range strings.Split(string(madeUpText(t, 3, 1)), "\n") {
		if !strings.Contains(line, "-06-") && !strings.Contains(line, "-07-") {
			rows = append(rows, line)
		}
	}
	r, err := ReadRecord(strings.NewReader(strings.Join(rows, "\n")))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := NewLikeness(r, "x"); err == nil || !strings.Contains(err.Error(), "June") {
		t.Errorf("%v", err)
	}
}

func TestThreeHourlyHeightsAreTakenAsMeansAndJoined(t *testing.T) {
	r, err := ReadRecord(bytes.NewReader(madeUpText(t, 2, 3)))
	if err != nil {
		t.Fatal(err)
	}
	if r.Report.Interval != 3*unit.Hour || r.Report.Covered() != 1 {
		t.Errorf("%+v", r.Report)
	}
	a, b := float64(r.Heights[300]), float64(r.Heights[303])
	near(t, "an hour on", float64(r.Heights[301]), math.Exp(math.Log(a)*2/3+math.Log(b)/3), 1e-5)
}

func TestMonthlyFiguresAreThoseOfTheHeights(t *testing.T) {
	r := madeUp(t, 3)
	c := r.Monthly("made up")
	var n, sum float64
	for i, h := range r.Heights {
		if r.at(i).Month() == time.May {
			n, sum = n+1, sum+float64(h)
		}
	}
	near(t, "mean of May, m", float64(c.Mean[4]), sum/n, 1e-9)
	if err := c.Check(); err != nil {
		t.Error(err)
	}
}

func FuzzReadRecord(f *testing.F) {
	f.Add("time,hs\n2012-01-01T00:00Z,2\n2012-01-01T01:00Z,2\n")
	f.Add("#YY MM DD hh mm WVHT\n#yr mo dy hr mn m\n2012 01 01 00 00 2.5\n")
	f.Add("Date;Time;Hs\n2012-01-01;00:00;2,5\n\"\n")
	f.Add("year,month,day,hour,hs\n99,1,1,0,2\n2099,12,31,23,2\n")
	f.Fuzz(func(t *testing.T, text string) {
		r, err := ReadRecord(strings.NewReader(text))
		if err != nil {
			return
		}
		if _, err := NewLikeness(r, "fuzz"); err == nil && r.Monthly("fuzz").Check() != nil {
			t.Error("a record that can be used has an impossible climate")
		}
	})
}
