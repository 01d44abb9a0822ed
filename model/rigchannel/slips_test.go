package rigchannel

import (
	"math"
	"math/rand/v2"
	"testing"

	"coredays/model/riglog"
)

// made is a recording of a trip with what was put into it.
type made struct {
	riglog.Recording
	connections [][2]float64
	stands      int
}

// trip makes a recording: hours of pulling pipe at 1 s, heave of 3 m from crest to trough on block and hook, a drift of the
// load cell, one sample in 500 a spike, one in 20 missing.
func trip(hours float64, heave float64, out bool) *made {
	random := rand.New(rand.NewPCG(21, 22))
	m := &made{}
	const pulling, stand, pause = 75.0, 28.5, 65.0
	type phase struct {
		until   float64
		hanging bool
		from    float64 // of the block, m
		to      float64
	}
	var phases []phase
	at := 0.0
	low, high := 1.0, 1.0+stand
	if !out {
		low, high = high, low
	}
	phases = append(phases, phase{120, true, low, low})
	for at = 120; at < hours*3600-300; m.stands++ {
		took := pulling * (0.9 + 0.3*random.Float64())
		phases = append(phases, phase{at + took, false, low, high})
		at += took
		hang := pause * (0.7 + 0.8*random.Float64())
		phases = append(phases, phase{at + hang, true, high, low})
		m.connections = append(m.connections, [2]float64{at, at + hang})
		at += hang
	}
	m.connections = m.connections[:len(m.connections)-1] // no stand follows the last
	phases = append(phases, phase{hours * 3600, true, low, low})
	n := 0
	for s := 0.0; s < hours*3600; s++ {
		for phases[n].until <= s {
			n++
		}
		p := &phases[n]
		began := 0.0
		if n > 0 {
			began = phases[n-1].until
		}
		share := (s - began) / (p.until - began)
		share = math.Min(1, math.Max(0, share))
		swell := math.Sin(2*math.Pi*s/9.3) + 0.5*math.Sin(2*math.Pi*s/11.7+1)
		block := p.from + (p.to-p.from)*(3*share*share-2*share*share*share) + heave/2*swell/1.5
		load := 600e3 * (1 + 0.03*s/(hours*3600)) // the block alone, N, with drift
		if !p.hanging {
			pipe := 1400e3 * (1 - 0.6*s/(hours*3600)) // it gets lighter, stand by stand
			load += pipe * (1 + 0.02*heave*swell/1.5)
		}
		load += 12e3 * random.NormFloat64()
		if random.IntN(500) == 0 {
			load *= 3 * random.Float64()
		}
		if random.IntN(500) == 0 {
			block += 40 * random.NormFloat64()
		}
		if random.IntN(20) == 0 {
			continue
		}
		m.Time, m.Block, m.Hook = append(m.Time, s), append(m.Block, block), append(m.Hook, load)
	}
	return m
}

func TestEveryStandIsFoundInASeawayAndNoneInvented(t *testing.T) {
	for _, out := range []bool{true, false} {
		m := trip(6, 3, out)
		f, err := Look(&m.Recording, 28.5)
		if err != nil {
			t.Fatal(err)
		}
		if len(f.Stands) != m.stands {
			t.Errorf("%d stands, want %d", len(f.Stands), m.stands)
		}
		if len(f.Connections) != len(m.connections) {
			t.Fatalf("%d connections, want %d", len(f.Connections), len(m.connections))
		}
		worst := 0.0
		for i, c := range f.Connections {
			want := m.connections[i]
			worst = math.Max(worst, math.Abs(c.Took()-(want[1]-want[0])))
			worst = math.Max(worst, math.Abs(c.From-want[0]))
		}
		t.Logf("pulling %v: %d stands; connections off by %.1f s at most", out, len(f.Stands), worst)
		if worst > 5 {
			t.Errorf("a connection is %.1f s off, want at most 5", worst)
		}
		for _, s := range f.Stands {
			if (s.Moved > 0) != out {
				t.Errorf("a stand moved %.1f m, pulling %v", s.Moved, out)
				break
			}
		}
	}
}

// A ship that holds her pipe on the hook in a swell makes no stand.
func TestHeaveAloneMakesNoStand(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	var r riglog.Recording
	for s := range 7200 {
		swell := math.Sin(2 * math.Pi * float64(s) / 9.3)
		r.Time, r.Block, r.Hook = append(r.Time, float64(s)), append(r.Block, 15+3*swell), append(r.Hook, 1.8e6*(1+0.08*swell)+1e4*random.NormFloat64())
	}
	if f, err := Look(&r, 28.5); err == nil {
		t.Errorf("%d hangs and %d stands were found", len(f.Hangs), len(f.Stands))
	}
}

// Lifting the string out of the slips and setting it back is no stand.
func TestALiftIsNoStand(t *testing.T) {
	var r riglog.Recording
	for s := range 3600 {
		load, block := 6e5, 1.0
		if phase := s % 300; phase >= 150 {
			load, block = 2e6, 1+math.Min(2, float64(phase-150)/10)
		}
		r.Time, r.Block, r.Hook = append(r.Time, float64(s)), append(r.Block, block), append(r.Hook, load)
	}
	f, err := Look(&r, 28.5)
	if err != nil {
		t.Fatal(err)
	}
	if len(f.Hangs) != 12 || len(f.Stands) != 0 {
		t.Errorf("%d hangs and %d stands, want 12 and none", len(f.Hangs), len(f.Stands))
	}
}
