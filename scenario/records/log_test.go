package records

import (
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/scenario/fault"
)

// twoNamed is a plan of two sites.
func twoNamed() *plan.Plan { return &plan.Plan{Sites: []plan.Site{{Name: "TR-01"}, {Name: "TR-02"}}} }

func readLog(text string) (*result.Log, error) {
	return ReadLog("log.csv", strings.NewReader(text), twoNamed())
}

func TestALogIsReadWithColumnsInAnyOrderAndThoseOfOthersPassedOver(t *testing.T) {
	log, err := readLog("\ufeffnote,depth_mbsf,hole,site,from,stands\n# a remark\n\"fine, so far\",,,,2031-05-01T06:00,\n,,A,TR-01,2031-05-02 07:15,12\n,9.5,A,TR-01,2031-05-02T09:15:30+02:00,\n")
	if err != nil {
		t.Fatal(err)
	}
	if len(log.Lines) != 3 || log.File != "log.csv" {
		t.Fatalf("%d lines of %s", len(log.Lines), log.File)
	}
	if l := log.Lines[0]; l.Site != "" || !math.IsNaN(float64(l.Depth)) {
		t.Errorf("under way: %+v", l)
	}
	if l := log.Lines[2]; l.Site != "TR-01" || l.Hole != "A" || l.Depth != 9.5 || !l.From.Equal(time.Date(2031, 5, 2, 7, 15, 30, 0, time.UTC)) {
		t.Errorf("read as %+v", l)
	}
}

func TestEachFaultOfALogIsToldWithItsLine(t *testing.T) {
	_, err := readLog("from,site,hole,depth_mbsf\n" +
		"yesterday,TR-01,A,1\n" +
		"2031-05-02T07:00,TR-1,A,1\n" +
		"2031-05-02T08:00,TR-01,A,shallow\n" +
		"2031-05-02T09:00,TR-01,A,1\n" +
		"2031-05-02T08:30,TR-01,A,6000\n" +
		"2031-05-02T10:00,,B,1\n" +
		"2031-05-02T11:00,TR-01,B\n")
	faults, ok := errors.AsType[fault.List](err)
	if !ok {
		t.Fatalf("got %v", err)
	}
	want := []string{
		`log.csv:2: from "yesterday": wanted a time in UTC, such as 2027-03-18T03:00 (this is no date)`,
		`log.csv:3: site "TR-1": there is no such site; did you mean "TR-01"?`,
		`log.csv:4: depth_mbsf "shallow": wanted a number from 0 to 5000`,
		`log.csv:6: from "2031-05-02T08:30": wanted a time not before 2031-05-02T09:00, when the line above begins; depth_mbsf "6000": wanted a number from 0 to 5000`,
		`log.csv:7: site "": wanted the site of hole "B"`,
		`log.csv:8: 3 cells, where the heading has 4`,
	}
	if got := strings.Split(faults.Error(), "\n"); len(got) != len(want) {
		t.Fatalf("%d faults, want %d:\n%s", len(got), len(want), faults.Error())
	} else {
		for i := range want {
			if got[i] != want[i] {
				t.Errorf("got  %s\nwant %s", got[i], want[i])
			}
		}
	}
}

func TestALogWithoutItsColumnsOrWithoutLinesIsRefused(t *testing.T) {
	for text, want := range map[string]string{
		"":                                  "log.csv: a heading with the columns from, site, hole, depth_mbsf (this file is empty)",
		"from,site\n":                       "log.csv:1: the heading has no column hole, depth_mbsf",
		"from,site,hole,depth_mbsf\n":       "log.csv: there is no line below the heading",
		"from,site,hole,depth_mbsf\n# no\n": "log.csv: there is no line below the heading",
		"from,site,hole,depth_mbsf\n\"2031-05-01T06:00,,,\n": "log.csv:2: extraneous or missing \" in quoted-field",
	} {
		if _, err := readLog(text); err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%q: got %v, want %s", text, err, want)
		}
	}
}

