package rates

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/scenario"
	"coredays/scenario/rigfile"
)

// read reads tables of an invented ship.
func read(t *testing.T, tables ...string) *riglog.Papers {
	t.Helper()
	var p riglog.Papers
	for i, text := range tables {
		if err := new(rigfile.Reading).Read(&p, fmt.Sprintf("%d.csv", i), []byte(text)); err != nil {
			t.Fatal(err)
		}
	}
	return &p
}

const logHead = "from,to,what,site,hole,bit_from_m,bit_to_m\n"

func found(t *testing.T, r *Result, of rig.Rate) *Rate {
	t.Helper()
	x, ok := r.Find(of)
	if !ok {
		t.Fatalf("nothing was learned of %s", of.Of().Key)
	}
	return x
}

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.6g, want %.6g", what, got, want)
	}
}

// 298 m in 1.5 h in the hole (operator's daily report, Exp 320) is 199 m/h, 7.0 stands/h.
func TestATripInTheHoleIsARateOfItsOwn(t *testing.T) {
	r := Learn(scenario.BuiltInRates(), read(t, logHead+"2009-05-10 02:30,2009-05-10 04:00,pulled out of hole,U1336,A,4583,4285\n"), nil)
	near(t, "stands/h in the hole", found(t, r, rig.TrippingInHole).Log[1]*3600, 6.97, 0.005)
}

// A trip down, by hand: 100 stands of 28.5 m to 2850 m in 6 h. Five fillings of 3 min and strapping of 100 stands at
// 0.7 min leave 6 h - 15 min - 70 min = 4.583 h: 21.82 stands/h. The second trip is strapped no more: 5.25 h - 0.25 h.
func TestStrappingAndFillingAreNoPartOfTheTripRate(t *testing.T) {
	r := Learn(scenario.BuiltInRates(), read(t, logHead+
		"2027-03-01 00:00,2027-03-01 06:00,running pipe,S,A,0,2850\n"+
		"2027-03-02 00:00,2027-03-02 05:15,running pipe,S,B,0,2850\n"), nil)
	p := found(t, r, rig.Tripping).Points
	near(t, "first trip", p[0].Y*3600, 100/(6-0.25-70.0/60), 1e-6)
	near(t, "second trip", p[1].Y*3600, 100/5.0, 1e-6)
}

// A trip that a storm and a repair divide is one trip of its working hours.
func TestWeatherAndRepairsAreTakenOutOfATrip(t *testing.T) {
	r := Learn(scenario.BuiltInRates(), read(t, logHead+
		"2027-03-01 00:00,2027-03-01 02:00,pulling pipe,S,A,2850,\n"+
		"2027-03-01 02:00,2027-03-01 12:00,wait on weather,S,A,,\n"+
		"2027-03-01 12:00,2027-03-01 13:00,repair,S,A,,\n"+
		"2027-03-01 13:00,2027-03-01 16:00,pulling pipe,S,A,,0\n"+
		"2027-03-01 16:00,2027-03-01 17:00,lay down bha,S,A,,\n"), nil)
	x := found(t, r, rig.Tripping)
	if x.N != 1 {
		t.Fatalf("%d trips", x.N)
	}
	near(t, "stands/h", x.Log[1]*3600, 100.0/5, 1e-6)
	near(t, "h of repair", found(t, r, rig.RepairTime).Log[1]/3600, 1, 1e-9)
	if d := r.Days[0]; d.Weather != 10 || d.Trouble != 1 || d.Work != 6 {
		t.Errorf("the day was %+v", d)
	}
}

// What is in hand when the log ends lasts at least so long: a bound, and no value.
func TestWorkInHandIsABound(t *testing.T) {
	r := Learn(scenario.BuiltInRates(), read(t, logHead+"2027-03-01 00:00,2027-03-01 06:00,lay down bha,S,A,,\n"), nil)
	x := found(t, r, rig.LayDown)
	if x.Bounds != 1 || !math.IsNaN(x.Log[1]) || x.Use[1] <= x.Ship[1] {
		t.Errorf("%d bounds, log %v, %.0f s to use, ship %.0f s", x.Bounds, x.Log, x.Use[1], x.Ship[1])
	}
	long := Learn(scenario.BuiltInRates(), read(t, logHead+"2027-03-01 00:00,2027-03-01 03:00,lay down bha,S,A,,\n2027-03-01 03:00,2027-03-01 04:00,secured,S,A,,\n"), nil)
	if y := found(t, long, rig.LayDown); y.Bounds != 0 || y.Log[1] != 3*3600 {
		t.Errorf("finished work: %d bounds, %v", y.Bounds, y.Log)
	}
}

