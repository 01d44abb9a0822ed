package choice

import (
	"cmp"
	"math"
	"slices"
)

// The rule of merit: by the chance that everything of the first rank gets done within the days, then
// by days needed, then by metres. Chances within sameChance of the highest count as equal, and so do
// days within a minute.
const (
	sameChance = 0.01
	sameTime   = 60 // s
)

// merits are the mean figures of an alternative.
type merits struct{ first, days, metres float64 }

func meritsOf(outcomes []outcome) (m merits) {
	for i := range outcomes {
		m.first += outcomes[i][rankOneDone]
		m.days += outcomes[i][daysNeeded]
		m.metres += outcomes[i][metresWithin]
	}
	n := float64(len(outcomes))
	return merits{m.first / n, m.days / n, m.metres / n}
}

func allMerits(alternatives [][]outcome) []merits {
	list := make([]merits, len(alternatives))
	for i := range alternatives {
		list[i] = meritsOf(alternatives[i])
	}
	return list
}

// ranked lists alternatives, the best by the rule first.
func ranked(list []merits) []int {
	highest := 0.0
	for _, m := range list {
		highest = max(highest, m.first)
	}
	order := make([]int, len(list))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int { return list[i].compare(list[j], highest-sameChance) })
	return order
}

// compare is negative where m comes first; chances from enough on count as equal.
func (m merits) compare(o merits, enough float64) int {
	if m.first < enough || o.first < enough {
		if m.first >= enough {
			return -1
		}
		if c := cmp.Compare(o.first, m.first); c != 0 {
			return c
		}
	}
	return cmp.Or(
		cmp.Compare(math.Round(m.days/sameTime), math.Round(o.days/sameTime)),
		cmp.Compare(math.Round(o.metres), math.Round(m.metres)))
}

// nondominated says which alternatives no other beats: none is as good in chance, days and metres and
// better in one of them.
func nondominated(list []merits) []bool {
	front := make([]bool, len(list))
	for i, m := range list {
		front[i] = !slices.ContainsFunc(list, func(o merits) bool { return o.dominates(m) })
	}
	return front
}

func (m merits) dominates(o merits) bool {
	return m.first >= o.first && m.days <= o.days && m.metres >= o.metres && m != o
}

// comparisonMethod is the rule by which alternatives are given apart. Differences in chance have exact bounds
// (Clopper and Pearson 1934, Biometrika 26, 404-413), so that screening may begin with few replications;
// those in days have paired t intervals, which are used only after chances are known to a point, that is from
// some 500 replications on. All bounds that matter hold at once by Bonferroni's inequality, whatever
// the correlation that common random numbers bring. That is how Nelson and Matejcik (1995), "Using common random
// numbers for indifference-zone selection and multiple comparisons in simulation", Management
// Science 41, 1935-1945, make multiple comparisons with the best (Edwards and Hsu 1983, JASA 78,
// 965-971: "any setting where comparison-with-control intervals can be computed regarding any
// as the control"), and screening before a second stage is that of Nelson, Swann, Goldsman and Song
// (2001), Operations Research 49, 950-963. Read: abstracts of the three; the rest from memory.
const comparisonMethod = "exact bounds of all differences in chance (Clopper and Pearson 1934, Biometrika 26, 404) and paired t intervals of those in days, " +
	"holding together by Bonferroni's inequality (Nelson and Matejcik 1995, Management Science 41, 1935), of the comparison with the best (Edwards and Hsu 1983, JASA 78, 965)"

// tailOfAllPairs is the chance with which a bound may be passed so that those of all pairs of k alternatives,
// two-sided, in chance and in days, miss at least once with the given chance.
func tailOfAllPairs(k int, miss float64) float64 {
	pairs := max(1, k*(k-1)/2)
	return miss / float64(2*2*pairs)
}

// tailOfTheBest is the same for the bounds that must hold so that the true best of k is not ruled out. For each
// of the others those are two: its chance over that of the best; and either the days of the best over its
// own or, where its chance is too low for days to count, the highest chance over its own.
func tailOfTheBest(k int, miss float64) float64 { return miss / float64(2*max(1, k-1)) }

// notRuledOut says which alternatives may be the best by the rule of merit. One is ruled out where its chance
// is surely lower than another's by more than counts, or where its days are surely more than those of one
// whose chance surely counts as the highest. The true best is ruled out with at most the given chance.
func notRuledOut(alternatives [][]outcome, miss float64) []bool {
	n, beyond := len(alternatives[0]), tailOfTheBest(len(alternatives), miss)
	able, sure := byChance(alternatives, newExactBounds(n, beyond))
	return fewerDays(able, sure, alternatives, upperT(n, beyond))
}

// byChance says which alternatives may have a chance that counts as the highest, and which surely have.
func byChance(alternatives [][]outcome, bounds *exactBounds) (able, sure []bool) {
	able, sure = make([]bool, len(alternatives)), make([]bool, len(alternatives))
	for i := range alternatives {
		able[i], sure[i] = true, true
		for j := range alternatives {
			if j != i && able[i] {
				more := bounds.interval(discord(alternatives[j], alternatives[i], rankOneDone))
				able[i] = more.Low <= sameChance
				sure[i] = able[i] && sure[i] && more.High <= sameChance
			}
		}
	}
	return able, sure
}

// fewerDays rules out by days, among those that chance leaves.
func fewerDays(able, sure []bool, alternatives [][]outcome, t float64) []bool {
	left := slices.Clone(able)
	for j := range alternatives {
		for i := range alternatives {
			if sure[j] && left[i] && pair(alternatives[i], alternatives[j], daysNeeded).interval(t).Low > sameTime {
				left[i] = false
			}
		}
	}
	return left
}
