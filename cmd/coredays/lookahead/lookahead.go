// Package lookahead makes the morning page from what a ship has: the scenario, her operations log, and what else she
// kept. The command and the desk call it.
package lookahead

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"time"

	"coredays/model/morning"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/riglog"
	"coredays/model/state"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/scenario/rigfile"
	"coredays/scenario/statefile"
	"coredays/sim"
	"coredays/sim/lookahead"
)

// File is a file that was read.
type File struct {
	Name string
	Data []byte
}

// Papers are the files of a morning. Only the log must be there.
type Papers struct {
	Log                    File
	Cores, State, Forecast *File
	At                     time.Time // zero for the end of the log
}

// Read tells where the ship stands. All faults of the files come in one error, each with file and line.
func Read(p *plan.Plan, f Papers) (*state.State, *riglog.Papers, error) {
	_, st, papers, err := Taken(p, f)
	return st, papers, err
}

// Taken is Read with the plan as the state file amends it; the same plan where it does not.
func Taken(p *plan.Plan, f Papers) (*plan.Plan, *state.State, *riglog.Papers, error) {
	papers, err := read(f)
	if err != nil {
		return nil, nil, nil, err
	}
	c := state.NoCorrection()
	if f.State != nil {
		if c, err = statefile.Read(f.State.Name, f.State.Data); err != nil {
			return nil, nil, nil, err
		}
	}
	p, notes, wrong := c.Amend(p)
	if len(wrong) > 0 {
		return nil, nil, nil, wrongState(f.State, wrong)
	}
	st, faults := state.Read(p, papers, f.At)
	if len(faults) > 0 {
		return nil, nil, nil, joined(faults)
	}
	if wrong := c.Apply(p, st); len(wrong) > 0 {
		return nil, nil, nil, wrongState(f.State, wrong)
	}
	st.Notes = append(st.Notes, notes...)
	return p, st, papers, nil
}

// wrongState tells what is wrong with a state file.
func wrongState(f *File, faults []string) error {
	return fmt.Errorf("%s: %s", f.Name, strings.Join(faults, "\n"+f.Name+": "))
}

// Logged is what a log has of the holes of a plan, to be drawn beside what is simulated. It is read as the look-ahead
// reads it, and what contradicts the plan, the clock or the log itself is refused alike.
func Logged(p *plan.Plan, log File) (*result.Log, error) {
	st, papers, err := Read(p, Papers{Log: log})
	if err != nil {
		return nil, err
	}
	logged := &result.Log{File: log.Name, Notes: st.Notes}
	for i := range papers.Lines {
		l := &papers.Lines[i]
		logged.Lines = append(logged.Lines, result.LogLine{From: l.From, Site: l.Site, Hole: l.Hole, Depth: l.Depth})
	}
	return logged, nil
}

// read reads the tables.
func read(f Papers) (*riglog.Papers, error) {
	var papers riglog.Papers
	var reading rigfile.Reading
	if err := reading.Read(&papers, f.Log.Name, f.Log.Data); err != nil {
		return nil, err
	}
	if len(papers.Lines) == 0 {
		return nil, fmt.Errorf("%s: it is no operations log, which has the columns from, what, site, hole and depth_mbsf", f.Log.Name)
	}
	if f.Cores != nil {
		if err := reading.Read(&papers, f.Cores.Name, f.Cores.Data); err != nil {
			return nil, err
		}
	}
	var lost []error
	for _, n := range papers.Notes {
		if n.Lost {
			lost = append(lost, fmt.Errorf("%s:%d: %s: %s", n.File, n.Row, n.Why, n.Cure))
		}
	}
	if len(lost) > 0 {
		return nil, errors.Join(lost...)
	}
	return &papers, nil
}

// mostFaults of a log are told: one of another expedition has thousands.
const mostFaults = 20

func joined(faults []state.Fault) error {
	var list []error
	for i, f := range faults {
		if i == mostFaults {
			list = append(list, fmt.Errorf("%s: and %d more", f.File, len(faults)-i))
			break
		}
		switch {
		case f.Row > 0:
			list = append(list, fmt.Errorf("%s:%d: %s", f.File, f.Row, f.Why))
		default:
			list = append(list, errors.New(f.Why))
		}
	}
	return errors.Join(list...)
}

// Page makes the morning page.
func Page(ctx context.Context, v *voyage.Voyage, f Papers, run sim.Run) (*morning.Page, error) {
	p, st, papers, err := Taken(v.Plan, f)
	if err != nil {
		return nil, err
	}
	if p != v.Plan {
		if v, err = voyage.Compile(p); err != nil {
			return nil, fmt.Errorf("%s: with its approvals and ranks: %w", f.State.Name, err)
		}
	}
	asked := lookahead.Asked{Run: run}
	if f.Forecast != nil {
		waves, err := statefile.ReadForecast(f.Forecast.Name, f.Forecast.Data)
		if err != nil {
			return nil, err
		}
		for _, w := range waves {
			asked.Forecast = append(asked.Forecast, lookahead.Wave{At: w.At, Height: unit.Length(w.Height)})
		}
	}
	return lookahead.Look(ctx, v, st, papers, asked)
}
