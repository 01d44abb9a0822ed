package main

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"coredays/model/rates"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/scenario/rigfile"
	"coredays/sim"
)

// exactTable is the core table of a simulated expedition, its times to the second; nothing of her rates has a spread.
func exactTable(t *testing.T, settings ...string) *riglog.Papers {
	p, err := scenario.WithSettings(scenario.Starter(), "starter.yaml", settings)
	if err != nil {
		t.Fatal(err)
	}
	for r := range p.Ship.Rates {
		q := &p.Ship.Rates[r]
		*q = spread.Quantity{Shape: spread.Fixed(q.Median()), Shares: q.Shares}
	}
	floor := map[string]float64{}
	for i := range p.Sites {
		floor[p.Sites[i].Name] = float64(p.Sites[i].WaterDepth)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	b.WriteString("site,hole,core,type,top_depth_mbsf,cored_m,recovered_m,time_on_deck,water_depth_m\n")
	d := sim.Diary(t.Context(), v, 5, 0, false)
	for i := range d.Entries {
		e := &d.Entries[i]
		var number int
		var letter string
		var cut, up float64
		if n, _ := fmt.Sscanf(strings.Replace(e.Note, ":", " :", 1), "%d%1s : %f m cut, %f up", &number, &letter, &cut, &up); n == 4 {
			fmt.Fprintf(&b, "%s,%s,%d,%s,%g,%g,%g,%s,%g\n", e.Place.Site, e.Place.Hole, number, letter, float64(e.Bottom), cut, up, e.To.Format("2006-01-02 15:04:05"), floor[e.Place.Site])
		}
	}
	var papers riglog.Papers
	if err := new(rigfile.Reading).Read(&papers, "cores.csv", []byte(b.String())); err != nil {
		t.Fatal(err)
	}
	return &papers
}

// A ship without spread makes her cycles as rates expects them, at a duration factor of 1: with piston corers and extended
// barrels at one site, and with piston corers alone, which are quicker there. The extended barrel cuts 9.5 m in the 20 min
// that rates takes for it, since a core table does not tell how long it cut. Medians, since a short core needs no connection
// and a barrel of which the liner bursts takes longer; to one and a half in a thousand, since the table has whole seconds and decimetres.
func TestCyclesAreExpectedAsTheyAreSimulated(t *testing.T) {
	const layers = "sites[0].layers=[{bottom: 140 mbsf, lithology: nannofossil ooze}, {bottom: 300 mbsf, lithology: chalk, drilling_rate: 28.5 m/h}]"
	for name, c := range map[string]struct {
		setting string
		rates   []rig.Rate
		cycles  int // at least
	}{
		"piston and extended":    {layers, []rig.Rate{rig.PistonDurationFactor, rig.ExtendedDurationFactor}, 5},
		"piston corers alone":    {"sites[0].holes=[{name: A, core: [{with: APC, to: refusal}]}]", []rig.Rate{rig.PistonDurationFactor}, 10},
		"half-length corers too": {"sites[0].holes=[{name: A, core: [{with: APC, to: 100 mbsf}, {with: HLAPC, to: 150 mbsf}]}]", []rig.Rate{rig.PistonDurationFactor}, 15},
	} {
		learned := rates.Learn(scenario.BuiltInRates(), exactTable(t, c.setting), nil)
		for _, of := range c.rates {
			r, ok := learned.Find(of)
			if !ok || r.N < c.cycles || r.Bounds > 0 {
				t.Errorf("%s: %s of %+v, want %d cycles or more", name, of.Of().Key, r, c.cycles)
				continue
			}
			if math.Abs(r.Log[1]-1) > 0.0015 {
				t.Errorf("%s: %s is %.4f of %d cycles, want 1", name, of.Of().Key, r.Log[1], r.N)
			}
			t.Log(name, of.Of().Key, r.N, r.Log)
		}
	}
}
