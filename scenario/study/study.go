package study

import (
	"fmt"
	"time"

	"coredays/scenario/dates"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// Most is how many plans a study may have. Our choice: with 2,000 replications each that is half a day of one processor.
const Most = 100_000

// Study is what varies.
type Study struct {
	File, Title string
	Scenarios   []Scenario
	Dates       string // as given; empty for none
	Vary        []Varied
}

// Scenario is one of those that a study takes.
type Scenario struct {
	Name string // as the study says it
	Path string // to open it by
}

// Varied is a setting with the values that it takes.
type Varied struct {
	Path string
	To   []string
}

// Variant is a scenario with some settings: the plans of all dates.
type Variant struct {
	Scenario Scenario
	Settings []string // as --set takes them, one of each Varied
	Values   []string // of these
}

// Open reads a study. Where its file is wrong the error is a fault.List, all faults; the scenarios are not looked at.
func Open(path string) (*Study, error) {
	data, err := document.ReadFile(path)
	if err != nil {
		return nil, fmt.Errorf("the study can't be read: %w", err)
	}
	v, o := document.Load(path, data)
	if len(o.Faults) > 0 && !o.OnlyEmpty() {
		return nil, o.Faults.OrNil()
	}
	c := &clerk{Reader: entry.Reader{Outline: o}}
	var f studyFile
	c.Said = document.Decode(v, o, &f)
	s := c.study(f)
	return s, c.Faults.OrNil()
}

// Variants are all scenarios with all settings, the last setting changing first; where there are more than a study
// may have, not all.
func (s *Study) Variants() (list []Variant) {
	for _, scenario := range s.Scenarios {
		of := []Variant{{Scenario: scenario}}
		for _, vary := range s.Vary {
			of = with(of, vary)
		}
		if list = append(list, of...); len(list) > Most {
			return list
		}
	}
	return list
}

// with takes each variant with each value of a setting.
func with(list []Variant, vary Varied) (all []Variant) {
	for _, v := range list {
		for _, to := range vary.To {
			all = append(all, Variant{v.Scenario, append(v.Settings[:len(v.Settings):len(v.Settings)], vary.Path+"="+to), append(v.Values[:len(v.Values):len(v.Values)], to)})
		}
		if len(all) > Most {
			return all
		}
	}
	return all
}

// DatesOf are the dates on which a scenario sails that says to sail at a moment.
func (s *Study) DatesOf(sails time.Time) ([]time.Time, error) {
	if s.Dates == "" {
		return []time.Time{sails}, nil
	}
	list, err := dates.Of(s.Dates, sails, Most)
	if err != nil {
		return nil, fmt.Errorf("%s: dates: %q: %w", s.File, s.Dates, err)
	}
	return list, nil
}
