package json

import "coredays/model/score"

// resultScoreJSON is a result of a site or leg; nulls where the record is blank.
type resultScoreJSON struct {
	Actual number `json:"actual"`
	P10    number `json:"p10"`
	P50    number `json:"p50"`
	P90    number `json:"p90"`
	CRPS   number `json:"crps"`
}

func resultScoreOf(q score.Quantiles) resultScoreJSON {
	return resultScoreJSON{number(q.Actual), number(q.P10), number(q.P50), number(q.P90), number(q.CRPS)}
}

type legScoreJSON struct {
	Program   string          `json:"program"`
	Leg       string          `json:"leg"`
	Sites     int             `json:"sites"`
	Days      resultScoreJSON `json:"days"`
	Recovered resultScoreJSON `json:"recovered_m"`
	Cores     resultScoreJSON `json:"cores"`
}

func legScoresOf(h *score.Hindcast) []legScoreJSON {
	list := []legScoreJSON{}
	for _, l := range h.Legs {
		list = append(list, legScoreJSON{l.Program, l.Leg, l.Sites, resultScoreOf(l.Results[score.Days]),
			resultScoreOf(l.Results[score.Recovered]), resultScoreOf(l.Results[score.Cores])})
	}
	return list
}

// coverageJSON is how well a result was forecast at sites, or of legs.
type coverageJSON struct {
	Of         string    `json:"of"`
	Result     string    `json:"result"`
	Cases      int       `json:"cases"`
	Legs       int       `json:"legs"`
	CRPS       number    `json:"crps"`
	CRPSCI     [2]number `json:"crps_ci"`
	Inside50   number    `json:"inside_50"`
	Inside50CI [2]number `json:"inside_50_ci"`
	Inside80   number    `json:"inside_80"`
	Inside80CI [2]number `json:"inside_80_ci"`
}

// resultKeys are the names of results in JSON.
var resultKeys = [score.AllResults]string{"days", "recovered_m", "cores"}

func coverageOf(h *score.Hindcast) []coverageJSON {
	list := []coverageJSON{}
	for _, part := range []struct {
		of   string
		list []score.Coverage
	}{{"sites", h.OfSites}, {"legs", h.OfLegs}} {
		for _, c := range part.list {
			list = append(list, coverageJSON{part.of, resultKeys[c.Of], c.Cases, c.Legs, number(c.CRPS), pairOf(c.CRPSCI),
				number(c.Inside50), pairOf(c.Inside50CI), number(c.Inside80), pairOf(c.Inside80CI)})
		}
	}
	return list
}
