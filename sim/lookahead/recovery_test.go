package lookahead

import (
	"math"
	"testing"
	"time"

	"coredays/model/coring"
	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/state"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/simtest"
)

// cored is a learner of a ship that has taken piston cores in a hole of mud, in waves of so many metres for ever.
func cored(t *testing.T, waves float64, cores ...state.Core) *learner {
	t.Helper()
	p := simtest.OneSite(simtest.PistonHole("A", 195))
	site := &p.Sites[0]
	for m := range site.Climate.Mean {
		site.Climate.Mean[m] = unit.Length(waves)
	}
	for tool := range site.Layers[0].Lithology.Recovery {
		site.Layers[0].Lithology.Recovery[tool] = simtest.Wide(0.9, 1.2)
	}
	site.Layers[0].Lithology.Strength = simtest.Wide(300, 2)
	p.Ship.Rates[rig.HeaveLoss] = simtest.Just(0.1)
	p.Ship.Rates[rig.PistonAdvance] = simtest.Wide(9.5, 1.2)
	v := simtest.Compiled(t, p)
	top := unit.Depth(0)
	st := &state.State{At: p.Sails.Add(10 * 24 * time.Hour), Sites: []state.Site{{State: state.InHand}}, Items: []state.Item{{State: state.InHand}}}
	for i := range cores {
		c := &cores[i]
		c.Number, c.Top, c.OnDeck = i+1, top, st.At.Add(time.Duration(i-len(cores))*time.Hour)
		top += unit.Depth(c.Cored)
	}
	st.Cores = cores
	st.Now.Site, st.Now.Item = 0, 0
	return &learner{v: v, x: &sim.Start{State: st}, seen: map[voyage.Quantity][]learn.Observation{}, names: map[voyage.Quantity]string{}}
}

// recoveries is what the mud gives to the piston corer.
func recoveries(l *learner) *spread.Drawn {
	return &l.v.Quantities[l.v.Sites[0].Layers[0].Recovery[coring.APC]]
}

// piston is a piston core.
func piston(cut, up float64) state.Core {
	return state.Core{Tool: coring.APC, Cored: unit.Length(cut), Recovered: unit.Length(up)}
}

// The sea takes up to 10 % of a core where it is as high as the limit of 4 m, and nothing at half of it: at 3 m 5 %, so that
// a core of 0.76 would have been one of 0.80 in a calm.
func TestWhatTheSeaTookIsNotRecovery(t *testing.T) {
	for waves, want := range map[float64]float64{1.5: 0.76, 3: 0.80} {
		l := cored(t, waves, piston(9.5, 9.5), piston(9.5, 7.22))
		o, tells := l.recovery(&l.v.Sites[0], recoveries(l), 1)
		if !tells || o.Bound != learn.Exactly || math.Abs(o.Value-want) > 1e-3 {
			t.Errorf("in waves of %.1f m: %+v, want %.2f", waves, o, want)
		}
	}
}

// A liner that burst, or a stroke that stopped where the core came up whole, tells no recovery: of the second it is known that
// it was not above 1, and of one that came up longer than what was cut it is known.
func TestTroubleAndStoppedStrokesTellNoRecovery(t *testing.T) {
	l := cored(t, 0.5, piston(9.5, 9.5), piston(9.5, 0), piston(9.5, 3), piston(4, 4), piston(4, 4.4))
	for i, want := range []struct {
		tells bool
		bound learn.Bound
		value float64
	}{{true, learn.Exactly, 1}, {false, 0, 0}, {true, learn.Exactly, 0.316}, {true, learn.AtMost, 1.02}, {true, learn.Exactly, 1.1}} {
		o, tells := l.recovery(&l.v.Sites[0], recoveries(l), i)
		if tells != want.tells || tells && (o.Bound != want.bound || math.Abs(o.Value-want.value) > 1e-3) {
			t.Errorf("core %d: %v %+v, want %+v", i+1, tells, o, want)
		}
	}
}

