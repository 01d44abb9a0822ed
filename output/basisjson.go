package output

import (
	"io"

	"coredays/model/basis"
	"coredays/model/plan"
)

type basisJSON struct {
	Schema       string      `json:"schema"`
	Scenario     string      `json:"scenario"`
	Replications int         `json:"replications"` // 0: not simulated, and no shares
	Items        []entryLine `json:"items"`
}

type entryLine struct {
	Group      string `json:"group"`
	Site       string `json:"site"`
	Name       string `json:"name"`
	Low        number `json:"low"`
	Mid        number `json:"mid"`
	High       number `json:"high"`
	Unit       string `json:"unit"`
	Varies     string `json:"varies"`
	From       string `json:"from"`
	FromMemory bool   `json:"from_memory"`
	Source     string `json:"source"`
	Share      number `json:"share"` // of days needed; null where there is none
}

// BasisJSON writes the numbers that a plan rests on.
func BasisJSON(w io.Writer, p *plan.Plan, entries []basis.Entry, replications int) error {
	all := basisJSON{"coredays.basis/1", p.Title, replications, []entryLine{}}
	for _, e := range entries {
		all.Items = append(all.Items, entryLine{e.Group, e.Site, e.Name, number(e.Low), number(e.Mid), number(e.High), e.Unit, e.Varies,
			e.From.String(), e.Memory, e.Source, number(e.Share)})
	}
	return writeJSON(w, all)
}
