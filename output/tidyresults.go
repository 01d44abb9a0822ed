package output

import (
	"fmt"
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/logbook"
)

// resultsSheet holds every spread of the simulation, a row each, with the intervals of its
// quantiles: simulation error only.
func resultsSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "results", title: "Every result with its spread", fields: []field{
		{"of", "of", ofWords, "expedition, class of time, coring tool, site or hole"},
		{"site", "site", ofWords, "empty for what is not of a site"},
		{"hole", "hole", ofWords, "hole or task; empty for what is not of one"},
		{"result", "result", ofWords, "what was counted"},
		{"unit", "unit", ofWords, "of the figures in the row; 1 for counts and shares"},
		{"n", "replications", ofCount, "replications that the row rests on"},
		{"mean", "mean", ofNumber, ""}, {"sd", "sd", ofNumber, "standard deviation"},
		{"p10", "P10", ofNumber, "one in ten stays below"}, {"p50", "P50", ofNumber, "half stay below"}, {"p90", "P90", ofNumber, "nine in ten stay below"},
		{"p10_low", "P10 from", ofNumber, "95 % interval of p10, simulation error only"}, {"p10_high", "to", ofNumber, "its upper end"},
		{"p50_low", "P50 from", ofNumber, "95 % interval of p50, simulation error only"}, {"p50_high", "to", ofNumber, "its upper end"},
		{"p90_low", "P90 from", ofNumber, "95 % interval of p90, simulation error only"}, {"p90_high", "to", ofNumber, "its upper end"},
	}}
	add := func(of, site, hole, result string, k kind, x logbook.Spread) {
		x = told(x)
		t.add(of, site, hole, result, k.unit(), float64(x.N), x.Mean, x.SD, x.P10, x.P50, x.P90,
			x.P10CI[0], x.P10CI[1], x.P50CI[0], x.P50CI[1], x.P90CI[0], x.P90CI[1])
	}
	expeditionResults(s, add)
	for i := range s.Sites {
		siteResults(&s.Sites[i], add)
	}
	return t
}

// adder adds a spread in the unit of its kind.
type adder func(of, site, hole, result string, k kind, x logbook.Spread)

func expeditionResults(s *logbook.Summary, add adder) {
	add("expedition", "", "", "days needed, whole programme", ofDays, inDays(s.Needed.Total))
	add("expedition", "", "", "days in hand within the sea days", ofDays, inDays(s.Allotted.InHand))
	add("expedition", "", "", "core recovered within the sea days", ofMetres, s.Allotted.Recovered)
	add("expedition", "", "", "days in port before sailing", ofDays, inDays(s.InPort))
	add("expedition", "", "", "cores on the busiest day", ofCount, s.Deck.MostCores)
	add("expedition", "", "", "laboratory behind at most", ofHours, inHours(s.Deck.Behind))
	all := s.Recovery
	toolResults("all tools", logbook.ToolRecovery{Cores: all.Cores, Cored: all.Cored, Recovered: all.Recovered, Percent: all.Percent}, add)
	for tool, r := range s.Recovery.ByTool {
		toolResults(coring.Tool(tool).String(), r, add)
	}
	for c := range activity.Classes {
		add("class of time", "", "", c.String(), ofDays, inDays(s.Needed.ByClass[c]))
	}
}

func toolResults(name string, r logbook.ToolRecovery, add adder) {
	add("coring tool", "", "", name+": cores", ofCount, r.Cores)
	add("coring tool", "", "", name+": cored", ofMetres, r.Cored)
	add("coring tool", "", "", name+": recovered", ofMetres, r.Recovered)
	add("coring tool", "", "", name+": recovered of what was cored", ofPercent, r.Percent)
}

func siteResults(site *logbook.Site, add adder) {
	of := func(result string, k kind, x logbook.Spread) { add("site", site.Name, "", result, k, x) }
	of("days on site", ofDays, inDays(site.Days))
	of("waiting on weather", ofDays, inDays(site.Waiting))
	of("arrives after sailing", ofDays, inDays(site.Arrives))
	of("leaves after sailing", ofDays, inDays(site.Leaves))
	of("cored", ofMetres, site.Cored)
	of("recovered", ofMetres, site.Recovered)
	of("recovered of what was cored", ofPercent, site.Percent)
	of("cores", ofCount, site.Cores)
	of("section recovered in at least one hole", ofShare, site.Coverage)
	for i := range site.Holes {
		h := &site.Holes[i]
		add("hole", site.Name, h.Name, "days", ofDays, inDays(h.Days))
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

// chancesSheet holds every chance.
func chancesSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "chances", title: "What gets done within the sea days", fields: []field{
		{"site", "site", ofWords, "empty for the expedition"}, {"hole", "hole or task", ofWords, "empty for a site or the expedition"},
		{"rank", "rank", ofCount, "of a hole or task; 1 is dropped last"},
		{"what", "what", ofWords, "what happens"}, {"chance", "chance", ofShare, "share of the expeditions within the sea days"},
	}}
	none := math.NaN()
	t.add("", "", none, "the whole programme is done, but for what is not called for", s.Allotted.ChanceAll)
	t.add("", "", none, "all of rank 1 at the primary sites is done, likewise", s.Allotted.ChancePrimary)
	t.add("", "", none, "port is reached after the sea days", s.Allotted.Late)
	for _, site := range s.Sites {
		t.add(site.Name, "", none, "reached", site.ChanceReached)
		t.add(site.Name, "", none, "complete: all is done or not called for", site.ChanceComplete)
		for _, h := range site.Holes {
			t.add(site.Name, h.Name, float64(h.Rank), "done", h.ChanceDone)
			if h.Conditional {
				t.add(site.Name, h.Name, float64(h.Rank), "not called for, as another hole turned out", h.ChanceNotCalled)
			}
			t.add(site.Name, h.Name, float64(h.Rank), "dropped or cut short", h.ChanceDropped)
		}
	}
	return t
}

// runSheet tells what was simulated and how to repeat it.
func runSheet(r *Report) *sheet {
	s := r.Summary
	t := &sheet{name: "run", title: "What was simulated", fields: []field{
		{"what", "what", ofWords, ""}, {"value", "value", ofWords, ""}}}
	t.add("scenario", s.Scenario)
	t.add("invented demonstration", yesNo(s.Invented))
	t.add("ship", s.Ship)
	t.add("sails", moment(s.Sails))
	t.add("sea days", given(s.Allotted.SeaDays.Days())+" d")
	t.add("replications", fmt.Sprint(s.Replications))
	t.add("stopped early", yesNo(s.StoppedEarly))
	t.add("seed", fmt.Sprint(s.Seed))
	t.add("program", r.Program)
	t.add("the same again", call(s))
	if r.Log != nil {
		t.add("log", r.Log.File)
	}
	for _, w := range s.Warnings {
		t.add("warning", w)
	}
	return t
}
