package sheet

import (
	"fmt"
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/result"
	"coredays/output"
	"coredays/output/text"
	"coredays/output/words"
)

// resultsSheet holds every spread of the simulation, a row each, with the intervals of its
// quantiles: simulation error only.
func resultsSheet(s *result.Summary) *Table {
	t := &Table{Name: "results", Title: "Every result with its spread", Fields: []Field{
		{"of", "of", OfWords, "expedition, class of time, coring tool, site or hole"},
		{"site", "site", OfWords, "empty for what is not of a site"},
		{"hole", "hole", OfWords, "hole or task; empty for what is not of one"},
		{"result", "result", OfWords, "what was counted"},
		{"unit", "unit", OfWords, "of the figures in the row; 1 for counts and shares"},
		{"n", "replications", ofCount, "replications that the row rests on"},
		{"mean", "mean", ofNumber, ""}, {"sd", "sd", ofNumber, "standard deviation"},
		{"p10", "P10", ofNumber, "one in ten stays below"}, {"p50", "P50", ofNumber, "half stay below"}, {"p90", "P90", ofNumber, "nine in ten stay below"},
		{"p10_low", "P10 from", ofNumber, "95 % interval of p10, simulation error only"}, {"p10_high", "to", ofNumber, "its upper end"},
		{"p50_low", "P50 from", ofNumber, "95 % interval of p50, simulation error only"}, {"p50_high", "to", ofNumber, "its upper end"},
		{"p90_low", "P90 from", ofNumber, "95 % interval of p90, simulation error only"}, {"p90_high", "to", ofNumber, "its upper end"},
	}}
	add := func(of, site, hole, result string, k Kind, x result.Spread) {
		x = words.Supported(x)
		t.Add(of, site, hole, result, k.Unit(), float64(x.N), x.Mean, x.SD, x.P10, x.P50, x.P90,
			x.P10CI[0], x.P10CI[1], x.P50CI[0], x.P50CI[1], x.P90CI[0], x.P90CI[1])
	}
	expeditionResults(s, add)
	for i := range s.Sites {
		siteResults(&s.Sites[i], add)
	}
	return t
}

// adder adds a spread in the unit of its kind.
type adder func(of, site, hole, result string, k Kind, x result.Spread)

func expeditionResults(s *result.Summary, add adder) {
	add("expedition", "", "", "days needed, whole programme", ofDays, words.InDays(s.Needed.Total))
	add("expedition", "", "", "days in hand within the sea days", ofDays, words.InDays(s.Allotted.InHand))
	add("expedition", "", "", "core recovered within the sea days", ofMetres, s.Allotted.Recovered)
	add("expedition", "", "", "days in port before sailing", ofDays, words.InDays(s.InPort))
	add("expedition", "", "", "cores on the busiest day", ofCount, s.Deck.MostCores)
	add("expedition", "", "", "laboratory behind at most", ofHours, words.InHours(s.Deck.Behind))
	all := s.Recovery
	toolResults("all tools", result.ToolRecovery{Cores: all.Cores, Cored: all.Cored, Recovered: all.Recovered, Percent: all.Percent}, add)
	for tool, r := range s.Recovery.ByTool {
		toolResults(coring.Tool(tool).String(), r, add)
	}
	for c := range activity.Classes {
		add("class of time", "", "", c.String(), ofDays, words.InDays(s.Needed.ByClass[c]))
	}
}

func toolResults(name string, r result.ToolRecovery, add adder) {
	add("coring tool", "", "", name+": cores", ofCount, r.Cores)
	add("coring tool", "", "", name+": cored", ofMetres, r.Cored)
	add("coring tool", "", "", name+": recovered", ofMetres, r.Recovered)
	add("coring tool", "", "", name+": recovered of what was cored", ofPercent, r.Percent)
}