// A short core after which the crew goes on with whole ones was short by itself and tells nothing of the sediment. One after
// which another tool is used was stopped. Two at the end of the log are taken to be stopped; one may be either.
func TestAShortCoreIsNotAlwaysAStrokeThatTheSedimentStopped(t *testing.T) {
	other := state.Core{Tool: coring.XCB, Cored: 9.5, Recovered: 9}
	for name, c := range map[string]struct {
		cores []state.Core
		want  []answer // of the cores from the second on
	}{
		"goes on":      {[]state.Core{piston(9.5, 9), piston(5, 5), piston(9.5, 9)}, []answer{no}},
		"goes on late": {[]state.Core{piston(9.5, 9), piston(5, 5), piston(6, 6), piston(9.5, 9)}, []answer{no, no}},
		"other tool":   {[]state.Core{piston(9.5, 9), piston(5, 5), piston(4, 4), other}, []answer{yes, yes}},
		"two last":     {[]state.Core{piston(9.5, 9), piston(5, 5), piston(4, 4)}, []answer{yes, yes}},
		"one last":     {[]state.Core{piston(9.5, 9), piston(9.5, 9), piston(4, 4)}, []answer{no, unsure}},
	} {
		l := cored(t, 0.5, c.cores...)
		for i, want := range c.want {
			if float64(c.cores[i+1].Cored) > 9 {
				continue // whole
			}
			if got := l.stopped(i + 1); got != want {
				t.Errorf("%s: core %d %v, want %v", name, i+2, got, want)
			}
		}
		l.ground()
		strength, exact := l.seen[l.v.Sites[0].Layers[0].Strength], 0
		for _, o := range strength {
			if o.Bound == learn.Exactly {
				exact++
			}
		}
		stopped := 0
		for _, want := range c.want {
			if want == yes {
				stopped++
			}
		}
		if exact != stopped {
			t.Errorf("%s: %d strokes tell how strong the sediment is, want %d", name, exact, stopped)
		}
	}
}

// A core as long as the stage had left is a whole stroke: it tells that the sediment is no stronger, not that it stopped the corer.
func TestTheLastCoreOfAStageIsWhole(t *testing.T) {
	var cores []state.Core
	for range 20 {
		cores = append(cores, piston(9.5, 9.5))
	}
	l := cored(t, 0.5, append(cores, piston(5, 5))...) // down to 195 m, where the hole ends
	l.ground()
	seen := l.seen[l.v.Sites[0].Layers[0].Strength]
	if len(seen) != deepenings {
		t.Errorf("%d strokes tell of the sediment, want %d", len(seen), deepenings)
	}
	for _, o := range seen {
		if o.Bound != learn.AtMost {
			t.Errorf("%+v", o)
		}
	}
}

// Cores that come up at once meet one sea, and what it took is one error of all of them; those of other months do not hang
// together, nor those of other sites.
func TestCoresOfOneSeaHaveOneError(t *testing.T) {
	l := cored(t, 2.5, piston(9.5, 9), piston(9.5, 9), piston(9.5, 9), piston(9.5, 9))
	at := l.x.State.At
	for i, before := range []time.Duration{0, 0, 0, 60 * 24 * time.Hour} {
		l.x.State.Cores[i].OnDeck = at.Add(-before)
	}
	if a, b := l.inSameSea(0), l.inSameSea(3); math.Abs(a-3) > 1e-6 || math.Abs(b-1) > 1e-6 {
		t.Errorf("%.3f and %.3f cores in the same sea, want 3 and 1", a, b)
	}
}

// An error of a share of the value moves the score by as much for a value that is high as for one that is low. By hand, for a
// lognormal of median 0.9 and factor 1.2: the score is ln(v / 0.9) / s with s = ln 1.2 / 1.2816 = 0.1423, so that 2 % are a score
// of 0.02 / 0.1423 = 0.141 at any value.
func TestAnErrorOfTheSeaCountsAlikeForAllCores(t *testing.T) {
	l := cored(t, 2.5, piston(9.5, 9))
	q := recoveries(l)
	for _, score := range []float64{-1.5, 0, 1.5} {
		value := q.At(score)
		moved := asScores(q, value, 0.02) / (value * math.Log(1.2) / 1.2816)
		if math.Abs(moved-0.141) > 0.004 {
			t.Errorf("at a score of %g the error moves it by %.4f, by hand 0.141", score, moved)
		}
	}
}
