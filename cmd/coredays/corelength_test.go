package main

import (
	"fmt"
	"testing"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"

	"coredays/model/coring"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
)

// Holes of 15 cores and more of one tool, cored with the built-in ship, have cores as short as those on record: P5, P10, P25
// and mean of the mean length of a hole's cores in metres (364, 288 and 214 holes of the hole summaries,
// doi:10.5281/zenodo.10498831; intervals of 95 % by a bootstrap over legs).
func TestCoresAreAsLongAsThoseOnRecord(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates many expeditions")
	}
	type interval [2]float64
	for tool, want := range map[coring.Tool]struct{ p5, p10, p25, mean interval }{
		coring.APC: {interval{6.75, 8.47}, interval{7.92, 8.83}, interval{8.91, 9.13}, interval{8.91, 9.17}},
		coring.RCB: {interval{4.87, 6.31}, interval{5.42, 7.21}, interval{7.27, 8.81}, interval{8.34, 8.87}},
		coring.XCB: {interval{8.26, 8.83}, interval{8.56, 8.99}, interval{9.10, 9.32}, interval{9.18, 9.36}},
	} {
		means := lengthsOfCores(t, tool)
		q := stats.Quantiles(means, 0.05, 0.1, 0.25)
		for i, c := range []struct {
			got  float64
			want interval
		}{{q[0], want.p5}, {q[1], want.p10}, {q[2], want.p25}, {stat.Mean(means, nil), want.mean}} {
			if c.got < c.want[0] || c.got > c.want[1] {
				t.Errorf("%v: %s of the mean of a hole is %.2f m, on record %v", tool, []string{"P5", "P10", "P25", "mean"}[i], c.got, c.want)
			}
		}
	}
}

// lengthsOfCores are the means of simulated holes of 160 to 400 m, in metres.
func lengthsOfCores(t *testing.T, tool coring.Tool) (means []float64) {
	for depth := 160; depth <= 400; depth += 15 {
		p, err := scenario.Read("plan.yaml", fmt.Appendf(nil, `version: 1
sails: 2030-01-01T00:00Z
sea_days: 100 d
trouble: off
ports: {from: {name: port, position: 1S 158E}, to: {name: port, position: 1S 158E}}
sites:
  - name: S
    position: 1S 158E
    water_depth: 1000 m
    layers: [{bottom: 400 mbsf, lithology: nannofossil ooze, side_shear: 0.001 kPa/m, drilling_rate: 50 m/h}]
    holes: [{name: A, core: [{with: %v, to: %d mbsf}], reentry: free-fall funnel}]
`, tool, depth))
		if err != nil {
			t.Fatal(err)
		}
		v, err := voyage.Compile(p)
		if err != nil {
			t.Fatal(err)
		}
		visitor := sim.NewVisitor(t.Context(), v)
		for n := range 100 {
			var hole []float64
			for _, c := range visitor.FirstCores(uint64(depth), n) {
				hole = append(hole, c.Cored)
			}
			means = append(means, stat.Mean(hole, nil))
		}
	}
	return means
}
