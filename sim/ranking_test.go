package sim

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
	if got, want := unbeaten(list), []bool{true, true, false, true, true}; !slices.Equal(got, want) {
		t.Errorf("unbeaten %v, want %v", got, want)
	}
}

// madeUp draws outcomes of alternatives with given true means that share most of their luck: days
// with a standard deviation of 6 d, of which 4.5 d are common to all.
func madeUp(truth []merits, seed uint64, n int) [][]outcome {
	list := make([][]outcome, len(truth))
	for i, m := range truth {
		for r := range n {
			luck := chance.Replication(seed, r)
			own := luck.For(chance.Key(i + 1))
			shared := luck.Normal(0)
			var o outcome
			o[days] = m.days + 86400*(4.5*shared+4*own.Normal(0))
			u := 0.5 * math.Erfc(-(0.8*shared+0.6*own.Normal(1))/math.Sqrt2)
			o[first] = flag(u < m.first)
			list[i] = append(list[i], o)
		}
	}
	return list
}

// In 300 experiments the true best is ruled out at most about 15 times, 95 % of the time being the
// promise; more than 30 would be four standard deviations too many.
func TestTheTrueBestIsSeldomRuledOut(t *testing.T) {
	const d = 86400
	truth := []merits{{0.80, 50 * d, 0}, {0.80, 50.5 * d, 0}, {0.70, 50 * d, 0}, {0.80, 54 * d, 0}, {0.5, 58 * d, 0}}
	lost, told := 0, 0
	for seed := range uint64(300) {
		able := possible(madeUp(truth, seed, 300), 0.05)
		if !able[0] {
			lost++
		}
		if !able[4] {
			told++
		}
	}
	if lost > 30 {
		t.Errorf("the best was ruled out in %d of 300 experiments", lost)
	}
	if told < 300 {
		t.Errorf("the one far behind was ruled out in only %d of 300 experiments", told)
	}
}

func TestTheFirstByTheRuleIsNeverRuledOut(t *testing.T) {
	const d = 86400
	truth := []merits{{0.90, 50 * d, 0}, {0.91, 50.3 * d, 0}, {0.92, 50.6 * d, 0}, {0.93, 51 * d, 0}}
	for seed := range uint64(200) {
		all := madeUp(truth, seed, 40)
		if best := ranked(allMerits(all))[0]; !possible(all, 0.05)[best] {
			t.Fatalf("seed %d: alternative %d comes first and is ruled out", seed, best)
		}
	}
}
