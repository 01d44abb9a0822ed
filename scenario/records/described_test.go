package records

import (
	"math"
	"strings"
	"testing"

	"coredays/model/coring"
	"coredays/model/record"
)

// A rotary hole of 200 m with chalk above basalt by invented figures: the plan told of it has both, at the shares of the
// rates that are said of them; untold it has one ground.
func TestDescribedLithologyIsTheGroundOfThePlan(t *testing.T) {
	holes, out, err := ReadDescribed("runs.csv", strings.NewReader("leg,hole,top_m,bottom_m,lithology\n1,U1A,0,100,chalk\n1,U1A,100,200,basalt\n1,U1A,200,150,chalk\n"))
	if err != nil || len(out) != 1 || out[0].Row != 4 {
		t.Fatalf("left out %v, %v: want line 4, whose bottom lies above its top", out, err)
	}
	h := cored(map[coring.Tool]int{coring.RCB: 21})
	h.Name = "A"
	sites := []record.Site{{Leg: "1", Name: "1", Holes: []record.Hole{h}}}
	if n := Describe(sites, holes); n != 1 {
		t.Fatalf("%d sites described, want 1", n)
	}
	u, _ := Model()
	u.Described = []Told{{Classes: []string{"chalk"}, Rotary: 2, Extended: 1, Recovery: [coring.Tools]float64{1, 1, 1, 1.2}},
		{Classes: []string{"basalt"}, Rotary: 0.25, Extended: 1, Recovery: [coring.Tools]float64{1, 1, 1, 1}}}
	untold := u.layers(&sites[0], Programme)
	told := u.layers(&sites[0], Ground)
	if len(untold) != 1 || len(told) < 2 || told[0].Bottom != 100 {
		t.Fatalf("layers untold %d, told %d: want 1, and chalk to 100 m above basalt", len(untold), len(told))
	}
	for i, share := range []float64{2, 0.25} {
		if got, want := told[i].Lithology.Rate.Median(), share*untold[0].Lithology.Rate.Median(); math.Abs(got-want) > 1e-9*want {
			t.Errorf("layer %d is cut at %g m/s, want %g", i, got, want)
		}
	}
	mean := func(i int) float64 { return meanOf(told[i].Lithology.Recovery[coring.RCB].Shape) }
	if ratio := mean(0) / mean(1); math.Abs(ratio-1.2) > 0.01 {
		t.Errorf("recovery in chalk is %.3f times that in basalt, want 1.2", ratio)
	}
}
