package rigchannel

import (
	"math"
	"math/rand/v2"
	"testing"

	"coredays/model/riglog"
)

// wireline makes a recording at 1 s of runs of the line to a depth and back, with heave on it, a pause of 20 s in each way
// down, one sample in 500 a spike and one in 20 missing. Out at 240 m/min, in at 270.
func wireline(depth float64, cycles int) *riglog.Recording {
	random := rand.New(rand.NewPCG(3, 4))
	r := &riglog.Recording{}
	s, out := 0.0, 0.0
	sample := func() {
		x := out + 0.4*math.Sin(2*math.Pi*s/9.3)
		switch {
		case random.IntN(20) == 0:
			x = math.NaN()
		case random.IntN(500) == 0:
			x += 400
		}
		r.Time, r.Wire = append(r.Time, s), append(r.Wire, x)
		s++
	}
	stay := func(seconds int) {
		for range seconds {
			sample()
		}
	}
	run := func(to, speed float64, pause bool) {
		for began, step := out, math.Copysign(speed, to-out); math.Abs(to-out) > speed; out += step {
			if pause && math.Abs(out-began) > depth/2 {
				stay(20)
				pause = false
			}
			sample()
		}
		out = to
	}
	for range cycles {
		stay(600)
		run(depth, 4, true)
		stay(420)
		run(0, 4.5, false)
	}
	stay(600)
	return r
}

func TestRunsOfTheLineAreFoundWithTheirSpeed(t *testing.T) {
	runs := WireRuns(wireline(3000, 5))
	if len(runs) != 10 {
		t.Fatalf("%d runs, want 5 out and 5 in", len(runs))
	}
	for i, r := range runs {
		want, way := 3000/(3000/4.0+20), 1.0 // with the pause of 20 s
		if i%2 == 1 {
			want, way = 4.5, -1
		}
		if r.Metres*way < 2950 || math.Abs(r.Speed()/want-1) > 0.02 {
			t.Errorf("run %d: %.0f m at %.2f m/s, want %.0f m at %.2f", i, r.Metres, r.Speed(), 3000*way, want)
		}
	}
}

func TestALineThatStandsOrIsNotRecordedRunsNowhere(t *testing.T) {
	still := wireline(200, 2) // too short for a run
	none := &riglog.Recording{Time: still.Time}
	for _, r := range []*riglog.Recording{still, none, {}} {
		if runs := WireRuns(r); len(runs) != 0 {
			t.Errorf("%d runs", len(runs))
		}
	}
}
