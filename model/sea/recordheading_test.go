package sea

import (
	"errors"
	"fmt"
	"runtime"
	"strings"
	"testing"
	"time"
	"unicode/utf16"
)

// aYear is a record of 366 days with a heading and rows made of a form: %t for the time, %h for the height, 2
// and 2.4 m by turns, of a unit of so many metres.
func aYear(heading, form string, metres float64) string {
	var text strings.Builder
	text.WriteString(heading + "\n")
	for hour := range 366 * 24 {
		at := newYear(2012).Add(time.Duration(hour) * time.Hour).Format("2006-01-02T15:04Z")
		height := fmt.Sprintf("%.6g", (2+0.4*float64(hour%2))/metres)
		text.WriteString(strings.NewReplacer("%t", at, "%h", height).Replace(form) + "\n")
	}
	return text.String()
}

// Sizes of units are those of model/unit, whose tests hold them against GNU units: a foot is 0.3048 m.
func TestHeightsAreReadInTheUnitOfTheirHeading(t *testing.T) {
	for heading, metres := range map[string]float64{
		"time,hs_m": 1, "time,Hs (metres)": 1, "time,hs": 1, "time,Hs [m] ": 1,
		"time,hs_ft": 0.3048, "time,Hs (feet)": 0.3048, "time,significant wave height [ft]": 0.3048, "time,Hs foot": 0.3048, "time,WVHT(FT)": 0.3048,
		"time,hs_cm": 0.01, "time,hs (mm)": 0.001, "time,hs_in": 0.0254, "time,hs (fathoms)": 1.8288,
		"#time,hs\n#UTC,ft": 0.3048, "time,hs\nUTC,cm": 0.01, "time,hs (ft)\n,[feet]": 0.3048,
		"\ufeff# exported by hand\ntime,hs_ft": 0.3048,
		"time (UTC),hs_ft":                     0.3048, "Timestamp [yyyy-mm-dd hh:mm],hs_ft": 0.3048,
	} {
		r, err := ReadRecord(strings.NewReader(aYear(heading, "%t,%h", metres)))
		if err != nil {
			t.Errorf("%q: %v", heading, err)
			continue
		}
		near(t, heading+", m", float64(r.Heights[100]), (2+2+2.4)/3, 0.15) // means of three
		told := strings.Join(r.Report.Sentences(), "\n")
		if metres != 1 && !strings.Contains(told, "are turned into metres") || heading == "time,hs" && !strings.Contains(told, "no unit is given with the heights: they are taken to be in metres") ||
			heading == "time,hs_m" && strings.Contains(told, "unit") {
			t.Errorf("%q is told as %q", heading, told)
		}
	}
}

func TestHeadingsThatCanBeMisreadAreRefusedWithTheirLine(t *testing.T) {
	for heading, want := range map[string]string{
		"time,Hs [yd]":           `the height is headed "Hs [yd]": wanted m, cm, mm, ft, in or fathoms`,
		"time,hs_km":             `the height is headed "hs_km"`,
		"time,hs_s":              `the height is headed "hs_s"`,
		"time,hs (significant)":  `the height is headed "hs (significant)"`,
		"time (local),hs":        `the time is headed "time (local)": wanted a date and time in UTC`,
		"time [s],hs":            `the time is headed "time [s]"`,
		"time_s,hs":              `the time is headed "time_s"`,
		"Date (dd/mm/yyyy),hs":   `the date is headed "Date (dd/mm/yyyy)": wanted a date in UTC`,
		"time,hs,tp (Hz)":        `the peak period is headed "tp (Hz)": wanted s`,
		"time,hs_m,hs_ft":        `columns 2 and 3 both tell the height, as "hs_m" and "hs_ft": leave one of them`,
		"time,time,hs":           `columns 1 and 2 both tell the time, as "time" and "time"`,
		"time,hs,tp,Tp (s)":      `columns 3 and 4 both tell the peak period`,
		"time,hs_m\nUTC,ft":      `the heights are in "m" by their heading and in "ft" by the line below it`,
		"# remark\n\ntime,hs_yd": `the height is headed "hs_yd"`,
	} {
		_, err := ReadRecord(strings.NewReader(aYear(heading, "%t,%h", 1)))
		m, is := errors.AsType[*Misread](err)
		wantLine := 1 + strings.Count(heading, "\n")
		if !is || !strings.Contains(err.Error(), want) || m.Line != wantLine {
			t.Errorf("%q: got %v (%+v), want %s", heading, err, m, want)
		}
	}
}

