package json

import (
	"io"
	"time"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// comparisonSchema names the promise that JSON keeps: keys are added, never changed or taken away.
const comparisonSchema = "coredays.comparison/1"

// Comparison writes a comparison for programs: days, metres, shares from 0 to 1, in full
// precision; null where there is no figure.
func Comparison(w io.Writer, c *result.Comparison) error { return writeJSON(w, comparisonOf(c)) }

type comparisonJSON struct {
	Schema       string            `json:"schema"`
	Question     string            `json:"question"`
	Scenario     string            `json:"scenario"`
	Invented     bool              `json:"invented"`
	Seed         uint64            `json:"seed"`
	Replications int               `json:"replications"`
	StoppedEarly bool              `json:"stopped_early"`
	Alternatives []alternativeJSON `json:"alternatives"`
	Differences  []differenceJSON  `json:"differences"`
	Best         *string           `json:"best"`
	Alike        []string          `json:"not_distinguishable"` // from the best, which is not among them
	Confidence   number            `json:"confidence"`
	SameChance   number            `json:"chances_count_as_equal_within"`
	Unbeaten     []string          `json:"unbeaten"` // in chance, days and metres at once
	Shortest     *string           `json:"shortest_track"`
	Planned      *string           `json:"order_of_scenario"`
	Search       *searchJSON       `json:"search"`
	Cuts         []cutJSON         `json:"cuts"`
	Days         []dayMoreJSON     `json:"sea_days"`
	Warnings     []string          `json:"warnings"`
}

type alternativeJSON struct {
	Name          string       `json:"name"`
	Order         []string     `json:"order"`
	Sails         *time.Time   `json:"sails"`
	Track         number       `json:"track_nmi"`
	Needed        spreadJSON   `json:"days_needed"`
	Waiting       spreadJSON   `json:"waiting"`
	ChanceAll     number       `json:"chance_all"`
	ChancePrimary number       `json:"chance_primary"`
	Recovered     spreadJSON   `json:"recovered_m"`
	InHand        spreadJSON   `json:"days_in_hand"`
	Late          number       `json:"chance_late"`
	Behind        intervalJSON `json:"days_behind_best"` // all of these hold together
	Less          intervalJSON `json:"chance_primary_behind_best"`
	Standing      string       `json:"standing"`
	Planned       *moreJSON    `json:"more_than_order_of_scenario"`
}

// moreJSON is what an order has more than that of the scenario; each interval by itself.
type moreJSON struct {
	Days   intervalJSON `json:"days"`
	Chance intervalJSON `json:"chance_primary"`
}

func moreOf(c *result.Comparison, i int) *moreJSON {
	if !alternatives.ByPlanned(c) || i == c.Planned {
		return nil
	}
	return &moreJSON{intervalOf(words.DaysInterval(alternatives.MoreDays(c, i))), intervalOf(alternatives.MoreChance(c, i))}
}

// intervalJSON is a mean with its interval.
type intervalJSON struct {
	Mean number    `json:"mean"`
	CI   [2]number `json:"ci"`
}

type differenceJSON struct {
	A          string       `json:"a"`
	B          string       `json:"b"`
	MeanDays   number       `json:"mean_days"` // of a less those of b
	CI         [2]number    `json:"ci"`
	Shorter    number       `json:"share_a_shorter"`
	Same       number       `json:"share_same"`
	Chance     intervalJSON `json:"chance_primary"`
	Metres     intervalJSON `json:"recovered_m"`
	Pairing    number       `json:"error_smaller_by_pairing"`
	Settles    int          `json:"settled_by_replications"` // 0 where the interval leaves out 0
	SettlesNot bool         `json:"settled_by_even_more"`
}

type searchJSON struct {
	Allowed    int         `json:"orders"`
	Uncounted  bool        `json:"orders_not_all_counted"`
	Estimated  int         `json:"estimated"`
	Stages     []stageJSON `json:"stages"`
	LeftOut    int         `json:"left_out_without_being_ruled_out"`
	NextDays   number      `json:"next_estimated_days_behind"`
	NextFirst  number      `json:"next_estimated_chance_behind"`
	ErrorDays  number      `json:"estimate_error_days"`
	ErrorFirst number      `json:"estimate_error_chance"`
	Rule       string      `json:"rule"`
}

type stageJSON struct {
	Orders       int `json:"orders"`
	Replications int `json:"replications"`
}

type cutJSON struct {
	Kind          string       `json:"kind"`
	Site          string       `json:"site"`
	What          string       `json:"what"`
	Also          []string     `json:"also"`
	Saves         spreadJSON   `json:"days_saved"`
	Metres        intervalJSON `json:"recovered_m_less"`
	Within        intervalJSON `json:"recovered_m_less_within_allotted"`
	Section       number       `json:"section_coverage_less"`
	ChancePrimary number       `json:"chance_primary_of_rest"`
	ChanceAll     number       `json:"chance_all_of_rest"`
}

type dayMoreJSON struct {
	SeaDays       number       `json:"more_days"`
	ChancePrimary number       `json:"chance_primary"`
	PrimaryMore   intervalJSON `json:"chance_primary_more"`
	ChanceAll     number       `json:"chance_all"`
	AllMore       intervalJSON `json:"chance_all_more"`
	Recovered     number       `json:"recovered_m"`
	RecoveredMore intervalJSON `json:"recovered_m_more"`
	InHand        spreadJSON   `json:"days_in_hand"`
}

// questionKeys are the questions to programs.
var questionKeys = map[result.Question]string{
	result.WhichPlan: "plans", result.WhichOrder: "orders", result.WhichDeparture: "departures", result.WhatToCut: "drop",
}

func comparisonOf(c *result.Comparison) comparisonJSON {
	j := comparisonJSON{
		Schema: comparisonSchema, Question: questionKeys[c.Question], Scenario: c.Title, Invented: c.Invented,
		Seed: c.Seed, Replications: c.Replications, StoppedEarly: c.StoppedEarly,
		Alternatives: []alternativeJSON{}, Differences: []differenceJSON{}, Alike: []string{}, Unbeaten: []string{}, Cuts: []cutJSON{}, Days: []dayMoreJSON{},
		Confidence: number(c.Confidence), SameChance: number(c.SameChance), Search: searchOf(c.Search), Warnings: append([]string{}, c.Warnings...),
	}
	for i := range c.Alternatives {
		j.Alternatives = append(j.Alternatives, alternativeJSONOf(c, i))
	}
	for i := range c.Differences {
		j.Differences = append(j.Differences, differenceOf(c, &c.Differences[i]))
	}
	for i := range c.Cuts {
		j.Cuts = append(j.Cuts, cutOf(&c.Cuts[i]))
	}
	for i := range c.Days {
		j.Days = append(j.Days, dayMoreOf(&c.Days[i]))
	}
	if len(c.Alternatives) > 0 && c.Question != result.WhatToCut {
		j.Best = &c.Alternatives[c.Best].Name
		j.Alike = append(j.Alike, alternatives.NamesWhere(c, func(i int) bool { return i != c.Best && c.Alternatives[i].Alike })...)
		j.Unbeaten = append(j.Unbeaten, alternatives.NamesWhere(c, func(i int) bool { return c.Alternatives[i].Unbeaten })...)
	}
	if c.Planned >= 0 && c.Planned < len(c.Alternatives) {
		j.Planned = &c.Alternatives[c.Planned].Name
	}
	if c.Reference >= 0 && c.Reference < len(c.Alternatives) {
		j.Shortest = &c.Alternatives[c.Reference].Name
	}
	return j
}

func alternativeJSONOf(c *result.Comparison, i int) alternativeJSON {
	a := &c.Alternatives[i]
	s := a.Summary
	j := alternativeJSON{
		Name: a.Name, Order: append([]string{}, a.Order...), Sails: dateOf(s.Sails, 0), Track: number(a.Distance / unit.NauticalMile),
		Needed: daysOf(s.Needed.Total), Waiting: daysOf(s.Needed.ByClass[activity.Waiting]),
		ChanceAll: number(s.Allotted.ChanceAll), ChancePrimary: number(s.Allotted.ChancePrimary), Recovered: spreadOf(s.Allotted.Recovered),
		InHand: daysOf(s.Allotted.InHand), Late: number(s.Allotted.Late), Behind: intervalOf(words.DaysInterval(a.Behind)), Less: intervalOf(a.Less),
	}
	if c.Question != result.WhatToCut {
		j.Standing, j.Planned = alternatives.Standing(c, i), moreOf(c, i)
	}
	return j
}

func intervalOf(i result.Interval) intervalJSON {
	return intervalJSON{number(i.Mean), pairOf([2]float64{i.Low, i.High})}
}

func differenceOf(c *result.Comparison, d *result.Difference) differenceJSON {
	days := intervalOf(words.DaysInterval(d.Days))
	return differenceJSON{
		A: c.Alternatives[d.A].Name, B: c.Alternatives[d.B].Name, MeanDays: days.Mean, CI: days.CI, Shorter: number(d.AShorter), Same: number(d.Same),
		Chance: intervalOf(d.Chance), Metres: intervalOf(d.Metres), Pairing: number(d.Pairing), Settles: d.SettlesDays, SettlesNot: d.SettlesAbove,
	}
}

func searchOf(s *result.Search) *searchJSON {
	if s == nil {
		return nil
	}
	j := &searchJSON{Allowed: s.Allowed, Uncounted: s.Uncounted, Estimated: s.Estimated, Stages: []stageJSON{}, LeftOut: s.LeftOut,
		NextDays: number(words.DaysInterval(s.NextDays).Mean), NextFirst: number(s.NextFirst),
		ErrorDays: number(s.ErrorDays / float64(unit.Day)), ErrorFirst: number(s.ErrorFirst), Rule: s.Rule}
	for _, stage := range s.Stages {
		j.Stages = append(j.Stages, stageJSON(stage))
	}
	return j
}

func cutOf(cut *result.Cut) cutJSON {
	return cutJSON{
		Kind: cut.Kind.String(), Site: cut.Site, What: cut.What, Also: append([]string{}, cut.Also...), Saves: daysOf(cut.Saves),
		Metres: intervalOf(cut.Metres), Within: intervalOf(cut.Within), Section: number(cut.Section),
		ChancePrimary: number(cut.Alternative.Allotted.ChancePrimary), ChanceAll: number(cut.Alternative.Allotted.ChanceAll),
	}
}

func dayMoreOf(d *result.DayMore) dayMoreJSON {
	return dayMoreJSON{
		SeaDays: number(d.Days), ChancePrimary: number(d.First), PrimaryMore: intervalOf(d.FirstMore), ChanceAll: number(d.All), AllMore: intervalOf(d.AllMore),
		Recovered: number(d.Metres), RecoveredMore: intervalOf(d.MetresMore), InHand: daysOf(d.InHand),
	}
}
