package sim

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/stat"

	"coredays/model/chance"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
	"coredays/sim/random"
	"coredays/sim/simtest"
)

// The draws that the engine makes, expedition after expedition, held against the normal scores that they are
// said to be: errors are those of a sample of so many.

const expeditions = 20_000

// leveled is a lognormal rate whose scores can be given from its values.
type leveled struct {
	rate rig.Rate
	spread.Quantity
}

const (
	evenLevel = 25.0
	spreadOf  = 1.5 // P90 value over median
)

// at spreads a rate over levels.
func at(r rig.Rate, shares spread.Shares, persistence, common float64) leveled {
	shape, err := spread.NewLognormal(evenLevel, spreadOf)
	if err != nil {
		panic(err)
	}
	return leveled{r, spread.Quantity{Shape: shape, Shares: shares, Persistence: persistence, Common: common}}
}

// drawnBy has a ship draw in each of many expeditions: look asks for scores of rates at holes of sites.
func drawnBy(t *testing.T, rates []leveled, look func(score func(r rig.Rate, site, hole string) float64)) {
	t.Helper()
	p := simtest.OneSite(simtest.PistonHole("A", 100))
	for _, l := range rates {
		p.Ship.Rates[l.rate] = l.Quantity
	}
	s := newExpedition(simtest.Compiled(t, p))
	sigma := math.Log(spreadOf) / spread.Score(0.9)
	score := func(r rig.Rate, site, hole string) float64 {
		s.Place = random.Place{Site: chance.KeyOf(site), Hole: chance.KeyOf(site, hole)}
		return math.Log(s.Draw(voyage.Quantity(r))/evenLevel) / sigma
	}
	for n := range expeditions {
		s.Draws.Begins(chance.Replication(11, n))
		look(score)
	}
}

// isNormal holds scores against a standard normal: their mean, their variance, and how many lie below the
// P10 and the P90 value, all within four standard errors.
func isNormal(t *testing.T, what string, scores []float64) {
	t.Helper()
	mean, variance := stat.MeanVariance(scores, nil)
	if math.Abs(mean) > 4/math.Sqrt(expeditions) || math.Abs(variance-1) > 4*math.Sqrt(2.0/expeditions) {
		t.Errorf("%s: scores of mean %.3f and variance %.3f, want 0 and 1", what, mean, variance)
	}
	for _, p := range []float64{0.1, 0.5, 0.9} {
		below := float64(floats.Count(func(z float64) bool { return z < spread.Score(p) }, scores)) / expeditions
		if math.Abs(below-p) > 4*math.Sqrt(p*(1-p)/expeditions) {
			t.Errorf("%s: %.3f of the draws lie below the quantile %g", what, below, p)
		}
	}
}

// correlate wants a correlation of two normal scores, within four of its standard errors, (1-r²)/√n.
func correlate(t *testing.T, what string, a, b []float64, want float64) {
	t.Helper()
	if got := stat.Correlation(a, b, nil); math.Abs(got-want) > 4*(1-want*want)/math.Sqrt(expeditions) {
		t.Errorf("%s correlate by %.3f, want %.3f", what, got, want)
	}
}

// Two quantities of the expedition that load 0.8 and 0.6 on what all share correlate by 0.48; one that loads
// nothing does not, and one that loads the other way by -0.3 with the second. Each keeps its spread.
func TestQuantitiesOfAnExpeditionCorrelateByTheProductOfTheirLoadings(t *testing.T) {
	all := []rig.Rate{rig.PistonDurationFactor, rig.ExtendedDurationFactor, rig.RotaryDurationFactor, rig.Tripping}
	loadings := []float64{0.8, 0.6, 0, -0.5}
	var rates []leveled
	for i, r := range all {
		rates = append(rates, at(r, spread.All(spread.Expedition), 0, loadings[i]))
	}
	scores := make([][]float64, len(all))
	drawnBy(t, rates, func(score func(rig.Rate, string, string) float64) {
		for i, r := range all {
			scores[i] = append(scores[i], score(r, "S", "A"))
		}
	})
	for i, r := range all {
		isNormal(t, r.Of().Key, scores[i])
		for j := range i {
			correlate(t, all[j].Of().Key+" and "+r.Of().Key, scores[j], scores[i], loadings[j]*loadings[i])
		}
	}
}

// Only the expedition's share is common: with 0.5 of the variance there, loadings of 0.8 make 0.5 x 0.64.
func TestOnlyTheShareOfTheExpeditionIsCommon(t *testing.T) {
	shares := spread.Shares{0.5, 0.2, 0.2, 0.1}
	var a, b []float64
	drawnBy(t, []leveled{at(rig.PistonDurationFactor, shares, 0, 0.8), at(rig.RotaryDurationFactor, shares, 0, 0.8)}, func(score func(rig.Rate, string, string) float64) {
		a, b = append(a, score(rig.PistonDurationFactor, "S", "A")), append(b, score(rig.RotaryDurationFactor, "S", "A"))
	})
	isNormal(t, "a quantity at all levels", a)
	correlate(t, "two paces", a, b, 0.5*0.64)
}