func TestOfTwoColumnsThatTellTheSameItIsSaidWhichIsTaken(t *testing.T) {
	r, err := ReadRecord(strings.NewReader(aYear("time,Hm0 (m),H13 (m)", "%t,%h,9", 1)))
	if err != nil {
		t.Fatal(err)
	}
	if told := strings.Join(r.Report.Sentences(), "\n"); !strings.Contains(told, `the height is taken from column "Hm0 (m)", not from "H13 (m)"`) {
		t.Errorf("told %q", told)
	}
}

func TestARecordThatIsNoTextSaysWhatItIs(t *testing.T) {
	whole := aYear("time,hs", "%t,%h", 1)
	wide := []byte("\xff\xfe")
	for _, u := range utf16.Encode([]rune(whole)) {
		wide = append(wide, byte(u), byte(u>>8))
	}
	for name, c := range map[string]struct {
		text string
		line int
		want string
	}{
		"UTF-16":     {string(wide), 0, "this is in UTF-16: save it as UTF-8"},
		"Latin-1":    {"# Bou\xe9e\n" + whole, 1, "this has the byte 0xE9 on this line"},
		"a workbook": {"PK\x03\x04\x14\x00" + whole, 0, "this is a workbook"},
		"NetCDF":     {"CDF\x01\x00\x00" + whole, 0, "this is a NetCDF file: save the table as CSV"},
		"NUL":        {whole + "\x00\n", 366*24 + 2, "this has a NUL byte on this line"},
		"empty":      {" \n", 0, "the file is empty"},
	} {
		_, err := ReadRecord(strings.NewReader(c.text))
		if m, is := errors.AsType[*Misread](err); !is || m.Line != c.line || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: got %v (%+v), want %s", name, err, m, c.want)
		}
	}
}

func TestWhyNoRowOfARecordIsOfUseIsToldByItsKind(t *testing.T) {
	for row, want := range map[string]string{
		"31/01/2012 06:00,2.5": "2 rows (first on line 2) have a time that can't be read and are left out: the first is a date with the day or the month first, which nobody can tell apart; " +
			"write times in UTC as 2012-01-31T06:00",
		"40939.25,2.5":              "the first is a number of days, as spreadsheets keep dates",
		"1327989600,2.5":            "the first is a number of seconds, as computers count them from 1970",
		"Jan 31 2012,2.5":           "the first is a date with its month in words",
		`2012-01-31T06:00,"2,5"`:    "2 rows (first on line 2) have a height that is no number and are left out: the first is a number with a comma, where commas divide the columns",
		"2012-01-31T06:00,2.5 m":    "the first is a number with something after it",
		"2012-01-31T06:00,rough":    "the first is words",
		"2012-01-31T06:00,2,5":      "2 rows (first on line 2) have more cells than there are headings and are left out (has a number a decimal comma",
		"2012-01-31T06:00,250":      "have a height below 0 or above 25 m",
		"root:x:0:0,root:/bin/bash": "the first is no date",
	} {
		_, err := ReadRecord(strings.NewReader("time,hs\n" + row + "\n" + row + "\n"))
		m, is := errors.AsType[*Misread](err)
		if !is || m.Line != 2 || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "root") {
			t.Errorf("%q: got %v (%+v), want %s", row, err, m, want)
		}
	}
}

// Where most rows are of no use, the few that are do not hide why.
func TestARecordTooShortForItsBadRowsSaysSo(t *testing.T) {
	text := aYear("time,hs", "13/01/2012 00:00,%h", 1) + "2012-01-01T00:00Z,2\n2012-01-01T01:00Z,2.1\n"
	_, err := ReadRecord(strings.NewReader(text))
	for _, want := range []string{"at least a year is wanted", "8784 rows (first on line 2) have a time that can't be read", "the day or the month first"} {
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v does not say %q", err, want)
		}
	}
}

func TestNoMessageRepeatsAFileThatIsNoRecord(t *testing.T) {
	for _, text := range []string{"root:x:0:0:root:/root:/bin/bash\n", "root,hs\n1,2\n", "root\x00", "root\xe9"} {
		if _, err := ReadRecord(strings.NewReader(text)); err == nil || strings.Contains(err.Error(), "root") {
			t.Errorf("%q is answered with %v", text, err)
		}
	}
}

// A few rows centuries apart are refused before room is made for the hours between.
func TestFewRowsFarApartTakeNoRoom(t *testing.T) {
	text := "time,hs\n1900-01-01T00:00Z,2\n1900-01-01T01:00Z,2.1\n1900-01-01T02:00Z,2.2\n2099-12-31T23:00Z,2.3\n"
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	_, err := ReadRecord(strings.NewReader(text))
	runtime.ReadMemStats(&after)
	room := after.TotalAlloc - before.TotalAlloc
	if err == nil || !strings.Contains(err.Error(), "at least a year is wanted") || room > 1<<20 {
		t.Errorf("%d bytes, %v", room, err)
	}
}
