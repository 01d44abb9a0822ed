package choice

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

// counted is pairs of outcomes with so many gains and losses, and the rest alike.
func counted(gained, lost, n int) (a, b []outcome) {
	a, b = make([]outcome, n), make([]outcome, n)
	for i := range n {
		a[i][rankOneDone] = oneIf(i < gained || i%2 == 0 && i >= gained+lost)
		b[i][rankOneDone] = oneIf(i >= gained && (i < gained+lost || i%2 == 0))
	}
	return a, b
}

func TestReplicationsThatDifferAreCounted(t *testing.T) {
	a, b := counted(3, 5, 40)
	d := discord(a, b, rankOneDone)
	if d != (discordant{3, 5, 40}) {
		t.Fatalf("%+v", d)
	}
	if got, want := d.mean(), meritsOf(a).first-meritsOf(b).first; math.Abs(got-want) > 1e-15 {
		t.Errorf("mean %g, difference of the means %g", got, want)
	}
}

// Where no replication differs Tango's equation is that of Wilson for nothing in n, n d/(1-d) = z^2: by hand
// d = z^2/(n+z^2). Where all differ one way it is the same from the other end.
func TestIntervalOfChancesIsWilsonsWhereNothingDiffers(t *testing.T) {
	z2 := math.Pow(distuv.UnitNormal.Quantile(0.975), 2)
	for _, n := range []int{1, 8, 100, 4000} {
		want := z2 / (float64(n) + z2)
		if got := (discordant{0, 0, n}).score(0.025); math.Abs(got.High-want) > 1e-9 || math.Abs(got.Low+want) > 1e-9 || got.Mean != 0 {
			t.Errorf("of %d alike: %+v, want %g either way", n, got, want)
		}
		if got := (discordant{n, 0, n}).score(0.025); got.High != 1 || got.Mean != 1 || !(got.Low < 1) {
			t.Errorf("of %d gained: %+v", n, got)
		}
	}
}

// The bounds are where the score test, with the likeliest chance of a loss found here by trying, just says no.
func TestIntervalOfChancesIsWhereTheScoreTestTurns(t *testing.T) {
	z := distuv.UnitNormal.Quantile(0.975)
	for _, d := range []discordant{{40, 20, 160}, {20, 40, 160}, {5, 0, 30}, {0, 5, 30}, {12, 2, 1000}} {
		got := d.score(0.025)
		for _, bound := range []float64{got.Low, got.High} {
			loss := likeliestLoss(d, bound)
			errors := (float64(d.gained-d.lost) - float64(d.n)*bound) / math.Sqrt(float64(d.n)*(2*loss+bound-bound*bound))
			if math.Abs(math.Abs(errors)-z) > 1e-4 {
				t.Errorf("%+v: at %g the counts are %g standard errors off, want %g", d, bound, errors, z)
			}
		}
	}
}

// likeliestLoss is the chance of a loss that makes the counts likeliest where the chance of a gain is
// higher by a difference, by ever finer steps.
func likeliestLoss(d discordant, difference float64) (best float64) {
	logOf := func(count int, p float64) float64 {
		if count == 0 {
			return 0
		}
		return float64(count) * math.Log(p)
	}
	likelihood := func(loss float64) float64 {
		return logOf(d.gained, loss+difference) + logOf(d.lost, loss) + logOf(d.n-d.gained-d.lost, 1-2*loss-difference)
	}
	from, to := max(0, -difference), (1-difference)/2
	for range 12 {
		most := math.Inf(-1)
		step := (to - from) / 20
		for i := range 21 {
			if l := likelihood(from + float64(i)*step); l > most {
				most, best = l, from+float64(i)*step
			}
		}
		from, to = max(from, best-step), min(to, best+step)
	}
	return best
}

// What never came in n may have any chance up to 1-b^(1/n), and what always came down to b^(1/n): then
// nothing in n has the chance b. Each of gain and loss has half of what the difference may miss by.
func TestExactBoundsOfWhatNeverOrAlwaysCame(t *testing.T) {
	for _, n := range []int{1, 8, 500, 4000} {
		for _, beyond := range []float64{0.025, 1e-8} {
			got := newExactBounds(n, beyond).interval(discordant{0, 0, n})
			want := 1 - math.Pow(beyond/2, 1/float64(n))
			if math.Abs(got.High/want-1) > 1e-6 || got.Low != -got.High {
				t.Errorf("nothing differs in %d: %+v, want %g either way", n, got, want)
			}
			got = newExactBounds(n, beyond).interval(discordant{n, 0, n})
			if math.Abs(got.Low-(1-2*want)) > 1e-6 || got.High != 1 {
				t.Errorf("all differ in %d: %+v, want from %g", n, got, 1-2*want)
			}
		}
	}
}

// Between them, the bound is the chance with which so many or more come in the share of cases that is allowed.
func TestExactBoundsLeaveTheirShareOfTheBinomialDistribution(t *testing.T) {
	e := newExactBounds(200, 0.01)
	for _, count := range []int{1, 7, 100, 199} {
		more := 1 - distuv.Binomial{N: 200, P: e.least(count)}.CDF(float64(count-1))
		less := distuv.Binomial{N: 200, P: e.most(count)}.CDF(float64(count))
		if math.Abs(more-0.005) > 1e-8 || math.Abs(less-0.005) > 1e-8 {
			t.Errorf("%d of 200: %g have as many, %g as few, want 0.005", count, more, less)
		}
	}
}

// Of 4,000 intervals of 95 % about as many hold the true difference, also with few replications and
// rare failures, for which the test allows for what the score leaves to chance; exact ones hold it at least so often.
func TestIntervalsOfChancesHoldTheTrueDifferenceAtTheirRate(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 1))
	const experiments = 4000
	for _, c := range []struct {
		n           int
		gain, loss  float64
		least, most float64
	}{{20, 0.1, 0.05, 0.93, 1}, {100, 0.02, 0.01, 0.93, 0.99}, {100, 0.01, 0, 0.9, 1}, {1000, 0.06, 0.03, 0.94, 0.96}, {1000, 0.002, 0.002, 0.94, 0.99}} {
		held, sure := 0, 0
		bounds := newExactBounds(c.n, tailOfOneInterval)
		for range experiments {
			d := discordant{n: c.n}
			for range c.n {
				switch u := random.Float64(); {
				case u < c.gain:
					d.gained++
				case u < c.gain+c.loss:
					d.lost++
				}
			}
			truth := c.gain - c.loss
			if i := d.score(tailOfOneInterval); i.Low <= truth && truth <= i.High {
				held++
			}
			if i := bounds.interval(d); i.Low <= truth && truth <= i.High {
				sure++
			}
		}
		if share := float64(held) / experiments; share < c.least || share > c.most {
			t.Errorf("%+v: %.3f of the intervals hold the truth", c, share)
		}
		if sure < 0.95*experiments {
			t.Errorf("%+v: %d of %d exact intervals hold the truth", c, sure, experiments)
		}
	}
}
