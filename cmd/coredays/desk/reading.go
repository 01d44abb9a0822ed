package desk

import (
	"errors"
	"net/http"

	"coredays/model/check"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/output/text"
	"coredays/scenario"
	"coredays/scenario/edit"
	"coredays/scenario/fault"
	"coredays/sim"
)

// faultSaid is a fault with its place.
type faultSaid struct {
	Line   int    `json:"line"`
	Path   string `json:"path"`
	Value  string `json:"value"`
	Wanted string `json:"wanted"`
	File   string `json:"file"`
}

// finding is what the check found, with its place in the plan.
type finding struct {
	Path  string `json:"path"`
	Words string `json:"words"`
	Stop  bool   `json:"stop"`
}

// reading is what a text says as a plan, or what is wrong with it.
type reading struct {
	Tree     any         `json:"tree"` // as typed
	Faults   []faultSaid `json:"faults"`
	Stops    []string    `json:"stops"`    // for which the check stops it
	Findings []finding   `json:"findings"` // stops and cautions
	Verdict  string      `json:"verdict"`
	Warnings []string    `json:"warnings"`
	voyage   *voyage.Voyage
	summary  *result.Summary // of the last answer
}

// readingOf reads a text as simulate reads a file, and holds it against the check as simulate does.
func (d *Desk) readingOf(data string) reading {
	r := reading{Tree: edit.Typed([]byte(data)), Faults: []faultSaid{}}
	p, err := scenario.Read(d.name(), []byte(data))
	if err == nil {
		r.compile(p)
		return r
	}
	faults, many := errors.AsType[fault.List](err)
	if !many {
		r.Faults = append(r.Faults, faultSaid{Wanted: err.Error()})
	}
	for _, f := range faults {
		r.Faults = append(r.Faults, faultSaid{f.Line, f.Path, f.Value, f.Wanted, f.File})
	}
	return r
}

func (r *reading) compile(p *plan.Plan) {
	v, err := voyage.Compile(p)
	if err != nil {
		r.Faults = append(r.Faults, faultSaid{Wanted: err.Error()})
		return
	}
	found := check.Plan(v, sim.Estimate(v))
	r.Verdict, r.Stops = text.CheckedWords(found), text.Stops(found)
	for _, f := range found {
		if f.Verdict != check.Pass {
			r.Findings = append(r.Findings, finding{f.Path, text.FindingWords(f), f.Verdict == check.Stop})
		}
	}
	for _, line := range text.Unlikely(found) {
		r.Warnings = append(r.Warnings, "Unlikely: "+line)
	}
	r.voyage = v
}

// sails reports whether there is something to simulate.
func (r *reading) sails() bool { return r.voyage != nil && len(r.Stops) == 0 }

func (d *Desk) read(w http.ResponseWriter, r *http.Request) {
	if q, ok := asked(w, r); ok {
		say(w, http.StatusOK, d.readingOf(q.Text))
	}
}
