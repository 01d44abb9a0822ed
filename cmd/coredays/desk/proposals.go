package desk

import (
	"slices"
	"strings"

	"coredays/model/plan"
	"coredays/model/result"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// change is a value to put into the text of a plan: an empty one takes the key out.
type change struct {
	Path  string `json:"path"`
	Value string `json:"value"`
}

// proposal is an alternative that a search found.
type proposal struct {
	Name  string   `json:"name"`
	Words string   `json:"words"`
	Take  []change `json:"take"` // what takes it over; none for the plan as it is
	Best  bool     `json:"best"`
}

// found is what a search came to.
type found struct {
	Lines     []string   `json:"lines"`
	Proposals []proposal `json:"proposals"`
}

func foundIn(c *result.Comparison, take func(i int) []change) (f found) {
	if len(c.Cuts) > 0 || c.Question == result.WhatToCut {
		f.Lines = append([]string{alternatives.AsPlannedSentence(c)}, alternatives.BestCutSentences(c)...)
		f.Lines = append(f.Lines, alternatives.CutsNote)
		helps, trifles := alternatives.Ranked(c)
		for _, cut := range slices.Concat(helps, trifles) {
			i := slices.IndexFunc(c.Cuts, func(x result.Cut) bool { return x.Site == cut.Site && x.What == cut.What && x.Kind == cut.Kind })
			f.Proposals = append(f.Proposals, proposal{Name: "Without " + alternatives.CutName(cut), Words: alternatives.CutWords(cut, c.Replications), Take: take(i)})
		}
		return f
	}
	f.Lines = slices.Concat([]string{alternatives.FirstHeading(c) + "."}, alternatives.FirstLines(c), alternatives.StandingLines(c))
	order := alternatives.ByMerit(c)
	slices.SortStableFunc(order, func(a, b int) int { // the best on top: it is what one takes over
		switch c.Best {
		case a:
			return -1
		case b:
			return 1
		}
		return 0
	})
	for _, i := range order {
		a := &c.Alternatives[i]
		p := proposal{Name: a.Name, Best: i == c.Best, Words: alternatives.Standing(c, i) + "; P50 " + words.Figures(words.InDays(a.Summary.Needed.Total).P50) +
			" d; rank 1 " + words.Often(a.Summary.Allotted.ChancePrimary, c.Replications)}
		switch {
		case take != nil:
			p.Take = take(i)
		case i == c.Planned:
			p.Words = "the order on screen; " + p.Words
		default:
			p.Take = []change{{"order", "[" + strings.Join(a.Order, ", ") + "]"}}
		}
		f.Proposals = append(f.Proposals, p)
	}
	return f
}

// keyOf is the key of the scenario that asks for a measurement.
var keyOf = map[string]string{"orientation": "oriented", "temperature": "temperature", "penetrometer": "penetrometer", "logging": "logging"}

// withoutIt are the edits that cut something from a plan: sites, holes and tasks are left out, so that
// they can be taken in again; what asks for a measurement goes.
func withoutIt(p *plan.Plan, cut plan.Cut) (list []change) {
	for s := range p.Sites {
		if p.Sites[s].Name != cut.Site {
			continue
		}
		if cut.Kind == plan.WholeSite {
			return []change{{p.SitePath(s) + ".left_out", "yes"}}
		}
		gone := map[string]bool{cut.What: true}
		for _, name := range cut.Also {
			gone[name] = true
		}
		for i := range p.Sites[s].Items {
			path, name := p.ItemPath(s, i), p.Sites[s].Items[i].Name
			what, measured := strings.CutPrefix(cut.What, name+" ")
			switch {
			case cut.Kind != plan.Measurement && gone[name]:
				list = append(list, change{path + ".left_out", "yes"})
			case cut.Kind == plan.Measurement && measured && keyOf[what] != "":
				return []change{{path + "." + keyOf[what], ""}}
			}
		}
	}
	return list
}
