package main

import (
	"errors"
	"fmt"

	"coredays/cmd/coredays/call"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/scenario/document"
	"coredays/scenario/records"
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
	file, err := document.OpenFile(f.log)
	if err != nil {
		return nil, call.AsFault(fmt.Errorf("the log can't be read: %w", err))
	}
	defer file.Close()
	log, err := records.ReadLog(f.log, file, p)
	return log, call.AsFault(err)
}
