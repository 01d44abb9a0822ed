package scenario

import (
	"fmt"
	"io"
	"math"

	"coredays/model/logbook"
	"coredays/model/plan"
	"coredays/model/unit"
)

// logColumns must be in a log; it may have others.
var logColumns = []string{"from", "site", "hole", "depth_mbsf"}

// ReadLog reads what a ship did at the sites of a plan: a table with a line for each thing done, in the
// order of time, its columns divided by commas. Lines that begin with # are comments. The columns are
//
//	from        when it began, UTC, such as 2027-02-23T20:53
//	site        as the scenario names it; empty under way
//	hole        hole or task; a hole that the scenario does not have is taken too
//	depth_mbsf  how deep the hole was when it began, m below the sea floor; empty before it is spudded
//
// and others are left to those who keep the log. The ship arrives at a site with the first line of it.
// Where the log is wrong the error is Faults, all of them.
func ReadLog(name string, r io.Reader, p *plan.Plan) (*logbook.Log, error) {
	t, err := openTable(name, r, logColumns)
	if err != nil {
		return nil, err
	}
	var sites []string
	for i := range p.Sites {
		sites = append(sites, p.Sites[i].Name)
	}
	log := &logbook.Log{File: name}
	for t.next() {
		if line := t.logLine(log.Lines, sites); t.keep() {
			log.Lines = append(log.Lines, line)
		}
	}
	return log, t.logFaults(log).orNil()
}

// logLine reads a line, which does not begin before the one above it.
func (t *recordTable) logLine(above []logbook.LogLine, sites []string) logbook.LogLine {
	line := logbook.LogLine{From: t.moment("from"), Site: t.text("site"), Hole: t.text("hole"), Depth: unit.Depth(math.NaN())}
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

// logFaults is all that is wrong with a log.
func (t *recordTable) logFaults(log *logbook.Log) (list Faults) {
	for _, out := range t.out {
		list = append(list, Fault{File: log.File, Line: out.Row, Wanted: out.Why})
	}
	if len(list) == 0 && len(log.Lines) == 0 {
		list = append(list, Fault{File: log.File, Wanted: "there is no line below the heading"})
	}
	return list
}