func TestAHoleOfALogGetsNoShallower(t *testing.T) {
	log, err := readLog("from,site,hole,depth_mbsf\n" +
		"2031-05-02T07:00,TR-01,A,0\n" +
		"2031-05-02T08:00,TR-01,A,146\n" +
		"2031-05-02T09:00,TR-01,B,5\n" + // another hole
		"2031-05-02T10:00,TR-02,A,5\n" + // of another site
		"2031-05-02T11:00,TR-01,A,136\n" + // a joint counted wrong
		"2031-05-02T12:00,TR-01,A,\n" +
		"2031-05-02T13:00,TR-01,A,0\n" + // begun again
		"2031-05-02T14:00,TR-01,A,5\n")
	if err != nil {
		t.Fatal(err)
	}
	notes := strings.Join(log.Notes, "\n")
	for _, want := range []string{"hole A at site TR-01 is 146 m deep on line 3 and 136 m on line 6", "hole A at site TR-01 is 136 m deep on line 6 and 0 m on line 8"} {
		if strings.Count(notes, want) != 1 {
			t.Errorf("%q does not say %q once", notes, want)
		}
	}
	_, err = readLog("from,site,hole,depth_mbsf\n" +
		"2031-05-02T07:00,TR-01,A,146\n" +
		"2031-05-02T08:00,TR-01,B,2\n" +
		"2031-05-02T09:00,TR-01,A,\n" +
		"2031-05-02T10:00,TR-01,A,5\n" +
		"2031-05-02T11:00,TR-01,A,150\n")
	const want = `log.csv:5: depth_mbsf "5": wanted at least the 146 m that hole A has on line 2, or 0 where it is begun again`
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

func FuzzReadLog(f *testing.F) {
	f.Add("from,site,hole,depth_mbsf\n2031-05-02T07:00,TR-01,A,1\n")
	f.Add("from,site,hole,depth_mbsf\n2031-05-02T07:00,TR-01,A,1\n2030-05-02T07:00,,\"A,1\n")
	f.Fuzz(func(t *testing.T, text string) {
		log, err := readLog(text)
		if err != nil {
			return
		}
		for i, l := range log.Lines {
			if i > 0 && l.From.Before(log.Lines[i-1].From) {
				t.Errorf("line %d begins before the one above it", i)
			}
		}
		log.At("TR-01")
	})
}

func TestALogFromASpreadsheetIsReadWhateverDividesItsColumns(t *testing.T) {
	want, err := readLog("from,site,hole,depth_mbsf\n2031-05-02T07:00,TR-01,A,9.5\n")
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"\ufeffFrom;Site;Hole;Depth_mbsf\r\n2031-05-02 07:00;TR-01;A;9,5\r\n;;;\r\n", "from\tsite\thole\tdepth_mbsf\n# 9,5\n2031-05-02T07:00\tTR-01\tA\t9.5\n",
		"# kept by hand; badly\n\nfrom,site,hole,depth_mbsf\n,,,\n2031-05-02T07:00:00Z,TR-01,A,9.5\n,\n"} {
		got, err := readLog(text)
		if err != nil || len(got.Lines) != 1 || got.Lines[0] != want.Lines[0] {
			t.Errorf("%q is read as %+v, %v", text, got, err)
		}
	}
}

func TestOfALogOfAnotherExpeditionAFewFaultsAreTold(t *testing.T) {
	_, err := readLog("from,site,hole,depth_mbsf\n" + strings.Repeat("2031-05-02T07:00,ELSEWHERE,A,9.5\n", 500))
	if lines := strings.Split(err.Error(), "\n"); len(lines) != mostFaults+1 || lines[mostFaults] != "log.csv: and 480 more lines" {
		t.Errorf("%d lines, the last %q", len(lines), lines[len(lines)-1])
	}
}

func TestWhatIsHardlyMeantInALogIsNoted(t *testing.T) {
	p := twoNamed()
	p.Sails, p.SeaDays = time.Date(2031, 5, 1, 0, 0, 0, 0, time.UTC), 20*unit.Day
	p.Sites[0].Items = []plan.Item{{Name: "A"}}
	for text, want := range map[string]string{
		"2031-05-02T07:00,TR-01,A,0\n2031-05-03T07:00,TR-01,A,90\n":  "",
		"2030-05-02T07:00,TR-01,A,0\n":                               "it goes from 2030-05-02 to 2030-05-02, and by the scenario the ship is at sea from 2031-05-01 to 2031-05-21",
		"2031-05-02T07:00,TR-01,A,4.1\n":                             "at site TR-01 it begins with hole A 4.1 m deep: days count from that line, not from the arrival",
		"2031-05-02T07:00,TR-01,AA,0\n2031-05-03T07:00,TR-01,AA,9\n": `site TR-01 has no hole or task "AA" in the scenario`,
	} {
		log, err := ReadLog("log.csv", strings.NewReader("from,site,hole,depth_mbsf\n"+text), p)
		if err != nil || strings.Join(log.Notes, "\n") != want {
			t.Errorf("%q: got %q, %v, want %q", text, log.Notes, err, want)
		}
	}
}
