package json

import (
	"io"

	"coredays/model/check"
	"coredays/model/plan"
	"coredays/output/words"
)

type checkJSON struct {
	Schema   string        `json:"schema"`
	Scenario string        `json:"scenario"`
	Verdict  string        `json:"verdict"`
	Items    []findingJSON `json:"items"`
	Warnings []string      `json:"warnings"`
	Cautions []string      `json:"cautions"`
}

type findingJSON struct {
	Site    string `json:"site"`
	Hole    string `json:"hole"`
	What    string `json:"what"`
	Verdict string `json:"verdict"`
	Value   number `json:"value"`
	Limit   number `json:"limit"`
	Least   bool   `json:"limit_is_least"`
	Unit    string `json:"unit"`
	Source  string `json:"source"`
	Chance  number `json:"chance"`
	Where   string `json:"where"`
	Cure    string `json:"cure"`
}

// Check writes the findings. Site and hole are empty for what concerns the expedition or the whole
// site; limit_is_least says that the value may not be below the limit, rather than above it; value, limit and the chance that it goes well all the same are null where there is no figure; where is
// the file and line of what is at fault.
func Check(w io.Writer, p *plan.Plan, found []check.Finding) error {
	all := checkJSON{"coredays.check/1", p.Title, check.Worst(found).String(), []findingJSON{}, append([]string{}, p.Warnings...), check.Cautions()}
	for _, f := range found {
		all.Items = append(all.Items, findingJSON{f.Site, f.Hole, f.What, f.Verdict.String(), number(f.Value), number(f.Limit), f.Least, f.Unit, f.Source, number(words.OrNone(f.Chance)), f.Where, f.Cure})
	}
	return writeJSON(w, all)
}
