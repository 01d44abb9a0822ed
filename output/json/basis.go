package json

import (
	"io"

	"coredays/model/basis"
	"coredays/model/plan"
	"coredays/model/result"
)

type basisJSON struct {
	Schema       string       `json:"schema"`
	Scenario     string       `json:"scenario"`
	Replications int          `json:"replications"` // 0: not simulated, and no shares
	Drivers      []driverJSON `json:"drivers"`
	Items        []entryLine  `json:"items"`
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
	// Share is that of the variance of days needed, null where no simulation says; Causes are its parts by the
	// drivers that it lies in.
	Share  number       `json:"share"`
	Causes []driverJSON `json:"causes"`
}

// Basis writes the numbers that a plan rests on, and what a simulation gives them.
func Basis(w io.Writer, p *plan.Plan, entries []basis.Entry, simulated *result.Summary) error {
	all := basisJSON{"coredays.basis/1", p.Title, 0, []driverJSON{}, []entryLine{}}
	if simulated != nil {
		all.Replications, all.Drivers = simulated.Replications, driversOf(simulated.Drivers)
	}
	for _, e := range entries {
		all.Items = append(all.Items, entryLine{e.Group, e.Site, e.Name, number(e.Low), number(e.Mid), number(e.High), e.Unit, e.Varies,
			e.From.String(), e.Memory, e.Source, number(e.Share), driversOf(e.Causes)})
	}
	return writeJSON(w, all)
}
