package scenario

import (
	"errors"
	"fmt"
	"path/filepath"

	"coredays/model/sea"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// seaRecord reads the user's own record of the sea, which stands beside the scenario. Sites with
// the same record share it, and its sea.
func (r siteReader) seaRecord(path string, w *weatherFile) sea.Climate {
	name := r.Called(path, w.Record, entry.MostWords)
	if name == "" {
		return sea.Climate{}
	}
	likeness, err := r.likeness(name)
	if err != nil {
		r.Fault(path, name, "a record of the sea of a year and more; "+RecordFault(name, err).Error())
		return sea.Climate{}
	}
	r.site.Likeness = likeness
	return likeness.Record.Monthly(r.Words(document.Join(r.at("weather"), "source"), w.Source, "the record "+name))
}

// likeness opens a record once, and warns of what was found in it.
func (c *clerk) likeness(name string) (*sea.Likeness, error) {
	path := name
	if !filepath.IsAbs(path) {
		path = filepath.Join(filepath.Dir(c.File), path)
	}
	if l := c.records[path]; l != nil {
		return l, nil
	}
	c.reads = append(c.reads, path)
	file, err := document.OpenFile(path)
	if err != nil {
		return nil, fmt.Errorf("can't be read: %w", err)
	}
	defer file.Close()
	record, err := sea.ReadRecord(file)
	if err != nil {
		return nil, err
	}
	l, err := sea.NewLikeness(record, filepath.Base(path))
	if err != nil {
		return nil, err
	}
	if c.records == nil {
		c.records = map[string]*sea.Likeness{}
	}
	c.records[path] = l
	for _, note := range l.Notes {
		c.Warn("%s: %s", name, note)
	}
	return l, nil
}

// RecordFault says why a record of the sea can't be used, with the file and the line that shows it.
func RecordFault(file string, err error) error {
	f := fault.Fault{File: file, Wanted: err.Error()}
	if m, is := errors.AsType[*sea.Misread](err); is {
		f.Line = m.Line
	}
	return f
}
