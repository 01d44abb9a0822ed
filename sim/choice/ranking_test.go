package choice

import (
	"math"
	"slices"
	"testing"

	"coredays/model/chance"
)

func TestChanceComesFirstThenDaysThenMetres(t *testing.T) {
	const d = 86400
	list := []merits{
		{first: 0.90, days: 50 * d, metres: 3000},
		{first: 0.95, days: 54 * d, metres: 3000},
		{first: 0.945, days: 52 * d, metres: 3000}, // as good a chance as the one before, in fewer days
		{first: 0.945, days: 52 * d, metres: 3100}, // and more metres
		{first: 0.90, days: 51 * d, metres: 3500},
	}
	if got, want := ranked(list), []int{3, 2, 1, 0, 4}; !slices.Equal(got, want) {
		t.Errorf("ranked %v, want %v", got, want)
	}
	if got, want := nondominated(list), []bool{true, true, false, true, true}; !slices.Equal(got, want) {
		t.Errorf("unbeaten %v, want %v", got, want)
	}
}

// madeUp draws outcomes of alternatives with given true means that share most of their random numbers: days
// with a standard deviation of 6 d, of which 4.5 d are common to all.
func madeUp(truth []merits, seed uint64, n int) [][]outcome {
	list := make([][]outcome, len(truth))
	for i, m := range truth {
		for r := range n {
			stream := chance.Replication(seed, r)
			own := stream.For(chance.Key(i + 1))
			shared := stream.Normal(0)
			var o outcome
			o[daysNeeded] = m.days + 86400*(4.5*shared+4*own.Normal(0))
			u := 0.5 * math.Erfc(-(0.8*shared+0.6*own.Normal(1))/math.Sqrt2)
			o[rankOneDone] = oneIf(u < m.first)
			list[i] = append(list[i], o)
		}
	}
	return list
}

// lostAndTold is in how many of so many experiments the first alternative, which is the true best, is ruled
// out, and in how many the last one is.
func lostAndTold(truth []merits, replications, experiments int) (lost, told int) {
	for seed := range uint64(experiments) {
		able := notRuledOut(madeUp(truth, seed, replications), 1-confidence)
		lost += int(oneIf(!able[0]))
		told += int(oneIf(!able[len(truth)-1]))
	}
	return lost, told
}

// atMost is four standard deviations of the binomial distribution above the share that may be wrong.
func atMost(experiments int) int {
	wrong := float64(experiments) * (1 - confidence)
	return int(wrong + 4*math.Sqrt(wrong*confidence))
}

// Rivals need a day less than the true best and have chances 1 to 10 points lower, so that days must not
// count. Against each of them and against all, and however few the replications, the promise is kept.
func TestTheTrueBestIsSeldomRuledOutForRivalsThatAreShorter(t *testing.T) {
	const d = 86400
	truth := []merits{{0.80, 50 * d, 0}}
	for _, points := range []float64{1.01, 2, 3, 4, 5, 6, 7, 8, 9, 10} {
		truth = append(truth, merits{0.80 - points/100, 49 * d, 0})
	}
	for replications, experiments := range map[int]int{8: 400, 100: 400, 400: 200, 1000: 100, 4000: 30} {
		lost := make([]int, len(truth)) // to each rival; to all of them at 0
		for seed := range uint64(experiments) {
			everyone := madeUp(truth, seed, replications)
			lost[0] += int(oneIf(!notRuledOut(everyone, 1-confidence)[0]))
			for i := 1; i < len(truth); i++ {
				lost[i] += int(oneIf(!notRuledOut([][]outcome{everyone[0], everyone[i]}, 1-confidence)[0]))
			}
		}
		if slices.Max(lost) > atMost(experiments) {
			t.Errorf("of %d experiments of %d replications the best is ruled out by all in the first number, by rivals 1 to 10 points behind in the others: %v", experiments, replications, lost)
		}
	}
}

