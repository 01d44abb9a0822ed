package score

import (
	"math"

	"golang.org/x/exp/stats"
)

// Case is a forecast and what came true.
type Case struct {
	Group    string // cases of one group are not independent: the leg
	Actual   float64
	Forecast Forecast
}

// Card is how well forecasts did. Times are in the unit of the cases.
type Card struct {
	Cases, Groups  int
	CRPS, CRPSLog  float64
	CRPSCI         [2]float64
	Alone          float64 // CRPS of what came true in all other groups, taken as the forecast; NaN for one group
	Skill          float64 // 1 - CRPS/Alone
	AbsPercent     float64 // median absolute error of the median, % of what came true
	Ratio          float64 // median of what came true over the forecast's median
	RatioCI        [2]float64
	Inside50       float64 // share of cases between the quantiles 0.25 and 0.75
	Inside80       float64 // between 0.1 and 0.9
	Inside50CI     [2]float64
	Inside80CI     [2]float64
	RankHistogram  []int     // cases by the share of the forecast below what came true, in tenths
	EachCRPS, Rank []float64 // of each case
}

// rankBins is the number of classes of ranks.
const rankBins = 10

// Judge scores cases. There must be at least one.
func Judge(cases []Case) Card {
	c := Card{Cases: len(cases), RankHistogram: make([]int, rankBins)}
	var groups []string
	var logs, percents, ratios, in50, in80, actual []float64
	for _, x := range cases {
		q := x.Forecast.Quantiles(0.1, 0.25, 0.5, 0.75, 0.9)
		rank := x.Forecast.Rank(x.Actual)
		groups = append(groups, x.Group)
		actual = append(actual, x.Actual)
		c.EachCRPS = append(c.EachCRPS, x.Forecast.CRPS(x.Actual))
		c.Rank = append(c.Rank, rank)
		logs = append(logs, x.Forecast.Log().CRPS(math.Log(x.Actual)))
		percents = append(percents, 100*math.Abs(q[2]-x.Actual)/x.Actual)
		ratios = append(ratios, x.Actual/q[2])
		in50 = append(in50, within(x.Actual, q[1], q[3]))
		in80 = append(in80, within(x.Actual, q[0], q[4]))
		c.RankHistogram[min(rankBins-1, int(rank*rankBins))]++
	}
	c.Groups = len(grouped(actual, groups))
	c.CRPS, c.CRPSLog = stats.Mean(c.EachCRPS), stats.Mean(logs)
	c.AbsPercent, c.Ratio = stats.Median(percents), stats.Median(ratios)
	c.Inside50, c.Inside80 = stats.Mean(in50), stats.Mean(in80)
	c.CRPSCI = Interval(c.EachCRPS, groups, stats.Mean[float64])
	c.RatioCI = Interval(ratios, groups, stats.Median[float64])
	c.Inside50CI = Interval(in50, groups, stats.Mean[float64])
	c.Inside80CI = Interval(in80, groups, stats.Mean[float64])
	c.Alone = sampleAlone(actual, groups)
	c.Skill = 1 - c.CRPS/c.Alone
	return c
}

func within(x, low, high float64) float64 {
	if x >= low && x <= high {
		return 1
	}
	return 0
}

// sampleAlone is the CRPS of a forecast that knows nothing of a case but what came true in the
// other groups.
func sampleAlone(actual []float64, groups []string) float64 {
	var each []float64
	for i, g := range groups {
		var others []float64
		for j, other := range groups {
			if other != g {
				others = append(others, actual[j])
			}
		}
		if len(others) > 0 {
			each = append(each, NewForecast(others).CRPS(actual[i]))
		}
	}
	if len(each) == 0 {
		return math.NaN()
	}
	return stats.Mean(each)
}
