package rates

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"coredays/model/rig"
	"coredays/scenario"
)

// Work that operators' reports time, each read as a line of a log, gives its own published rate: what a report gives in metres
// and hours comes back in metres an hour. Not read are those of which no single rate of the ship can be told: whole holes and
// legs (ODP Legs 121, 198, 202, IODP Expeditions 303, 320: cores, tools and failures in one figure), arrivals to spud (pipe,
// assembly and search for the mudline in one), logging and bit trips in one figure (Expedition 309), a day with two tools
// (Expedition 382), and a passage (Leg 192), which a log gives without its miles.
func TestTimedTripsOnRecordGiveTheirPublishedRates(t *testing.T) {
	for _, c := range []struct {
		metres, hours float64
		source        string
	}{
		{5020, 8.5, "ODP Prelim. Rept. 187: sea floor to rotary table 0045 to 0915"},
		{3635, 5.5, "IODP Exp 335 weekly report 6: 1015 to 1545, light assembly; 661 m/h"},
		{1731, 4.917, "IODP Exp 363 daily report, 30 October 2016: 0245 to 0740"},
		{3732.5, 8.25, "IODP Exp 354 daily report, 29 March 2015: 2120 to 0535"},
		{2669.3, 5.417, "IODP Exp 361 daily report, 29 February 2016: 0235 to 0800"},
	} {
		start := time.Date(2016, 2, 29, 2, 35, 0, 0, time.UTC)
		end := start.Add(time.Duration(c.hours * float64(time.Hour)))
		line := fmt.Sprintf("%s,%s,pulled pipe,S,A,%g,0\n", start.Format("2006-01-02 15:04:05"), end.Format("2006-01-02 15:04:05"), c.metres)
		r := Learn(scenario.BuiltInRates(), read(t, logHead+line), nil)
		stand := scenario.BuiltInRates()[rig.StandLength].Median()
		near(t, "m/h, "+c.source, found(t, r, rig.Tripping).Log[1]*stand*3600, c.metres/c.hours, 0.5)
	}
}

func TestTimedMovesOnRecordGiveTheirPublishedHours(t *testing.T) {
	for _, c := range []struct {
		from, to, what string
		rate           rig.Rate
		hours          float64
		source         string
	}{
		{"2004-10-29 11:55", "2004-10-29 12:50", "offset ship", rig.OffsetMove, 0.917, "IODP Proc. 303/306, ch. 107: clear of the sea floor in A to spud in B"},
		{"2009-05-10 04:00", "2009-05-10 05:40", "offset ship", rig.OffsetMove, 1.667, "operator's daily report, Exp 320: clear of the sea floor to the next spud"},
		{"2016-02-28 13:35", "2016-02-28 14:50", "offset ship", rig.OffsetMove, 1.25, "IODP Exp 361 daily report: clear of the sea floor in E to the start of F"},
		{"2013-08-28 02:30", "2013-08-28 03:00", "position ship", rig.Positioning, 0.5, "IODP Proc. 346, ch. 106: sea passage ended, thrusters down"},
	} {
		to, err := time.Parse("2006-01-02 15:04", c.to)
		if err != nil {
			t.Fatal(err)
		}
		then := to.Add(5 * time.Hour).Format("2006-01-02 15:04") // what comes last in a log counts as in hand
		r := Learn(scenario.BuiltInRates(), read(t, logHead+fmt.Sprintf("%s,%s,%s,S,B,,\n%s,%s,running pipe,S,B,0,3000\n", c.from, c.to, c.what, c.to, then)), nil)
		near(t, c.source, found(t, r, c.rate).Log[1]/3600, c.hours, 0.001)
	}
}

// Cores of which a report gives the first and last on deck, or a day's worth; the times between are
// even ones but for a minute, since times that are quite alike count as filled in later. Minutes a core by hand.
func TestTimedCoresOnRecordGiveTheirPublishedMinutes(t *testing.T) {
	for _, c := range []struct {
		letter  string
		cores   int
		hours   float64 // from the first on deck to the last
		minutes float64
		source  string
	}{
		{"H", 6, 7.167, 86, "IODP Exp 327 daily report, 31 August 2010: 0550 to 1300"},
		{"R", 11, 24, 144, "IODP Exp 354 daily report, March 2015: ten cores in a day"},
		{"R", 8, 14.58, 124.97, "IODP Exp 354 daily report, March 2015: seven cores from midnight to 1435"},
		{"R", 7, 24, 240, "IODP Exp 399 daily report, May 2023: six half advances in gabbro in a day"},
	} {
		var b strings.Builder
		b.WriteString("site,hole,core,type,top_depth_mbsf,cored_m,recovered_m,time_on_deck,water_depth_m\n")
		at := time.Date(2010, 8, 31, 0, 0, 0, 0, time.UTC)
		for i := range c.cores {
			fmt.Fprintf(&b, "S,A,%d,%s,%.1f,4.8,4,%s,3000\n", i+1, c.letter, 4.8*float64(i), at.Format("2006-01-02T15:04:05"))
			at = at.Add(time.Duration(c.hours/float64(c.cores-1)*float64(time.Hour)) + time.Duration(i%2*2-1)*time.Minute)
		}
		r := Learn(scenario.BuiltInRates(), read(t, b.String()), nil)
		if len(r.Cycles) != 1 || r.Cycles[0].N != c.cores-1 {
			t.Errorf("%s: cycles %+v, left out %v", c.source, r.Cycles, r.LeftOut)
			continue
		}
		near(t, "min, "+c.source, r.Cycles[0].Minutes[1], c.minutes, 1.01)
	}
}
