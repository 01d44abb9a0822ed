package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"coredays/cmd/fitlevels/regress"
)

func seeded(n uint64) *rand.Rand { return rand.New(rand.NewPCG(n, 7)) }

// within fails when the estimate lies more than three standard errors from the truth.
func within(t *testing.T, what string, got, truth, stdErr float64) {
	t.Helper()
	if !(math.Abs(got-truth) <= 3*stdErr) || stdErr <= 0 {
		t.Errorf("%s: %.4g, truth %.4g, standard error %.4g", what, got, truth, stdErr)
	}
}

// world invents cycles of one tool with known line, spreads and trouble.
type world struct {
	legs, holes, cores int
	constant, slope    float64 // min, min per km
	leg, hole, run     float64 // sd of ln(cycle)
	lag                float64
	chance, lost       float64 // trouble a core, and its loss in hole medians
}

func (w world) cycles(random *rand.Rand) []Cycle {
	var list []Cycle
	for l := range w.legs {
		legEffect := w.leg * random.NormFloat64()
		for h := range w.holes {
			water, holeEffect := 0.3+5*random.Float64(), w.hole*random.NormFloat64()
			run := random.NormFloat64()
			for range w.cores {
				run = w.lag*run + math.Sqrt(1-w.lag*w.lag)*random.NormFloat64()
				m := (w.constant + w.slope*water) * math.Exp(legEffect+holeEffect+w.run*run)
				if random.Float64() < w.chance {
					m = (w.constant + w.slope*water) * math.Exp(legEffect+holeEffect) * (1 + w.lost)
				}
				leg := fmt.Sprint(l)
				name := leg + "-" + fmt.Sprint(h)
				list = append(list, Cycle{Leg: leg, Site: name, Hole: name, Tool: "H", Water: water, Cored: 9.5, Minutes: m})
			}
		}
	}
	return list
}

func TestLineOfHoleMediansIsRecoveredInSpiteOfTrouble(t *testing.T) {
	w := world{legs: 30, holes: 8, cores: 12, constant: 30, slope: 9, leg: 0.1, hole: 0.1, run: 0.15, chance: 0.05, lost: 6}
	fit, _ := toolFit("H", byHole(w.cycles(seeded(1)), leastCycles))
	within(t, "constant", fit.Line.Value[0], 30, fit.Line.StdErr[0])
	within(t, "slope", fit.Line.Value[1], 9, fit.Line.StdErr[1])
	if fit.Line.StdErr[1] > 1 {
		t.Errorf("standard error of the slope is %.2g min/km: too wide to tell anything", fit.Line.StdErr[1])
	}
}

func TestMedianLineIgnoresOneWildPoint(t *testing.T) {
	rows := [][]float64{{1, 0}, {1, 1}, {1, 2}, {1, 3}, {1, 4}}
	b := regress.LeastAbsolute(rows, []float64{2, 5, 8, 11, 1000})
	if math.Abs(b[0]-2) > 0.05 || math.Abs(b[1]-3) > 0.05 {
		t.Errorf("line %v, want 2 + 3 x through the four points in line", b)
	}
}

func TestSpreadsOfLegHoleAndRunAreRecovered(t *testing.T) {
	w := world{legs: 40, holes: 6, cores: 15, constant: 30, slope: 9, leg: 0.3, hole: 0.2, run: 0.12}
	fit, _ := toolFit("H", byHole(w.cycles(seeded(2)), leastCycles))
	l := fit.Splits[0].Levels
	for i, truth := range []float64{0.3, 0.2, 0.12} {
		within(t, []string{"leg", "hole", "run"}[i], l.SD[i], truth, l.StdErr[i])
	}
}

// Two groups (1, 3) and (7, 9): mean squares between = 36, within = 2, so the group variance is
// (36-2)/2 = 17 and the variance within 2, by hand.
func TestNestedVariancesEqualHandAnalysisOfVariance(t *testing.T) {
	v := nestedVariances([]float64{1, 3, 7, 9}, []string{"a", "a", "b", "b"})
	if math.Abs(v[0]-17) > 1e-9 || math.Abs(v[1]-2) > 1e-9 {
		t.Errorf("variances %v, want 17 and 2", v)
	}
}