func siteResults(site *result.Site, add adder) {
	of := func(result string, k Kind, x result.Spread) { add("site", site.Name, "", result, k, x) }
	of("days on site", ofDays, words.InDays(site.Days))
	of("waiting on weather", ofDays, words.InDays(site.Waiting))
	of("arrives after sailing", ofDays, words.InDays(site.Arrives))
	of("leaves after sailing", ofDays, words.InDays(site.Leaves))
	of("cored", ofMetres, site.Cored)
	of("recovered", ofMetres, site.Recovered)
	of("recovered of what was cored", ofPercent, site.Percent)
	of("cores", ofCount, site.Cores)
	of("section recovered in at least one hole", ofShare, site.Coverage)
	for i := range site.Holes {
		h := &site.Holes[i]
		add("hole", site.Name, h.Name, "days", ofDays, words.InDays(h.Days))
		if !h.Task {
			add("hole", site.Name, h.Name, "depth below the sea floor", ofMetres, h.Depth)
			add("hole", site.Name, h.Name, "refusal of a piston corer", ofMetres, h.Refusal)
			add("hole", site.Name, h.Name, "cored", ofMetres, h.Cored)
			add("hole", site.Name, h.Name, "recovered", ofMetres, h.Recovered)
			add("hole", site.Name, h.Name, "recovered of what was cored", ofPercent, h.Percent)
			add("hole", site.Name, h.Name, "section recovered in this hole or one before it", ofShare, h.Covered)
		}
	}
}

// Chances holds every chance.
func Chances(s *result.Summary) *Table {
	t := &Table{Name: "chances", Title: "What gets done within the sea days", Fields: []Field{
		{"site", "site", OfWords, "empty for the expedition"}, {"hole", "hole or task", OfWords, "empty for a site or the expedition"},
		{"rank", "rank", ofCount, "of a hole or task; 1 is dropped last"},
		{"what", "what", OfWords, "what happens"}, {"chance", "chance", ofShare, "share of the expeditions within the sea days"},
	}}
	none := math.NaN()
	t.Add("", "", none, "the whole programme is done, but for what is not called for", s.Allotted.ChanceAll)
	t.Add("", "", none, "all of rank 1 at the primary sites is done, likewise", s.Allotted.ChancePrimary)
	t.Add("", "", none, "port is reached after the sea days", s.Allotted.Late)
	for _, site := range s.Sites {
		t.Add(site.Name, "", none, "reached", site.ChanceReached)
		t.Add(site.Name, "", none, "complete: all is done or not called for", site.ChanceComplete)
		for _, h := range site.Holes {
			t.Add(site.Name, h.Name, float64(h.Rank), "done", h.ChanceDone)
			if h.Conditional {
				t.Add(site.Name, h.Name, float64(h.Rank), "not called for, as another hole turned out", h.ChanceNotCalled)
			}
			t.Add(site.Name, h.Name, float64(h.Rank), "dropped or cut short", h.ChanceDropped)
		}
	}
	return t
}

// Run says what was simulated and how to repeat it.
func Run(r *output.Report) *Table {
	s := r.Summary
	t := &Table{Name: "run", Title: "What was simulated", Fields: []Field{
		{"what", "what", OfWords, ""}, {"value", "value", OfWords, ""}}}
	t.Add("scenario", s.Scenario)
	t.Add("invented demonstration", words.YesNo(s.Invented))
	t.Add("ship", s.Ship)
	t.Add("sails", words.Moment(s.Sails))
	t.Add("sea days", words.Given(s.Allotted.SeaDays.Days())+" d")
	t.Add("replications", fmt.Sprint(s.Replications))
	t.Add("stopped early", words.YesNo(s.StoppedEarly))
	t.Add("seed", fmt.Sprint(s.Seed))
	t.Add("program", r.Program)
	t.Add("the same again", text.Call(s))
	if r.Log != nil {
		t.Add("log", r.Log.File)
	}
	for _, w := range s.Warnings {
		t.Add("warning", w)
	}
	return t
}
