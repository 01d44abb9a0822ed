package json

import (
	"io"

	"coredays/model/score"
)

// The JSON of a hindcast. Its keys are a promise: more may be added.

type hindcastJSON struct {
	Schema            string             `json:"schema"`
	Level             string             `json:"level"`
	Sites             int                `json:"sites"`
	Legs              int                `json:"legs"`
	Seed              uint64             `json:"seed"`
	Replications      int                `json:"replications"`
	MedianAbsPctError number             `json:"median_abs_pct_error"`
	MedianRatio       number             `json:"median_ratio"`
	MedianRatioCI     [2]number          `json:"median_ratio_ci"`
	CRPSDays          number             `json:"crps_days"`
	CRPSDaysCI        [2]number          `json:"crps_days_ci"`
	CRPSAlone         number             `json:"crps_days_of_other_legs_alone"`
	CRPSLog           number             `json:"crps_log"`
	CRPSSkill         number             `json:"crps_skill"`
	Inside50          number             `json:"inside_50"`
	Inside50CI        [2]number          `json:"inside_50_ci"`
	Inside80          number             `json:"inside_80"`
	Inside80CI        [2]number          `json:"inside_80_ci"`
	RankHistogram     []int              `json:"rank_histogram"`
	WithoutLegTime    withoutLegTimeJSON `json:"without_leg_time"`
	Classes           []classScoreJSON   `json:"classes"`
	SiteScores        []siteScoreJSON    `json:"site_scores"`
	LegScores         []legScoreJSON     `json:"leg_scores"`
	Coverage          []coverageJSON     `json:"coverage"`
	Cycles            []cycleJSON        `json:"cycles"`
	Recovery          []holeRecoveryJSON `json:"recovery"`
	AsItGoes          []toldJSON         `json:"as_it_goes,omitempty"`
	Told              *toldCardJSON      `json:"as_it_goes_score,omitempty"`
	Ground            *toldCardJSON      `json:"ground,omitempty"`
	LeftOut           []leftOutJSON      `json:"left_out"`
}

// withoutLegTimeJSON is the score of days where nothing is known of how long legs are on their sites.
type withoutLegTimeJSON struct {
	CRPSDays   number    `json:"crps_days"`
	CRPSDaysCI [2]number `json:"crps_days_ci"`
	Inside50   number    `json:"inside_50"`
	Inside80   number    `json:"inside_80"`
	Inside80CI [2]number `json:"inside_80_ci"`
}

type classScoreJSON struct {
	By          string `json:"by"`
	Class       string `json:"class"`
	Sites       int    `json:"sites"`
	MedianRatio number `json:"median_ratio"`
	Inside80    number `json:"inside_80"`
	CRPSDays    number `json:"crps_days"`
}

type siteScoreJSON struct {
	Program     string `json:"program"`
	Leg         string `json:"leg"`
	Site        string `json:"site"`
	ActualDays  number `json:"actual_days"`
	Mean        number `json:"mean"`
	P10         number `json:"p10"`
	P50         number `json:"p50"`
	P90         number `json:"p90"`
	CRPS        number `json:"crps"`
	WaterDepth  number `json:"water_depth_m"`
	Depth       number `json:"deepest_mbsf"`
	DeepestTool string `json:"deepest_tool"`
	Year        int    `json:"year"`

	Recovered resultScoreJSON `json:"recovered_m"`
	Cores     resultScoreJSON `json:"cores"`
}

type cycleJSON struct {
	Tool            string `json:"tool"`
	DepthClass      string `json:"depth_class"`
	Holes           int    `json:"holes"`
	RecordMedian    number `json:"record_median_min"`
	SimulatedMedian number `json:"simulated_median_min"`
}

type holeRecoveryJSON struct {
	Tool      string    `json:"tool"`
	Holes     int       `json:"holes"`
	Record    [3]number `json:"record_percent"`
	Simulated [3]number `json:"simulated_percent"`
}

type leftOutJSON struct {
	Row int    `json:"row"`
	Why string `json:"why"`
}

// Hindcast writes the answer of a hindcast.
func Hindcast(w io.Writer, h *score.Hindcast) error {
	c := &h.Card
	out := hindcastJSON{
		Schema: "coredays.hindcast/1", Level: h.Level, Sites: c.Cases, Legs: c.Groups, Seed: h.Seed, Replications: h.Replications,
		MedianAbsPctError: number(c.AbsPercent), MedianRatio: number(c.Ratio), MedianRatioCI: pairOf(c.RatioCI),
		CRPSDays: number(c.CRPS), CRPSDaysCI: pairOf(c.CRPSCI), CRPSAlone: number(c.Alone), CRPSLog: number(c.CRPSLog), CRPSSkill: number(c.Skill),
		Inside50: number(c.Inside50), Inside50CI: pairOf(c.Inside50CI), Inside80: number(c.Inside80), Inside80CI: pairOf(c.Inside80CI),
		RankHistogram: c.RankHistogram,
		Classes:       []classScoreJSON{}, SiteScores: []siteScoreJSON{}, Cycles: []cycleJSON{}, Recovery: []holeRecoveryJSON{}, LeftOut: []leftOutJSON{},
	}
	untold := &h.WithoutLegTime
	out.WithoutLegTime = withoutLegTimeJSON{number(untold.CRPS), pairOf(untold.CRPSCI), number(untold.Inside50), number(untold.Inside80), pairOf(untold.Inside80CI)}
	for _, x := range h.Classes {
		out.Classes = append(out.Classes, classScoreJSON{x.By, x.Class, x.Cases, number(x.Ratio), number(x.Inside80), number(x.CRPS)})
	}
	for _, x := range h.Sites {
		out.SiteScores = append(out.SiteScores, siteScoreJSON{x.Program, x.Leg, x.Site, number(x.Actual), number(x.Mean), number(x.P10), number(x.P50),
			number(x.P90), number(x.CRPS), number(x.Water), number(x.Depth), x.Tool, x.Year,
			resultScoreOf(x.Recovered), resultScoreOf(x.Cores)})
	}
	out.LegScores, out.Coverage = legScoresOf(h), coverageOf(h)
	for _, x := range h.Cycles {
		out.Cycles = append(out.Cycles, cycleJSON{x.Tool, x.DepthClass, x.Holes, number(x.Record), number(x.Simulated)})
	}
	for _, x := range h.Recovery {
		out.Recovery = append(out.Recovery, holeRecoveryJSON{x.Tool, x.Holes, numbersOf(x.Record), numbersOf(x.Simulated)})
	}
	out.AsItGoes, out.Told = toldOf(h.AsItGoes)
	_, out.Ground = toldOf(h.Ground)
	for _, x := range h.LeftOut {
		out.LeftOut = append(out.LeftOut, leftOutJSON{x.Row, x.Why})
	}
	return writeJSON(w, out)
}

func numbersOf(q [3]float64) [3]number { return [3]number{number(q[0]), number(q[1]), number(q[2])} }
