package scenario

import (
	"fmt"

	"github.com/spf13/viper"

	"coredays/model/plan"
	"coredays/model/sea"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// Read reads a scenario. The extension of the name decides the format: .yaml, .yml, .toml or
// .json; a ship file that the scenario names is looked for beside it. Where the file is wrong
// the error is a fault.List, all of them.
func Read(name string, data []byte) (*plan.Plan, error) { return WithSettings(data, name, nil) }

// Open reads the scenario in a file, with settings as WithSettings takes them.
func Open(path string, settings ...string) (*plan.Plan, error) {
	data, err := document.ReadFile(path)
	if err != nil {
		return nil, fmt.Errorf("the scenario can't be read: %w", err)
	}
	return WithSettings(data, path, settings)
}

// WithSettings reads a scenario with some of its values replaced before they are looked at, such
// as "sites[0].water_depth=3000 m" or "sites[SB-01].cap=9 d".
func WithSettings(data []byte, name string, settings []string) (*plan.Plan, error) {
	v, o := document.Load(name, data)
	if len(o.Faults) > 0 && !o.OnlyEmpty() {
		return nil, o.Faults.OrNil()
	}
	v = document.WithSettings(v, o, settings)
	p := read(v, o)
	blame(o, data, settings)
	if err := o.Faults.OrNil(); err != nil {
		return nil, err
	}
	return p, nil
}

// ToCheck reads a scenario as WithSettings does, but lets pass what is well-formed and can't be done, such
// as a target below the approved depth: whoever checks the plan is to tell it beside all the rest.
// infeasible is what was let pass; nobody may simulate such a plan.
func ToCheck(data []byte, name string, settings []string) (p *plan.Plan, infeasible fault.List, err error) {
	v, o := document.Load(name, data)
	if len(o.Faults) > 0 && !o.OnlyEmpty() {
		return nil, nil, o.Faults.OrNil()
	}
	v = document.WithSettings(v, o, settings)
	p = read(v, o)
	blame(o, data, settings)
	var malformed fault.List
	for _, f := range o.Faults {
		if f.Infeasible {
			infeasible = append(infeasible, f)
		} else {
			malformed = append(malformed, f)
		}
	}
	if err := malformed.OrNil(); err != nil {
		return nil, nil, o.Faults.OrNil()
	}
	return p, infeasible, nil
}

// OpenToCheck is ToCheck of a file.
func OpenToCheck(path string, settings ...string) (*plan.Plan, fault.List, error) {
	data, err := document.ReadFile(path)
	if err != nil {
		return nil, nil, fmt.Errorf("the scenario can't be read: %w", err)
	}
	return ToCheck(data, path, settings)
}

// read turns what was loaded into a plan and notes what is wrong.
func read(v *viper.Viper, o *document.Outline) *plan.Plan {
	o.Faults = append(o.Faults, builtIn().faults...)
	c := &clerk{Reader: &entry.Reader{Outline: o}}
	var f expeditionFile
	c.Said = document.Decode(v, o, &f)
	p := c.expedition(f)
	p.Reads = c.reads
	p.Where = o.Places(v.AllSettings(), "", map[string]string{})
	return p
}

// clerk reads the parts of an expedition and of a ship.
type clerk struct {
	*entry.Reader
	anywhere []plan.Unusable          // what stops work at any site
	records  map[string]*sea.Likeness // of the sea, by path
	reads    []string                 // paths of the files that the scenario names
	out      []bool                   // whether each site is left out
	without  []string                 // names of the sites and holes that are left out
}
