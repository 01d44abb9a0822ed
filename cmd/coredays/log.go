package main

import (
	"errors"
	"fmt"

	"coredays/cmd/coredays/call"
	"coredays/cmd/coredays/lookahead"
	"coredays/model/plan"
	"coredays/model/result"
)

// nowhereToDraw says that a log is given and nothing to show it on.
func (f *files) nowhereToDraw() error {
	if f.log != "" && f.report == "" && f.charts == "" && f.csv == "" && f.workbook == "" {
		return errors.New("--log is drawn on charts and set into tables: give --report, --charts, --csv or --xlsx too")
	}
	return nil
}

// readLog reads what the ship really did, if a log is given.
func (f *files) readLog(p *plan.Plan) (*result.Log, error) {
	if f.log == "" {
		return nil, nil
	}
	data, err := contents(f.log)
	if err != nil {
		return nil, call.AsFault(fmt.Errorf("the log can't be read: %w", err))
	}
	log, err := lookahead.Logged(p, lookahead.File{Name: f.log, Data: data})
	return log, call.AsFault(err)
}