// A lump says of each part what the others leave: 8.25 h out of 2850 m, laid down and secured. The trip of 100 stands
// usually takes 100/22 h, laying down 0.9 h, securing 40 min.
func TestALumpedLineSaysWhatTheOthersLeave(t *testing.T) {
	r := Learn(scenario.BuiltInRates(), read(t, logHead+"2027-03-01 00:00,2027-03-01 08:15,\"out of hole, laid out assembly, secured\",S,A,2850,0\n"+
		"2027-03-01 08:15,2027-03-01 09:00,rig service,S,A,,\n"), nil)
	near(t, "stands/h", found(t, r, rig.Tripping).Log[1]*3600, 100/(8.25-0.9-2.0/3), 1e-6)
	near(t, "h laying down", found(t, r, rig.LayDown).Log[1]/3600, 8.25-100/22.0-2.0/3, 1e-6)
	near(t, "h securing", found(t, r, rig.Securing).Log[1]/3600, 8.25-100/22.0-0.9, 1e-6)
	alone := Learn(scenario.BuiltInRates(), read(t, logHead+"2027-03-01 00:00,2027-03-01 03:02,laid out assembly,S,A,,\n2027-03-01 08:15,2027-03-01 09:00,rig service,S,A,,\n"), nil)
	if lumped, single := found(t, r, rig.LayDown), found(t, alone, rig.LayDown); lumped.Use[1] >= single.Use[1] {
		t.Errorf("a lump of unsure parts moves laying down to %.0f s, a line of its own to %.0f s", lumped.Use[1], single.Use[1])
	}
}

// Cycles are between cores of one tool that follow each other, and one above twice its hole's median is trouble.
func TestCyclesLeaveOutTheFirstCoreTroubleAndDrilledIntervals(t *testing.T) {
	p := read(t, `site,hole,core,type,top_depth_mbsf,cored_m,recovered_m,time_on_deck,water_depth_m
S,A,1,H,0,6,6,2027-03-01 06:00,3000
S,A,2,H,6,9.5,9,2027-03-01 07:00,3000
S,A,3,H,15.5,9.5,9,2027-03-01 08:05,3000
S,A,4,H,25,9.5,9,2027-03-01 11:05,3000
S,A,5,1,34.5,20,,,3000
S,A,6,H,54.5,9.5,9,2027-03-01 13:00,3000
S,A,7,H,64,9.5,9,2027-03-01 13:55,3000
S,A,8,X,73.5,9.5,9,2027-03-01 15:55,3000
`)
	cycles, firsts := cyclesOf(p.Cores, nil)
	var minutes []float64
	troubled := 0
	for _, c := range cycles {
		minutes = append(minutes, c.seconds/60)
		if c.troubled {
			troubled++
		}
	}
	if fmt.Sprint(minutes) != "[60 65 180 55]" || troubled != 1 || firsts != 3 {
		t.Errorf("cycles of %v min, %d in trouble, %d first cores", minutes, troubled, firsts)
	}
}

// Cycles made with a wire of 200 m/min and 20 min on the rig floor at four depths of water give both back; at one depth
// nobody can tell.
func TestDepthsOfWaterPartWireAndRigFloor(t *testing.T) {
	table := func(depths ...float64) string {
		var b strings.Builder
		b.WriteString("site,hole,core,type,top_depth_mbsf,cored_m,recovered_m,time_on_deck,water_depth_m\n")
		for s, d := range depths {
			at := time.Date(2027, 3, 1+s, 0, 0, 0, 0, time.UTC)
			for i := range 6 {
				fmt.Fprintf(&b, "S%d,A,%d,H,0,9.5,9,%s,%g\n", s, i+1, at.Format("2006-01-02 15:04:05"), d)
				at = at.Add(time.Duration((2*d/200 + 20 + 6) * float64(time.Minute))).Add(time.Duration(i%2) * time.Second)
			}
			fmt.Fprintf(&b, "S%d,A,7,X,57,9.5,9,%s,%g\n", s, at.Format("2006-01-02 15:04:05"), d) // where piston corers alone are used, they are quicker
		}
		return b.String()
	}
	r := Learn(scenario.BuiltInRates(), read(t, table(2500, 3500, 4500, 5500)), nil)
	line := r.Cycles[0].Line
	if !line.Identified {
		t.Fatal(line.Why)
	}
	near(t, "min for each km", line.PerMetre*1000/60, 10, 0.01)
	near(t, "min at no depth", line.At0/60, 26, 0.05)
	near(t, "m/min to use", found(t, r, rig.PistonWire).Use[1]*60, 200, 0.5)
	near(t, "min on the rig floor, shot and pull of 4 and 3 min taken off", found(t, r, rig.PistonHandling).Log[1]/60, 13, 0.2)
	near(t, "pace", found(t, r, rig.PistonDurationFactor).Log[1], 1, 0.06)
	for _, depths := range [][]float64{{3000, 3000, 3000, 3000}, {2500, 5500}} {
		r := Learn(scenario.BuiltInRates(), read(t, table(depths...)), nil)
		x := found(t, r, rig.PistonWire)
		if x.Identified || x.Use != x.Ship || !strings.HasPrefix(x.Why, "not identified") {
			t.Errorf("at %v m: %+v", depths, x)
		}
	}
}

