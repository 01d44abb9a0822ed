package records

import (
	"fmt"
	"io"
	"math"
	"slices"
	"time"

	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/scenario/fault"
)

// logColumns must be in a log; it may have others.
var logColumns = []string{"from", "site", "hole", "depth_mbsf"}

// ReadLog reads what a ship did at the sites of a plan: a table with a line for each thing done, in the
// order of time, its columns divided by commas, semicolons or tabs. Lines that begin with # are comments.
// The columns are
//
//	from        when it began, UTC, such as 2027-02-23T20:53
//	site        as the scenario names it; empty under way
//	hole        hole or task; a hole that the scenario does not have is taken too
//	depth_mbsf  how deep the hole was when it began, m below the sea floor; empty before it is spudded, 0
//	            where it is begun again under the same name
//
// and others are left to those who keep the log. The ship arrives at a site with the first line of it.
// Where the log is wrong the error is a fault.List, all of them.
func ReadLog(name string, r io.Reader, p *plan.Plan) (*result.Log, error) {
	t, err := openTable(name, r, logColumns)
	if err != nil {
		return nil, err
	}
	var sites []string
	for i := range p.Sites {
		sites = append(sites, p.Sites[i].Name)
	}
	log := &result.Log{File: name}
	reached := soundings{}
	for t.next() {
		line := t.logLine(log.Lines, sites)
		note := t.deepens(reached, line)
		if !t.keep() {
			continue
		}
		log.Lines, log.Notes = append(log.Lines, line), append(log.Notes, note...)
	}
	if faults := t.logFaults(log); len(faults) > 0 {
		return nil, faults
	}
	log.Notes = append(notesOn(log, p), log.Notes...)
	return log, nil
}

// notesOn says what in a log is no fault and yet hardly meant.
func notesOn(log *result.Log, p *plan.Plan) (notes []string) {
	first, last, ends := log.Lines[0].From, log.Lines[len(log.Lines)-1].From, p.Sails.Add(time.Duration(float64(p.SeaDays)*float64(time.Second)))
	if first.Before(p.Sails.Add(-mostApart)) || last.After(ends.Add(mostApart)) {
		notes = append(notes, fmt.Sprintf("it goes from %s to %s, and by the scenario the ship is at sea from %s to %s", first.Format(time.DateOnly), last.Format(time.DateOnly),
			p.Sails.Format(time.DateOnly), ends.Format(time.DateOnly)))
	}
	seen := map[result.Place]bool{}
	for _, line := range log.Lines {
		site, hole := result.Place{Site: line.Site}, result.Place{Site: line.Site, Hole: line.Hole}
		if line.Site != "" && !seen[site] && line.Depth > 0 {
			notes = append(notes, fmt.Sprintf("at site %s it begins with hole %s %g m deep: days count from that line, not from the arrival", line.Site, line.Hole, float64(line.Depth)))
		}
		if line.Hole != "" && !seen[hole] && !planned(p, line.Site, line.Hole) {
			notes = append(notes, fmt.Sprintf("site %s has no hole or task %q in the scenario", line.Site, line.Hole))
		}
		seen[site], seen[hole] = true, true
	}
	return notes
}

// mostApart is how far a log may lie outside the sea days without a note.
const mostApart = 30 * 24 * time.Hour

// planned reports whether a site of a plan has a hole or task.
func planned(p *plan.Plan, site, item string) bool {
	return slices.ContainsFunc(p.Sites, func(s plan.Site) bool {
		return s.Name == site && slices.ContainsFunc(s.Items, func(i plan.Item) bool { return i.Name == item })
	})
}

// logLine reads a line, which does not begin before the one above it.
func (t *recordTable) logLine(above []result.LogLine, sites []string) result.LogLine {
	line := result.LogLine{From: t.moment("from"), Site: t.text("site"), Hole: t.text("hole"), Depth: unit.Depth(math.NaN())}
	if n := len(above); n > 0 && !line.From.IsZero() && line.From.Before(above[n-1].From) {
		t.fault("from", "a time not before "+above[n-1].From.Format(recordTimes[0])+", when the line above begins")
	}
	if line.Site != "" {
		t.oneOf("site", sites)
	} else if line.Hole != "" {
		t.fault("site", fmt.Sprintf("the site of hole %q", line.Hole))
	}
	if t.has("depth_mbsf") {
		line.Depth = unit.Depth(t.number("depth_mbsf", 0, deepestHole))
	}
	return line
}

// soundings are how deep the holes of a log were last, and on which line.
type soundings map[result.Place]sounding

type sounding struct {
	depth unit.Depth
	line  int
}

// mostShallower is by how much the depth of a hole may be put right from one line to the next: a joint of
// drill pipe is about 9.5 m [common practice], and a count may be one joint off.
const mostShallower = 10.0 // m

// deepens holds the depth of a hole against that of the last line with one. A hole gets no shallower, unless
// it is begun again at 0 m. A little less is given in a note, much less is a fault.
func (t *recordTable) deepens(reached soundings, line result.LogLine) (note []string) {
	if math.IsNaN(float64(line.Depth)) || line.Hole == "" || len(t.wrong) > 0 {
		return nil
	}
	place := result.Place{Site: line.Site, Hole: line.Hole}
	before, known := reached[place]
	if less := before.depth - line.Depth; known && less > 0 {
		if line.Depth > 0 && less > mostShallower {
			t.fault("depth_mbsf", fmt.Sprintf("at least the %g m that hole %s has on line %d, or 0 where it is begun again", float64(before.depth), line.Hole, before.line))
			return nil
		}
		note = []string{fmt.Sprintf("hole %s at site %s is %g m deep on line %d and %g m on line %d", line.Hole, line.Site, float64(before.depth), before.line, float64(line.Depth), t.line)}
	}
	reached[place] = sounding{line.Depth, t.line}
	return note
}

// mostFaults of a log are given: a log of another expedition has thousands.
const mostFaults = 20

// logFaults is all that is wrong with a log.
func (t *recordTable) logFaults(log *result.Log) (list fault.List) {
	for n, out := range t.out {
		if n == mostFaults {
			return append(list, fault.Fault{File: log.File, Wanted: fmt.Sprintf("and %d more lines", len(t.out)-n)})
		}
		list = append(list, fault.Fault{File: log.File, Line: out.Row, Wanted: out.Why})
	}
	if len(list) == 0 && len(log.Lines) == 0 {
		list = append(list, fault.Fault{File: log.File, Wanted: "there is no line below the heading"})
	}
	return list
}
