package outputtest

import (
	"fmt"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/unit"
)

// ways makes an alternative of the ordinary summary with other figures.
func ways(name string, chance, days float64, alike bool, order ...string) result.Alternative {
	s := Ordinary()
	s.Allotted.ChancePrimary = chance
	s.Needed.Total = SpreadInDays(400, days, days-5, days, days+6, 0.4)
	for i := range s.Sites {
		s.Sites[i].Waiting.Mean += days * 3000
	}
	a := result.Alternative{Name: name, Summary: s, Order: order, Distance: unit.Length(days) * 60_000, Alike: alike, Unbeaten: chance > 0.7,
		Caps:   []unit.Duration{0, 9 * unit.Day, 0},
		Behind: result.Interval{Mean: (days - 41) * Day, Low: (days - 41.5) * Day, High: (days - 40.4) * Day}, Less: result.Interval{Mean: 0.9 - chance},
		Track: []geo.Position{{Latitude: -40, Longitude: 170}, {Latitude: -44, Longitude: -170}, {Latitude: -40, Longitude: 170}},
		Marks: []result.Mark{{Name: "Port Tern", At: geo.Position{Latitude: -40, Longitude: 170}, Port: true}, {Name: "TR-01", At: geo.Position{Latitude: -44, Longitude: -170}},
			{Name: "TR-03", At: geo.Position{Latitude: -45, Longitude: 178}, Alternate: true}}}
	return a
}

// TwoPlans are compared without a clear difference in days.
func TwoPlans() *result.Comparison {
	return &result.Comparison{Title: "Ridge of the Terns", Seed: 7, Replications: 400, Confidence: 0.95, SameChance: 0.01, Reference: -1, Planned: -1, Call: []string{"a.yaml", "the b.yaml"},
		Alternatives: []result.Alternative{ways("a.yaml", 0.9, 41, true), ways("the b.yaml", 0.9, 41.3, true)},
		Differences: []result.Difference{{A: 0, B: 1, Days: result.Interval{Mean: -0.3 * Day, Low: -0.7 * Day, High: 0.1 * Day},
			Chance: result.Interval{Mean: 0.004, Low: -0.01, High: 0.018}, Metres: result.Interval{Mean: 12, Low: -3, High: 27}, AShorter: 0.56, Pairing: 4.2, SettlesDays: 712}},
		Warnings: []string{"a.yaml: TR-02 has no weather of its own"}}
}

// ThreeOrders have a first one that is not the shortest.
func ThreeOrders() *result.Comparison {
	c := &result.Comparison{Question: result.WhichOrder, Title: "Ridge of the Terns", Invented: true, Seed: 7, Replications: 400, Confidence: 0.95, SameChance: 0.01,
		Best: 1, Reference: 2, Call: []string{"--orders"},
		Alternatives: []result.Alternative{ways("TR-02, TR-01", 0.895, 41.8, true, "TR-02", "TR-01", "TR-03"), ways("TR-01, TR-02", 0.9, 41, true, "TR-01", "TR-02", "TR-03"),
			ways("TR-02, TR-01 by another way of a name that is rather long", 0.62, 40, false, "TR-02", "TR-01", "TR-03")},
		Search: &result.Search{Allowed: 40_320, Estimated: 40_320, Stages: []result.Stage{{Orders: 1000, Replications: 8}, {Orders: 250, Replications: 32}}, LeftOut: 740,
			NextDays: result.Interval{Mean: 1.4 * Day}, NextFirst: 0.07, ErrorDays: 0.21 * Day, ErrorFirst: 0.031, Rule: "a rule with its source"},
	}
	pair := func(a, b int, days, chance float64) {
		c.Differences = append(c.Differences, result.Difference{A: a, B: b, Days: result.Interval{Mean: days * Day, Low: (days - 0.4) * Day, High: (days + 0.5) * Day},
			Chance: result.Interval{Mean: chance, Low: chance - 0.02, High: chance + 0.03}, Metres: result.Interval{Mean: 5, Low: -20, High: 30}, AShorter: 0.4, Pairing: 1.7})
	}
	pair(0, 1, 0.8, -0.005)
	pair(0, 2, 1.8, 0.275)
	pair(1, 2, 1, 0.28)
	c.Alternatives[2].Summary.Sites[0].Holes[0].ChanceDone = 0.7
	c.Alternatives[2].Summary.Needed.ByClass[activity.Waiting].Mean += Day
	return c
}

// FourCuts are of each kind.
func FourCuts() *result.Comparison {
	c := &result.Comparison{Question: result.WhatToCut, Title: "Ridge of the Terns", Seed: 7, Replications: 400, Confidence: 0.95, SameChance: 0.01, Reference: -1, Planned: -1,
		Alternatives: []result.Alternative{ways("as planned", 0.9, 41, true)}, Call: []string{"--drop", "terns.yaml"}}
	for kind, days := range []float64{0.03, 1.2, 2.9, 14} {
		rest := ways("rest", 0.9+0.02*float64(kind), 41-days, false)
		cut := result.Cut{Cut: plan.Cut{Kind: plan.Kind(kind), Site: "TR-01", What: []string{"A logging", "set observatory", "A", ""}[kind]}, Alternative: rest.Summary,
			Saves: SpreadInDays(400, days, days/2, days, days*1.5, 0.1), Metres: result.Interval{Mean: 90 * days}, Section: 0.05 * float64(kind)}
		if kind == 2 {
			cut.Also = []string{"C"}
		}
		c.Cuts = append(c.Cuts, cut)
	}
	for _, d := range []float64{-1, 1} {
		more := result.Interval{Mean: 0.02 * d, Low: 0.02*d - 0.01, High: 0.02*d + 0.01}
		c.Days = append(c.Days, result.DayMore{Days: d, First: 0.9 + 0.02*d, All: 0.38 + 0.03*d, FirstMore: more, AllMore: more, Metres: 1700 + 40*d,
			MetresMore: result.Interval{Mean: 40 * d, Low: 40*d - 9, High: 40*d + 9}})
	}
	return c
}

var Comparisons = map[string]func() *result.Comparison{
	"plans": TwoPlans, "orders": ThreeOrders, "cuts": FourCuts,
	"stopped": func() *result.Comparison {
		return &result.Comparison{Title: "Ridge of the Terns", StoppedEarly: true, Reference: -1, Planned: -1, Call: []string{"--orders"}}
	},
	"single": func() *result.Comparison {
		c := ThreeOrders()
		c.Replications = 1
		for i := range c.Alternatives {
			s := Single()
			c.Alternatives[i].Summary.Needed.Total, c.Alternatives[i].Summary.Allotted.ChancePrimary = s.Needed.Total, float64(1-i/2)
		}
		return c
	},
}

// ManyDates are more than a chart holds.
func ManyDates() *result.Comparison {
	c := ThreeOrders()
	c.Question, c.Search, c.Reference, c.Planned, c.Best = result.WhichDeparture, nil, -1, -1, 44
	c.Alternatives, c.Differences = nil, nil
	for i := range 45 {
		c.Alternatives = append(c.Alternatives, ways(fmt.Sprint("date ", i), 0.5+float64(i)/100, 41+float64(i%7), i > 40))
		if i != c.Best {
			c.Differences = append(c.Differences, result.Difference{A: i, B: c.Best, Days: result.Interval{Mean: Day, Low: -Day, High: 3 * Day}, SettlesDays: 900})
		}
	}
	return c
}
