package voyage

import (
	"math"
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/ground"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/sea/heave"
	"coredays/model/spread"
	"coredays/model/unit"
)

// vessel is an invented ship; each of her rates is its own number, so that one in the wrong place shows.
func vessel() rig.Ship {
	ship := rig.Ship{
		Name: "test ship", Hull: heave.Hull{Length: 140, Beam: 21, Draught: 7.5, Block: 0.7}, Heading: 0.4,
		Storm:  rig.Storm{ClearSeaFloor: 8, RecoverPipe: 10},
		Limits: []rig.SeaLimit{{For: activity.Tripping, Of: rig.WaveHeight, Most: 6}},
	}
	for r := range rig.Rates {
		ship.Rates[r] = spread.Just(1 + float64(r))
	}
	ship.Rates[rig.ForecastHorizon], ship.Rates[rig.ForecastSkill] = spread.Just(172_800), spread.Just(0.6)
	return ship
}

// mean is a sea of the same mean height all year.
func mean(height unit.Length) sea.Climate {
	var c sea.Climate
	for m := range c.Mean {
		c.Mean[m], c.Variation[m] = height, 0.4
	}
	return c
}

// ooze is a layer of a lithology with a spread at the site.
func ooze(bottom unit.Depth) ground.Layer {
	l := ground.Lithology{Name: "ooze", Strength: spread.Just(600), Rate: spread.Just(0.008), Ahead: spread.Just(0.01), Sticking: spread.Just(1), Wear: spread.Just(1)}
	l.Recovery[coring.APC] = spread.Just(1.02)
	return ground.Layer{Bottom: bottom, Lithology: l}
}

// place is a site in the middle of the tropical Atlantic with a hole A and a task B.
func place(name string, at geo.Position) plan.Site {
	return plan.Site{Name: name, Position: at, WaterDepth: 3000, Climate: mean(2), Layers: []ground.Layer{ooze(150), ooze(400)},
		Items: []plan.Item{
			{Name: "A", Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: 250}}}},
			{Name: "B", Rank: 2, Task: &plan.Task{Steps: []plan.Step{{Takes: spread.Just(7200)}}}},
		}}
}

// transect sails from 0N 20W to the sites and on to 0N 10W.
func transect(sites ...plan.Site) *plan.Plan {
	return &plan.Plan{Title: "test", SeaDays: 30 * unit.Day, InPort: spread.Just(86_400), Ship: vessel(), Sites: sites,
		From: plan.Port{Name: "Near", Position: geo.Position{Longitude: -20}}, To: plan.Port{Name: "Far", Position: geo.Position{Longitude: -10}}}
}

func compiled(t *testing.T, p *plan.Plan) *Voyage {
	t.Helper()
	v, err := Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// refused is what Compile gives a plan that it can't work out.
func refused(t *testing.T, p *plan.Plan, want string) {
	t.Helper()
	if _, err := Compile(p); err == nil || err.Error() != want {
		t.Errorf("got %v, want %s", err, want)
	}
}

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %g, want %g ± %g", what, got, want, tolerance)
	}
}

var (
	west = geo.Position{Longitude: -18}
	east = geo.Position{Longitude: -13}
)
