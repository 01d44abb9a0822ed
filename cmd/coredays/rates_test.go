package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/model/rates"
	"coredays/model/result"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/scenario/rigfile"
	"coredays/sim"
)

// thisShip is a quantity of which the expedition's score is known: what is left varies by site, hole and run.
type thisShip struct {
	of    spread.Drawn
	knows float64 // the expedition's score, weighted
	rest  float64 // standard deviation of the rest
}

func (s thisShip) Quantile(p float64) float64 { return s.of.At(s.knows + s.rest*spread.Score(p)) }

// onThisShip gives each rate the crew of one expedition. What is learned is to find her out.
func onThisShip(ship [rig.Rates]spread.Quantity, random *rand.Rand) [rig.Rates]spread.Quantity {
	for r := range ship {
		q := ship[r]
		e := q.Shares[spread.Expedition]
		if q.IsFixed() || e == 0 || e == 1 {
			continue
		}
		rest := q.Shares
		rest[spread.Expedition] = 0
		for l := range rest {
			rest[l] /= 1 - e
		}
		ship[r] = spread.Quantity{Shape: thisShip{q.Compile(), math.Sqrt(e) * random.NormFloat64(), math.Sqrt(1 - e)}, Shares: rest, Persistence: q.Persistence}
	}
	return ship
}

// quarter is the shift sheet's unit of time.
const quarter = 15 * time.Minute

// sheets are the papers of a simulated expedition, as a crew would keep them: coring in one line, everything in quarter
// hours, what is shorter lumped with the line before, a line in fifty forgotten; and a core table with times to five
// minutes and decimal commas.
func sheets(d *result.Diary, p *plan.Plan, random *rand.Rand) (log, cores string) {
	floor := map[string]float64{}
	for i := range p.Sites {
		floor[p.Sites[i].Name] = float64(p.Sites[i].WaterDepth)
	}
	type line struct {
		from, to time.Time
		what     string
		place    result.Place
		bit      [2]string
		coring   bool
		idle     bool
	}
	var lines []line
	var table strings.Builder
	table.WriteString("Core summary of an invented ship\nsite;hole;core;type;top_depth_mbsf;cored_m;recovered_m;time_on_deck;water_depth_m\n;;;;mbsf;m;m;utc;m\n")
	comma := func(x float64) string { return strings.Replace(fmt.Sprintf("%.1f", x), ".", ",", 1) }
	for i := range d.Entries {
		e := &d.Entries[i]
		var number int
		var letter string
		var cut, up float64
		if n, _ := fmt.Sscanf(strings.Replace(e.Note, ":", " :", 1), "%d%1s : %f m cut, %f up", &number, &letter, &cut, &up); n == 4 {
			fmt.Fprintf(&table, "%s;%s;%d;%s;%s;%s;%s;%s;%s\n", e.Place.Site, e.Place.Hole, number, letter, comma(float64(e.Bottom)), comma(cut), comma(up),
				e.To.Round(5*time.Minute).Format("2006-01-02 15:04"), comma(floor[e.Place.Site]))
		}
		l := line{from: e.From, to: e.To, what: e.Kind.String(), place: e.Place, coring: e.Kind.Of().Class == activity.Coring}
		l.idle = e.Kind.Of().Class == activity.Waiting || e.Kind.Of().Class == activity.Repair
		deep := floor[e.Place.Site] + float64(e.Depth)
		switch {
		case e.Kind == activity.RunPipe && i > 0 && d.Entries[i-1].Kind == activity.MakeUpBHA:
			l.bit = [2]string{"0", fmt.Sprintf("%.1f", deep)}
		case e.Kind == activity.PullPipe && i+1 < len(d.Entries) && d.Entries[i+1].Kind == activity.LayDownBHA:
			l.bit = [2]string{fmt.Sprintf("%.1f", deep), "0"}
		case e.Kind == activity.PullFromHole:
			l.bit[0] = fmt.Sprintf("%.1f", deep)
		}
		if l.coring {
			l.what = "coring"
		}
		if n := len(lines); n > 0 && l.coring && lines[n-1].coring && lines[n-1].place == l.place {
			lines[n-1].to = l.to
			continue
		}
		lines = append(lines, l)
	}
	var b strings.Builder
	b.WriteString("from\tto\twhat\tsite\thole\tbit_from_m\tbit_to_m\n")
	for i := 0; i < len(lines); i++ {
		l := &lines[i]
		from, to := l.from.Round(quarter), l.to.Round(quarter)
		if !to.After(from) || random.IntN(50) == 0 {
			continue
		}
		what := l.what
		if i+1 < len(lines) && !l.idle && lines[i+1].place == l.place && !lines[i+1].to.Round(quarter).After(to) && !lines[i+1].idle && l.bit == [2]string{} && !l.coring && !lines[i+1].coring {
			what += ", " + lines[i+1].what // too short for a line of its own
		}
		fmt.Fprintf(&b, "%s\t%s\t%s\t%s\t%s\t%s\t%s\n", from.Format("2006-01-02 15:04"), to.Format("2006-01-02 15:04"), what, l.place.Site, l.place.Hole, l.bit[0], l.bit[1])
	}
	return b.String(), table.String()
}

// papersOf reads what was made of an expedition.
func papersOf(t *testing.T, d *result.Diary, p *plan.Plan, random *rand.Rand) *riglog.Papers {
	log, cores := sheets(d, p, random)
	var papers riglog.Papers
	var reading rigfile.Reading
	for name, text := range map[string]string{"log.tsv": log, "cores.csv": cores} {
		if err := reading.Read(&papers, name, []byte(text)); err != nil {
			t.Fatal(err)
		}
	}
	return &papers
}

