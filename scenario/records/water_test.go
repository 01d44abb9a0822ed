package records

import (
	"math"
	"testing"
)

// Rotary ground in more than 4 km of water has the rate of record.yaml times the factor there; above it, and ground of
// other tools, has not.
func TestRotaryGroundIsSlowerInDeepWater(t *testing.T) {
	u, _ := Model()
	u.InWater = Slower{From: 4000, Rate: 0.5}
	for water, factor := range map[string]float64{"3999": 1, "4000": 0.5} {
		sites, _ := readRows(t, holeRow(map[string]string{"water_depth_m": water, "n_rcb": "5", "cored_rcb_m": "40", "cored_m": "240", "penetration_m": "240"}))
		p, err := u.Plan(sites[0], Programme)
		if err != nil {
			t.Fatal(err)
		}
		layers := p.Sites[0].Layers
		for i, want := range []float64{u.Ground[softGround].Rate.Median(), factor * u.Ground[rotaryGround].Rate.Median()} {
			if got := layers[i].Lithology.Rate.Median(); math.Abs(got/want-1) > 1e-9 {
				t.Errorf("%s m of water, layer %d: %.3g m/h, want %.3g", water, i, 3600*got, 3600*want)
			}
		}
	}
}
