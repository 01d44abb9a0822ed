package outputtest

import (
	"strings"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/words"
)

const Day = 86400.0 // s

// Spread writes a spread by hand: its quantiles, a mean, and intervals of the given half width.
func Spread(n int, mean, p10, p50, p90, half float64) result.Spread {
	around := func(v float64) [2]float64 { return [2]float64{v - half, v + half} }
	return result.Spread{N: n, Mean: mean, SD: (p90 - p10) / 2.56, P10: p10, P50: p50, P90: p90,
		P10CI: around(p10), P50CI: around(p50), P90CI: around(p90)}
}

// SpreadInDays is a spread in days.
func SpreadInDays(n int, mean, p10, p50, p90, half float64) result.Spread {
	return words.InUnits(Spread(n, mean, p10, p50, p90, half), 1/Day)
}

// Ordinary is a summary of 400 replications with three sites, one of them an alternate.
func Ordinary() *result.Summary {
	s := &result.Summary{
		Scenario: "Ridge of the Terns", File: "terns.yaml", Ship: "riserless drillship", Seed: 7, Replications: 400,
		Sails:  time.Date(2027, 1, 14, 8, 0, 0, 0, time.UTC),
		Deck:   result.Deck{MostCores: Spread(400, 22.1, 18, 22, 27, 0.3), Behind: SpreadInDays(400, 0.26, 0.09, 0.25, 0.5, 0.01)},
		InPort: SpreadInDays(400, 4.9, 3, 5, 6, 0.2),
		Allotted: result.Allotted{
			SeaDays: 40 * unit.Day, ChanceAll: 0.3775, ChancePrimary: 0.9925, Late: 0.0025,
			InHand: SpreadInDays(400, 1.2, -0.3, 0.9, 3.4, 0.1), Recovered: Spread(400, 1702.4, 1411, 1712.5, 1990.2, 20),
			OfPrimary: Spread(400, 1688.7, 1405, 1700.5, 1960, 20), OfAlternates: Spread(400, 13.7, 0, 0, 95, 2),
		},
		Recovery: recoveryOfTerns(400),
		Sites:    []result.Site{firstSite(400), secondSite(400), alternateSite(61, 0.1525)},
		Drivers: []result.Driver{{Name: "sailing speed", Share: 0.011}, {Name: "weather", Share: 0.52}, {Name: "pipe trips", Share: 0.2},
			{Name: "piston coring", Share: 0.285}, {Name: "measuring", Share: -0.03}, {Name: "tasks", Share: 0.014}},
		Consumables: []result.Consumable{{Item: "core liners, 9.5 m", P50: 211.5, P90: 240}, {Item: "rotary bits", P50: 2, P90: 2.1},
			{Item: "mud, bags of 25 kg", P50: 1234, P90: 1781}},
		Warnings: []string{"TR-02 has no weather of its own: the built-in climate of its place was taken, which smooths storms " +
			"that last less than six hours and was worked out from a hindcast."},
	}
	s.Needed.Total, s.Needed.Fits = SpreadInDays(400, 42.18, 37.2, 41.6, 47.9, 0.63), 0.42
	for c, share := range [activity.Classes]float64{12.1, 0.04, 9.2, 11.7, 3.05, 4.34, 1.75, 0} {
		s.Needed.ByClass[c] = SpreadInDays(400, share, share*0.7, share, share*1.4, 0)
	}
	return s
}

func recoveryOfTerns(n int) result.Recovery {
	r := result.Recovery{Cored: Spread(n, 1900, 1600, 1900, 2200, 9), Recovered: Spread(n, 1702, 1411, 1712, 1990, 9),
		Percent: Spread(n, 89.6, 82.1, 90.1, 95.4, 0.3), Cores: Spread(n, 209, 180, 210, 241, 2)}
	for t := range r.ByTool { // tools that nobody used have spreads of nothing
		nothing := result.Spread{}
		r.ByTool[t] = result.ToolRecovery{Cores: nothing, Cored: nothing, Recovered: nothing, Percent: nothing}
	}
	r.ByTool[coring.APC] = result.ToolRecovery{Cores: Spread(n, 120, 101, 121, 138, 1), Cored: Spread(n, 1130, 960, 1140, 1300, 9),
		Recovered: Spread(n, 1150, 961, 1160, 1330, 9), Percent: Spread(n, 101.7, 98.6, 102, 104, 0.1)}
	r.ByTool[coring.XCB] = result.ToolRecovery{Cores: Spread(n, 89, 70, 90, 111, 1), Cored: Spread(n, 770, 600, 770, 960, 9),
		Recovered: Spread(n, 552, 390, 560, 702, 9), Percent: Spread(n, 71.7, 58, 72.4, 84, 0.6)}
	return r
}

func firstSite(n int) result.Site {
	return result.Site{
		Name: "TR-01", WaterDepth: 3420, Target: 380,
		Days: SpreadInDays(n, 14.6, 12.1, 14.3, 17.9, 0.2), Waiting: SpreadInDays(n, 1.9, 0, 1.2, 4.6, 0.1),
		Arrives: SpreadInDays(n, 16.4, 14.2, 16.3, 18.9, 0.1), Leaves: SpreadInDays(n, 31, 27.1, 30.6, 36, 0.2),
		ChanceReached: 1, ChanceComplete: 0.9925,
		Cored: Spread(n, 1100, 980, 1105, 1234, 9), Recovered: Spread(n, 990, 850, 1000, 1130, 9), Percent: Spread(n, 90, 84, 90.5, 95, 0.3),
		Cores: Spread(n, 120, 110, 121, 133, 1), Coverage: Spread(n, 0.93, 0.88, 0.94, 0.98, 0.01),
		Holes: []result.Hole{
			{Name: "A", Rank: 1, Days: SpreadInDays(n, 5, 4.1, 4.9, 6.2, 0.1), Depth: Spread(n, 289, 280, 290, 290, 1),
				Refusal: Spread(n/2, 190, 150, 188, 240, 4), ChanceRefused: 0.5, ChanceDone: 0.9975},
			{Name: "set observatory", Task: true, Rank: 2, Days: SpreadInDays(n, 1.3, 0.9, 1.25, 1.9, 0.02), ChanceDone: 0.81},
		},
	}
}