func TestLagCorrelationIsRecoveredInShortHoles(t *testing.T) {
	for _, truth := range []float64{0, 0.6} {
		w := world{legs: 20, holes: 10, cores: 15, constant: 30, slope: 9, run: 0.2, lag: truth}
		lag := lagPairs{}
		for _, hole := range byHole(w.cycles(seeded(3)), 1) {
			lag.add(column(hole, func(c Cycle) float64 { return math.Log(c.Minutes) }))
		}
		within(t, "lag 1", lag.correlation(), truth, 1.5*math.Sqrt((1-truth*truth)/3000)) // Bartlett's, half again for the unknown means
	}
}

func TestTroubleChanceAndLossAreRecovered(t *testing.T) {
	w := world{legs: 25, holes: 8, cores: 20, constant: 30, slope: 9, leg: 0.2, hole: 0.2, run: 0.1, chance: 0.04, lost: 3}
	fit, _ := toolFit("H", byHole(w.cycles(seeded(4)), leastCycles))
	for _, split := range fit.Splits {
		within(t, split.Rule, split.Trouble.Chance, 0.04, split.Trouble.ChanceErr)
		// The hole's median is of 20 cycles: its own error of 1.25 x 0.1 / sqrt(20) averages out over 160 cases.
		within(t, "loss over median", split.Trouble.MeanRatio, 3, 4*1.25*0.1/math.Sqrt(20)/math.Sqrt(160)+0.02)
	}
}

func TestSlowGroundIsNoTroubleByNeighbours(t *testing.T) {
	var hole []Cycle
	for i := range 40 {
		m := 50.0
		if i >= 25 {
			m = 150 // rock to the end of the hole
		}
		if i == 10 {
			m = 400 // one accident
		}
		hole = append(hole, Cycle{Leg: "1", Site: "1", Hole: "1", Minutes: m})
	}
	splits := splitsOf(residualsOf([][]Cycle{hole}, func(Cycle) float64 { return 50 }))
	if got := splits[0].Trouble.Chance * 40; math.Abs(got-16) > 1e-9 {
		t.Errorf("by hole median: %g cycles, want 15 of rock and the accident", got)
	}
	// The first two cores of rock have mostly soft neighbours still, so they may count; the rest may not.
	if got := splits[1].Trouble.Chance * 40; got < 1 || got > 3.0001 {
		t.Errorf("by neighbours: %g cycles, want the accident and at most the two at the edge", got)
	}
}

func TestRotaryRateAndHandlingAreRecovered(t *testing.T) {
	random := seeded(5)
	var holes [][]Cycle
	var truths []float64
	for h := range 60 {
		var hole []Cycle
		water := 0.2 + 4*random.Float64()
		for range 30 {
			rate := math.Exp(2.3 + 1.1*random.NormFloat64()) // m/h, median 10; 5 % cut a core in under 10 min
			truths = append(truths, rate)
			hole = append(hole, Cycle{Leg: fmt.Sprint(h / 4), Site: fmt.Sprint(h), Hole: fmt.Sprint(h), Tool: "R", Water: water,
				Cored: 9.5, Minutes: 18 + 11*water + 9.5/rate*60})
		}
		holes = append(holes, hole)
	}
	r := rotaryOf(holes, 11)
	// The 5 % quantile of cutting is 9.3 min (57 min x exp(-1.1 x 1.645)), the study allows 5: 4.3 min of bias are built in.
	within(t, "handling", r.Handling, 18+9.3-fastest, 1)
	known := Rotary{Wire: 11, Handling: 18}
	within(t, "median rate with known handling", known.class(holes[0], 0, 1).Cores.P50, spread(truths[:30]).P50, 0.01)
}