// Two rivals that fail where the best does, now and then, and else take 30 d less: from eight replications it
// must not be given that they take less, nor from a few hundred that they never fail.
func TestARareFailureIsNotTakenForNone(t *testing.T) {
	const d = 86400
	lost := 0
	for seed := range uint64(400) {
		all := madeUp([]merits{{0.97, 50 * d, 0}, {0.97, 20 * d, 0}, {0.97, 20 * d, 0}}, seed, 8)
		for _, rival := range all[1:] {
			copy(rival, all[0]) // all alike, so that nothing has any width
			for r := range rival {
				rival[r][daysNeeded] -= 30 * d
			}
		}
		lost += int(oneIf(!notRuledOut(all, 1-confidence)[0]))
	}
	if lost > 0 {
		t.Errorf("ruled out in %d of 400 experiments", lost)
	}
}

func TestTheTrueBestIsSeldomRuledOutAndTheOneFarBehindIs(t *testing.T) {
	const d = 86400
	truth := []merits{{0.80, 50 * d, 0}, {0.80, 50.5 * d, 0}, {0.70, 50 * d, 0}, {0.80, 54 * d, 0}, {0.5, 58 * d, 0}}
	lost, told := lostAndTold(truth, 300, 300)
	if lost > atMost(300) {
		t.Errorf("the best was ruled out in %d of 300 experiments", lost)
	}
	if told < 300 {
		t.Errorf("the one far behind was ruled out in only %d of 300 experiments", told)
	}
}

// Days tell where everything gets done anyhow: in 1,000 replications nothing fails, so that no chance can be a
// point lower, by hand 1-0.0125^(1/1000) = 0.44 % at most.
func TestDaysTellWhereEverythingGetsDoneAnyhow(t *testing.T) {
	const d = 86400
	if lost, told := lostAndTold([]merits{{1, 50 * d, 0}, {1, 51 * d, 0}}, 1000, 100); lost > 0 || told < 100 {
		t.Errorf("the best was ruled out in %d of 100 experiments, the longer one in %d", lost, told)
	}
	if lost, _ := lostAndTold([]merits{{1, 50 * d, 0}, {1, 50.05 * d, 0}}, 1000, 100); lost > atMost(100) {
		t.Errorf("the best was ruled out in %d of 100 experiments by what takes an hour more", lost)
	}
}

// Where the highest chance belongs to a long one, the best is the shorter of those within a point of it. One
// that is within a point of that, but not of the highest, does not rule it out.
func TestAChanceCountsAsTheSameAgainstTheHighestOfAll(t *testing.T) {
	const d = 86400
	truth := []merits{{0.992, 50 * d, 0}, {0.9975, 60 * d, 0}, {0.9855, 49 * d, 0}}
	if lost, _ := lostAndTold(truth, 20_000, 12); lost > 0 {
		t.Errorf("the best was ruled out in %d of 12 experiments", lost)
	}
}

// By hand: of five there are ten pairs, each with two bounds in chance and two in days; the best has four
// rivals, each with two bounds.
func TestBoundsShareWhatMayBeMissed(t *testing.T) {
	for _, c := range []struct {
		k           int
		all, ofBest float64
	}{{1, 0.05 / 4, 0.05 / 2}, {2, 0.05 / 4, 0.05 / 2}, {5, 0.05 / 40, 0.05 / 8}} {
		if got := tailOfAllPairs(c.k, 0.05); math.Abs(got-c.all) > 1e-15 {
			t.Errorf("bounds of all pairs of %d may each miss with a chance of %g, want %g", c.k, got, c.all)
		}
		if got := tailOfTheBest(c.k, 0.05); math.Abs(got-c.ofBest) > 1e-15 {
			t.Errorf("bounds against the best of %d may each miss with a chance of %g, want %g", c.k, got, c.ofBest)
		}
	}
}

func TestTheFirstByTheRuleIsNeverRuledOut(t *testing.T) {
	const d = 86400
	truth := []merits{{0.90, 50 * d, 0}, {0.91, 50.3 * d, 0}, {0.92, 50.6 * d, 0}, {0.93, 51 * d, 0}}
	for seed := range uint64(200) {
		all := madeUp(truth, seed, 40)
		if best := ranked(allMerits(all))[0]; !notRuledOut(all, 0.05)[best] {
			t.Fatalf("seed %d: alternative %d comes first and is ruled out", seed, best)
		}
	}
}

func oneIf(yes bool) float64 {
	if yes {
		return 1
	}
	return 0
}