// Runs tied to the one before by 0.6 correlate by 0.6, 0.36 and 0.216 with those one, two and three later;
// each of them, the first and the tenth alike, has the whole spread. Another hole begins anew.
func TestEachRunRemembersTheOneBeforeByItsPersistence(t *testing.T) {
	var runs [10][]float64
	var other []float64
	drawnBy(t, []leveled{at(rig.ExtendedDurationFactor, spread.All(spread.Run), 0.6, 0)}, func(score func(rig.Rate, string, string) float64) {
		for i := range runs {
			runs[i] = append(runs[i], score(rig.ExtendedDurationFactor, "S", "A"))
		}
		other = append(other, score(rig.ExtendedDurationFactor, "S", "B"))
	})
	for _, i := range []int{0, 1, 9} {
		isNormal(t, "a run tied to the last", runs[i])
	}
	isNormal(t, "the first run of another hole", other)
	for later, want := range map[int]float64{1: 0.6, 2: 0.36, 3: 0.216} {
		correlate(t, "runs", runs[1], runs[1+later], want)
		correlate(t, "later runs", runs[6], runs[6+later], want)
	}
	correlate(t, "the runs of two holes", runs[9], other, 0)
}

// The fitted shares of the extended barrel, 34 % expedition, 23 % hole, 43 % run, with a lag-1 correlation of
// 0.6 of its runs: two cores in a row share 0.34 + 0.23 + 0.43 x 0.6, two cores of different holes of the
// expedition 0.34. A part for the site, and independent runs, in the second case.
func TestDrawsShareTheVarianceOfTheLevelsThatTheyHaveInCommon(t *testing.T) {
	for _, c := range []struct {
		shares            spread.Shares
		persistence       float64
		next, hole, apart float64
	}{
		{spread.Shares{0.34, 0, 0.23, 0.43}, 0.6, 0.828, 0.34, 0.34},
		{spread.Shares{0.3, 0.25, 0.2, 0.25}, 0, 0.75, 0.55, 0.3},
	} {
		var first, next, hole, apart []float64
		drawnBy(t, []leveled{at(rig.ExtendedDurationFactor, c.shares, c.persistence, 0)}, func(score func(rig.Rate, string, string) float64) {
			first = append(first, score(rig.ExtendedDurationFactor, "S", "A"))
			next = append(next, score(rig.ExtendedDurationFactor, "S", "A"))
			hole = append(hole, score(rig.ExtendedDurationFactor, "S", "B"))
			apart = append(apart, score(rig.ExtendedDurationFactor, "T", "A"))
		})
		isNormal(t, "a core", next)
		correlate(t, "two cores in a row", first, next, c.next)
		correlate(t, "cores of two holes of a site", first, hole, c.hole)
		correlate(t, "cores of two sites", first, apart, c.apart)
	}
}

// A chance of 0.3 comes true three times in ten, at the first time and at the fifth, one not stated by the other.
func TestWhatHappensDoesSoAsOftenAsItsChance(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 100))
	p.Ship.Rates[rig.PistonTrouble] = simtest.Just(0.3)
	s := sailedTo(t, p)
	var first, fifth []float64
	for n := range expeditions {
		s.Draws.Begins(chance.Replication(12, n))
		var times [5]float64
		for i := range times {
			times[i] = flag(s.Happens(rig.PistonTrouble))
		}
		first, fifth = append(first, times[0]), append(fifth, times[4])
	}
	for _, times := range [][]float64{first, fifth} {
		if got := stat.Mean(times, nil); math.Abs(got-0.3) > 4*math.Sqrt(0.3*0.7/expeditions) {
			t.Errorf("happens %.3f of the times", got)
		}
	}
	correlate(t, "the first and the fifth time", first, fifth, 0)
}

// The depths of a hole are off those of its neighbours by two metres, up in half of the expeditions.
func TestDepthsAreOffEitherWayAlike(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 100))
	p.Ship.Rates[rig.DepthMismatch] = simtest.Just(2)
	s := newExpedition(simtest.Compiled(t, p))
	const n = 2000
	up := 0.0
	for i := range n {
		s.begins(5, i)
		s.Place = random.Place{Site: chance.KeyOf("S"), Hole: chance.KeyOf("S", "A")}
		s.meetGround()
		if math.Abs(s.Shift) != 2 {
			t.Fatalf("off by %g m, want 2", s.Shift)
		}
		up += flag(s.Shift < 0)
	}
	if math.Abs(up-n/2) > 4*math.Sqrt(n)/2 {
		t.Errorf("up in %g of %d expeditions", up, n)
	}
}

func TestWhatCannotHappenDoesNotAndWhatIsCertainDoes(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 100))
	p.Ship.Rates[rig.PistonTrouble], p.Ship.Rates[rig.RotaryTrouble] = simtest.Just(0), simtest.Just(1)
	s := sailedTo(t, p)
	for range 1000 {
		if s.Happens(rig.PistonTrouble) || !s.Happens(rig.RotaryTrouble) {
			t.Fatal("chances of 0 and 1 are not kept")
		}
	}
}