// The exact interval of a Poisson mean (Garwood 1936): 0 events 0 to 3.689, 5 events 1.623 to 11.668, 10 events 4.795 to
// 18.390 (tables of the chi-squared distribution, from memory).
func TestEventsHaveTheExactPoissonInterval(t *testing.T) {
	for count, want := range map[int][2]float64{0: {0, 3.689}, 5: {1.623, 11.668}, 10: {4.795, 18.390}} {
		e := counted("", count, 2, "")
		near(t, "low", e.Interval[0]*2, want[0], 0.001)
		near(t, "high", e.Interval[1]*2, want[1], 0.001)
	}
}

// A log in quarter hours is off by the variance of two uniform errors: 15 min over the root of 6.
func TestTheRoundingOfALogIsFound(t *testing.T) {
	lines := func(step time.Duration) (list []riglog.Line) {
		at := time.Date(2027, 3, 1, 0, 0, 0, 0, time.UTC)
		for i := range 40 {
			list = append(list, riglog.Line{From: at})
			at = at.Add(step * time.Duration(1+i%7))
		}
		return list
	}
	near(t, "quarter hours", rounding(lines(15*time.Minute))/60, 15/math.Sqrt(6), 1e-9)
	near(t, "five minutes", rounding(lines(5*time.Minute))/60, 5/math.Sqrt(6), 1e-9)
}

// Where runs scatter twice as much as the ship's figure says, the spread to use grows; the median stays.
func TestScatterBetweenRunsIsLearned(t *testing.T) {
	shape, err := spread.NewLognormal(100, 1.3)
	if err != nil {
		t.Fatal(err)
	}
	q := spread.Quantity{Shape: shape, Shares: spread.Shares{spread.Expedition: 0.2, spread.Run: 0.8}}
	samples := func(scale float64) (list []sample) {
		for i := range 200 {
			p := (float64(i) + 0.5) / 200
			list = append(list, sample{value: shape.Quantile(spread.Probability(scale * math.Sqrt(0.8) * spread.Score(p))), exposure: 1})
		}
		return list
	}
	g := &gatherer{ship: scenario.BuiltInRates()}
	g.ship[rig.TopDrive] = q
	as, wide := g.rate(rig.TopDrive, samples(1)), g.rate(rig.TopDrive, samples(2))
	near(t, "median", wide.Use[1], 100, 0.5)
	// Of the ship's variance 0.8 is the run's; ten prior observations weigh against the squares of 199 free ones, of which
	// those beyond a score of 4 count as 4.
	var squares float64
	for i := range 200 {
		z := math.Max(-4, math.Min(4, 2*math.Sqrt(0.8)*spread.Score((float64(i)+0.5)/200)))
		squares += z * z / 0.8
	}
	near(t, "spread of the wide log", math.Log(wide.Use[2]/wide.Use[1])/math.Log(1.3), math.Sqrt(0.8*(10+squares)/209), 0.01)
	near(t, "spread of the usual log", math.Log(as.Use[2]/as.Use[1])/math.Log(1.3), math.Sqrt(0.8), 0.02)
}

func TestRatesOfPlainWorkAreDurations(t *testing.T) {
	for k, r := range takes {
		if _, err := r.Of().Of.Parse("1 h"); err != nil {
			t.Errorf("%v is no duration: %s", k, r.Of().Key)
		}
	}
}

// A lumped line that can't be shared out names the part of it that stands in the way, and one observation is not "1 times".
func TestWhatStandsInTheWayIsNamed(t *testing.T) {
	r := Learn(scenario.BuiltInRates(), read(t, logHead+
		"2027-03-01 00:00,2027-03-01 08:00,out of hole; laid out assembly,S1,A,,\n"+
		"2027-03-01 08:00,2027-03-01 09:00,offset ship,S1,B,,\n"+
		"2027-03-01 09:00,2027-03-01 18:00,tripped in; drilled ahead,S1,B,0,3000\n"), nil)
	why := map[int]string{}
	for _, n := range r.LeftOut {
		why[n.Row] = n.Why
	}
	if want := "a trip without stands, and without the bit's depths (bit_from_m, bit_to_m)"; why[2] != want {
		t.Errorf("line 2: %q, want %q", why[2], want)
	}
	if want := "it lumps work together, of which drilling ahead has no usual time"; why[4] != want {
		t.Errorf("line 4: %q, want %q", why[4], want)
	}
	if got, want := found(t, r, rig.OffsetMove).Why, "little: 1 time, of 10 that are wanted before a rate moves much"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// By hand: of a mixture of 0.3 normal about 2 with a standard deviation of 0.5 and 0.7 standard normal the mean is 0.6, and the
// variance 0.3 x 0.25 + 0.7 x 1 within and 0.3 x 0.7 x 2^2 between.
func TestAFewCoresLeaveTheSpreadOfBoth(t *testing.T) {
	s := trusted(learn.Score{Mean: 2, SD: 0.5}, 0.3)
	near(t, "mean", s.Mean, 0.6, 1e-12)
	near(t, "variance", s.SD*s.SD, 0.3*0.25+0.7+0.3*0.7*4, 1e-12)
	if all := (learn.Score{Mean: 2, SD: 0.5}); trusted(all, 1) != all {
		t.Errorf("%+v of which all is trusted", trusted(all, 1))
	}
}
