package choice

import (
	"context"
	"math"
	"testing"

	"coredays/sim"
	"coredays/sim/simtest"
)

// One plan has a task more, which takes 20 h in the mean, so that is the true difference; the rest
// is drawn alike in both. Of 400 intervals of 95 % from 25 replications each, 380 hold it, give or
// take four standard deviations of the binomial distribution, 17.
func TestPairedIntervalsHoldTheTrueDifferenceAtTheirRate(t *testing.T) {
	long := simtest.Compiled(t, simtest.Tasks(simtest.Evenly(5*simtest.Hours, 80*simtest.Hours), simtest.Evenly(10*simtest.Hours, 30*simtest.Hours)))
	short := simtest.Compiled(t, simtest.Tasks(simtest.Evenly(5*simtest.Hours, 80*simtest.Hours)))
	const experiments = 400
	held := 0
	for seed := range uint64(experiments) {
		c := Compare(context.Background(), []Alternative{{"long", long}, {"short", short}}, sim.Run{Seed: seed, Replications: 25, Workers: 1})
		if d := c.Differences[0].Days; d.Low <= 20*simtest.Hours && 20*simtest.Hours <= d.High {
			held++
		}
		if d := c.Differences[0]; d.AShorter != 0 || d.Same != 0 {
			t.Fatalf("the plan with a task more is shorter in %g of the replications", d.AShorter)
		}
	}
	if math.Abs(float64(held)-0.95*experiments) > 17 {
		t.Errorf("%d of %d intervals hold the true difference", held, experiments)
	}
}

// Both plans succeed in every replication. That settles by days only where so many successes leave no
// chance of a failure above what counts as the same: by hand, 0.0125^(1/n) is at least 0.99 from 436.01 on.
func TestWhatIsDrawnAlikeFallsOutOfTheDifference(t *testing.T) {
	long := simtest.Compiled(t, simtest.Tasks(simtest.Evenly(5*simtest.Hours, 80*simtest.Hours), simtest.Just(20*simtest.Hours)))
	short := simtest.Compiled(t, simtest.Tasks(simtest.Evenly(5*simtest.Hours, 80*simtest.Hours)))
	for replications, told := range map[int]bool{50: false, 435: false, 438: true} {
		c := Compare(context.Background(), []Alternative{{"long", long}, {"short", short}}, sim.Run{Seed: 1, Replications: replications})
		if d := c.Differences[0]; math.Abs(d.Days.Mean-20*simtest.Hours) > 1 || d.Days.High-d.Days.Low > 1 {
			t.Errorf("the difference is %+v s", d.Days)
		}
		if c.Best != 1 || c.Alternatives[0].Alike == told {
			t.Errorf("best is %d; the longer one can't be told from it: %v", c.Best, c.Alternatives[0].Alike)
		}
	}
}

// By hand: the tangent for one degree of freedom, and for two the root of 2/(1/b^2-1), b being the share
// inside; these are the distributions that have a closed form.
func TestQuantilesOfStudentsT(t *testing.T) {
	if got, want := upperT(2, 0.025), math.Tan(math.Pi*(0.5-0.025)); math.Abs(got/want-1) > 1e-9 {
		t.Errorf("of two replications %.6f, want %.6f", got, want)
	}
	if got, want := upperT(3, 0.025), math.Sqrt(2/(1/(0.95*0.95)-1)); math.Abs(got/want-1) > 1e-9 {
		t.Errorf("of three replications %.6f, want %.6f", got, want)
	}
	if got := upperT(1, 0.025); !math.IsInf(got, 1) {
		t.Errorf("of one replication %g", got)
	}
	if got, want := oneInterval(3), upperT(3, 0.025); got != want { // 95 % in all
		t.Errorf("for an interval by itself %.6f, want %.6f", got, want)
	}
}

// By hand: the differences 1, 2 and 6 have the mean 3 and the variance (4+1+9)/2 = 7.
func TestPairedIntervalIsTheMeanAndSoManyStandardErrors(t *testing.T) {
	var a, b []outcome
	for _, x := range []float64{1, 2, 6} {
		a, b = append(a, outcome{daysNeeded: 10 + x}), append(b, outcome{daysNeeded: 10})
	}
	got, half := pair(a, b, daysNeeded).interval(4), 4*math.Sqrt(7.0/3)
	if math.Abs(got.Mean-3) > 1e-12 || math.Abs(got.Low-3+half) > 1e-12 || math.Abs(got.High-3-half) > 1e-12 {
		t.Errorf("%+v, want 3 and %g either way", got, half)
	}
}

func TestReplicationsToSettleADifferenceGrowWithItsNoise(t *testing.T) {
	// By hand: (1.96 * 2 / 0.1)^2 = 1536.6.
	if n, more := (paired{mean: 0.1, sd: 2, n: 100}).replicationsNeeded(); n != 1537 || more {
		t.Errorf("%d, %v", n, more)
	}
	if n, _ := (paired{mean: 1, sd: 2, n: 100}).replicationsNeeded(); n != 0 {
		t.Errorf("a settled difference wants %d replications", n)
	}
	if n, more := (paired{mean: 1e-9, sd: 2, n: 100}).replicationsNeeded(); n != mostReplicationsNeeded || !more {
		t.Errorf("%d, %v", n, more)
	}
}

func TestReplicationsOfOneAlternativeAreThoseOfASimulation(t *testing.T) {
	v := simtest.Compiled(t, simtest.Uncertain())
	c := Compare(context.Background(), []Alternative{{"it", v}}, sim.Run{Seed: 3, Replications: 60})
	if got, want := c.Alternatives[0].Summary.Needed.Total, sim.Replicate(t.Context(), simtest.Compiled(t, simtest.Uncertain()), sim.Run{Seed: 3, Replications: 60, Workers: 1}).Summary().Needed.Total; got != want {
		t.Errorf("compared %+v, simulated %+v", got, want)
	}
}