func secondSite(n int) result.Site {
	site := firstSite(n)
	site.Name, site.WaterDepth, site.ChanceReached, site.ChanceComplete = "TR-02", 1810, 0.9, 0.38
	site.Arrives, site.Leaves = SpreadInDays(n, 33, 29.2, 32.9, 38, 0.2), SpreadInDays(n, 39, 35.1, 38.6, 44, 0.2)
	site.Days = SpreadInDays(n, 6, 5.2, 5.9, 7.3, 0.1)
	site.Holes = []result.Hole{{Name: "A", Rank: 1, Days: SpreadInDays(n, 6, 5.2, 5.9, 7.3, 0.1), Depth: Spread(n, 120, 120, 120, 120, 0), ChanceDone: 0.38}}
	return site
}

// alternateSite is reached in n replications, which are a share of all.
func alternateSite(n int, reached float64) result.Site {
	site := result.Site{Name: "TR-03", Alternate: true, WaterDepth: 2200, Target: 100, ChanceReached: reached, ChanceComplete: reached / 2,
		Holes: []result.Hole{{Name: "A", Rank: 1, ChanceDone: reached / 2}}}
	if n > 0 {
		site.Days, site.Waiting = SpreadInDays(n, 1.4, 0.8, 1.3, 2.1, 0.1), SpreadInDays(n, 0.1, 0, 0, 0.4, 0)
		site.Arrives, site.Leaves = SpreadInDays(n, 36, 34, 36, 38, 0.3), SpreadInDays(n, 37.4, 35.2, 37.3, 39, 0.3)
		site.Cored, site.Percent, site.Coverage = Spread(n, 90, 60, 95, 100, 2), Spread(n, 100, 97, 101, 103, 0.2), Spread(n, 0.9, 0.6, 0.95, 1, 0.02)
		site.Holes[0].Days, site.Holes[0].Depth = site.Days, site.Cored
	}
	return site
}

// NeverReachedAlternate has an alternate that no replication came to.
func NeverReachedAlternate() *result.Summary {
	s := Ordinary()
	s.Scenario, s.Invented, s.Replications, s.StoppedEarly = "Ridge of the Terns, fewer days", true, 40, true
	s.Allotted.SeaDays, s.Allotted.ChanceAll, s.Allotted.ChancePrimary, s.Allotted.Late = 30*unit.Day, 0, 0.975, 0
	s.Sites[2] = alternateSite(0, 0)
	s.Needed.Fits, s.Allotted.OfAlternates = 0, Spread(40, 0, 0, 0, 0, 0)
	s.Warnings = nil
	return s
}

// Single is one replication: each result is one number.
func Single() *result.Summary {
	s := Ordinary()
	s.Replications = 1
	s.Allotted.ChanceAll, s.Allotted.ChancePrimary, s.Allotted.Late = 0, 1, 0
	s.Drivers, s.Consumables = nil, s.Consumables[:1]
	s.InPort = SpreadInDays(1, 5, 5, 5, 5, 0)
	s.Allotted.InHand, s.Allotted.Recovered = SpreadInDays(1, 0.9, 0.9, 0.9, 0.9, 0), Spread(1, 1712, 1712, 1712, 1712, 0)
	s.Allotted.OfPrimary, s.Allotted.OfAlternates = s.Allotted.Recovered, Spread(1, 0, 0, 0, 0, 0)
	s.Deck = result.Deck{MostCores: Spread(1, 22, 22, 22, 22, 0), Behind: SpreadInDays(1, 0.25, 0.25, 0.25, 0.25, 0)}
	s.Needed.Total.N, s.Needed.Fits = 1, 0
	for c := range s.Needed.ByClass {
		s.Needed.ByClass[c].N = 1
	}
	s.Recovery = recoveryOfTerns(1)
	s.Sites = []result.Site{firstSite(1), secondSite(1), alternateSite(0, 0)}
	for i := range s.Sites {
		s.Sites[i].ChanceComplete = float64(1-i) * s.Sites[i].ChanceReached
	}
	s.Sites[1].ChanceReached, s.Sites[1].ChanceComplete = 1, 0
	s.Sites[1].Holes[0].ChanceDone = 0
	s.Sites[0].Holes[0].Refusal.N, s.Sites[0].Holes[0].ChanceRefused = 1, 1
	return s
}

// LongNames has names of sixty characters, one of them without a blank to break at.
func LongNames() *result.Summary {
	s := Ordinary()
	long := "The southern flank of the great ridge beyond the outer terns"
	s.Scenario, s.Ship, s.File = long, long, strings.Repeat("very-long-folder/", 8)+"terns of the ridge.yaml"
	s.Sites[0].Name, s.Sites[1].Name, s.Sites[2].Name = long, strings.Repeat("0123456789", 6), strings.Repeat("深海の峰", 15)
	s.Sites[0].Holes[0].Name, s.Sites[0].Holes[1].Name = long, long
	s.Drivers[1].Name, s.Consumables[0].Item = long, long
	s.Warnings = append(s.Warnings, strings.Repeat("x", 250), "a line\nbreak and an \x1b[31mescape\x1b[0m")
	return s
}