// plainPlan is the demonstration with the built-in ship's rates, without what a core table does not tell.
func plainPlan(t *testing.T) *plan.Plan {
	p, err := scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", nil)
	if err != nil {
		t.Fatal(err)
	}
	p.Ship.Rates = scenario.BuiltInRates()
	for i := range p.Sites {
		for j := range p.Sites[i].Items {
			if h := p.Sites[i].Items[j].Hole; h != nil {
				h.Oriented, h.Temperature = false, nil
			}
		}
	}
	return p
}

// The diaries of 60 expeditions, each with a crew of her own, kept as shift sheets in quarter hours: what is learned
// holds what that crew does next 0.7 to 0.9 of the time in its 80 % band.
func TestRatesPutInComeBackFromShiftSheets(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates many expeditions")
	}
	p := plainPlan(t)
	before := p.Ship.Rates
	type held struct{ expeditions, in, of int }
	found := map[rig.Rate]*held{}
	nearer, farther := 0, 0
	const expeditions = 60
	for n := range expeditions {
		random := rand.New(rand.NewPCG(uint64(n), 99))
		with := *p
		with.Ship.Rates = onThisShip(before, random)
		v, err := voyage.Compile(&with)
		if err != nil {
			t.Fatal(err)
		}
		papers := papersOf(t, sim.Diary(t.Context(), v, 5, n, false), p, random)
		learned := rates.Learn(before, papers, nil)
		for i := range learned.Rates {
			r := &learned.Rates[i]
			if !r.Identified || before[r.Of].IsFixed() || r.N-r.Bounds < 5 {
				continue
			}
			if found[r.Of] == nil {
				found[r.Of] = &held{}
			}
			h := found[r.Of]
			h.expeditions++
			truth := with.Ship.Rates[r.Of].Compile()
			for range 200 {
				value := truth.At(random.NormFloat64())
				h.of++
				if value >= r.Use[0] && value <= r.Use[2] {
					h.in++
				}
			}
			if before[r.Of].Shares[spread.Expedition] > 0.3 && r.N > 20 {
				if math.Abs(math.Log(r.Use[1]/truth.Median)) < math.Abs(math.Log(r.Ship[1]/truth.Median)) {
					nearer++
				} else {
					farther++
				}
			}
		}
	}
	enough := 0
	for r := range rig.Rates {
		h := found[r]
		if h == nil || h.expeditions < expeditions*3/4 {
			continue
		}
		enough++
		share := float64(h.in) / float64(h.of)
		t.Logf("%s: %.2f of %d expeditions", r.Of().Key, share, h.expeditions)
		if share < 0.7 || share > 0.9 {
			t.Errorf("%s: the band holds %.2f of what the crew does next, want 0.7 to 0.9", r.Of().Key, share)
		}
	}
	t.Logf("%d rates; the median is nearer than the ship's %d times, farther %d times", enough, nearer, farther)
	if enough < 5 || nearer <= 2*farther {
		t.Errorf("%d rates had enough data; %d nearer, %d farther", enough, nearer, farther)
	}
}

// Three cycles of one hole hardly move a rate: by hand, 3 of the 10 that are wanted times what the levels say. Of a mean of
// three runs the expedition's share of the variance is e / (e + s + h + r/3), with a little more for the runs that hang
// together. Three hundred cycles at ten sites move it nearly all the way.
func TestAFewCoresHardlyMoveARate(t *testing.T) {
	table := func(n, apart int) string {
		var b strings.Builder
		b.WriteString("site,hole,core,type,top_depth_mbsf,cored_m,recovered_m,time_on_deck,water_depth_m\n")
		at := time.Date(2027, 3, 1, 6, 0, 0, 0, time.UTC)
		for i := range n {
			fmt.Fprintf(&b, "S%d,A,%d,H,%.1f,9.5,9.5,%s,3500\n", i/30, i%30+1, 0.0, at.Format("2006-01-02 15:04"))
			at = at.Add(time.Duration(75+apart*(i%2*2-1)) * time.Minute)
		}
		return b.String()
	}
	ship := scenario.BuiltInRates()
	pace := func(n, apart int) (moved, all float64) {
		var papers riglog.Papers
		if err := new(rigfile.Reading).Read(&papers, "cores.csv", []byte(table(n, apart))); err != nil {
			t.Fatal(err)
		}
		r, found := rates.Learn(ship, &papers, nil).Find(rig.PistonDurationFactor)
		if !found {
			t.Fatal("nothing was learned")
		}
		return math.Log(r.Use[1]), math.Log(r.Log[1])
	}
	// A cycle of 75 min less 6 min of connection, against 2 x 3500 m at 190 m/min, 9 min, 4 min and 3 min, of which sites with
	// piston corers alone take 87 %: ship file.
	want := math.Log((75 - 6.0) / (7000/190.0 + 16) / 0.87)
	few, all := pace(4, 0) // four cores are three cycles
	if math.Abs(all-want) > 1e-6 {
		t.Errorf("the pace is %.5f in the logarithm, by hand %.5f", all, want)
	}
	s := ship[rig.PistonDurationFactor].Shares
	// That the three are alike brings the variance between runs down to 10/12: ten observations' worth are the ship's.
	three := 10.0 / 12 * s[spread.Run] / 3 * (1 + 2.0/3*(2*0.05+0.05*0.05)) // variance of a mean of three, lag-1 correlation 0.05
	if weight := 0.3 * s[spread.Expedition] / (s[spread.Expedition] + s[spread.Site] + s[spread.Hole] + three); math.Abs(few/want-weight) > 0.002 || weight > 0.2 {
		t.Errorf("three cycles move the pace %.3f of the way, by hand %.3f", few/want, weight)
	}
	if many, _ := pace(300, 1); many < 0.9*want {
		t.Errorf("three hundred cycles move the pace %.2f of the way", many/want)
	}
}
