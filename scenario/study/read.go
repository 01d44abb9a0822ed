package study

import (
	"fmt"
	"path/filepath"
	"time"

	"coredays/scenario/dates"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// studyFile mirrors the file key by key.
type studyFile struct {
	Version   document.Text   `mapstructure:"version"`
	Title     document.Text   `mapstructure:"title"`
	Scenarios []document.Text `mapstructure:"scenarios"`
	Dates     document.Text   `mapstructure:"dates"`
	Vary      []variedFile    `mapstructure:"vary"`
}

type variedFile struct {
	Set document.Text   `mapstructure:"set"`
	To  []document.Text `mapstructure:"to"`
}

// clerk reads the parts of a study.
type clerk struct {
	entry.Reader
	seen map[string]bool
}

func (c *clerk) study(f studyFile) *Study {
	c.Version(f.Version)
	c.seen = map[string]bool{}
	s := &Study{File: c.File, Title: c.Title("title", f.Title, filepath.Base(c.File)), Dates: f.Dates.Value}
	if len(f.Scenarios) == 0 {
		c.Fault("scenarios", "", "a list of scenarios, such as [north.yaml, south.yaml]")
	}
	for i, t := range f.Scenarios {
		s.Scenarios = append(s.Scenarios, c.scenario(document.At("scenarios", i), t.Value))
	}
	for i, vary := range f.Vary {
		s.Vary = append(s.Vary, c.varied(document.At("vary", i), vary, f.Dates.Given))
	}
	if f.Dates.Given {
		// The hour of day is the scenario's; whether the dates can be read does not hang on it.
		if _, err := dates.Of(f.Dates.Value, time.Time{}, Most); err != nil {
			c.Fault("dates", f.Dates.Value, err.Error())
		}
	}
	if len(s.Variants()) > Most {
		c.Fault("vary", "", fmt.Sprintf("fewer values: at most %d scenarios with settings are taken", Most))
	}
	return s
}

// once notes what stands there a second time.
func (c *clerk) once(path, value, what string) {
	if key := what + " " + value; c.seen[key] {
		c.Fault(path, value, "each "+what+" once")
	} else {
		c.seen[key] = true
	}
}

// scenario is one of the list.
func (c *clerk) scenario(path, name string) Scenario {
	if name == "" {
		c.Fault(path, "", "the name of a scenario's file")
	}
	c.once(path, name, "scenario")
	file := name
	if !filepath.IsAbs(file) {
		file = filepath.Join(filepath.Dir(c.File), file)
	}
	return Scenario{name, file}
}

// varied is a setting with its values.
func (c *clerk) varied(path string, f variedFile, dated bool) Varied {
	v := Varied{Path: f.Set.Value}
	set, to := document.Join(path, "set"), document.Join(path, "to")
	if v.Path == "" {
		c.Fault(set, "", "the path of a value of the scenario, such as sea_days")
	}
	if v.Path == "sails" && dated {
		c.Fault(set, v.Path, "another setting: dates say when each sails")
	}
	c.once(set, v.Path, "setting")
	if len(f.To) == 0 {
		c.Fault(to, "", "the values that it takes, such as [50 d, 56 d]")
	}
	for i, t := range f.To {
		if t.Value == "" {
			c.Fault(document.At(to, i), "", "a value")
		}
		c.once(document.At(to, i), t.Value, "value of "+path)
		v.To = append(v.To, t.Value)
	}
	return v
}
