package scenario

import (
	_ "embed"
	"maps"
	"slices"
	"sync"

	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/spread"
)

//go:embed lithologies.yaml
var lithologiesText []byte

// builtInLithologies are those that come with the program, and their faults: none, which a test holds.
var builtInLithologies = sync.OnceValues(func() ([]ground.Lithology, Faults) { return readLithologies("lithologies.yaml", lithologiesText) })

type lithologiesFile struct {
	Version     text            `mapstructure:"version"`
	Lithologies []lithologyFile `mapstructure:"lithologies"`
}

type lithologyFile struct {
	Name              text                  `mapstructure:"name"`
	SideShear         *spreadFile           `mapstructure:"side_shear"`
	DrillingRate      *spreadFile           `mapstructure:"drilling_rate"`
	DrillingAheadRate *spreadFile           `mapstructure:"drilling_ahead_rate"`
	Recovery          map[string]spreadFile `mapstructure:"recovery"` // by the key of a coring.Tool
}

// readLithologies reads the file of lithologies.
func readLithologies(name string, data []byte) ([]ground.Lithology, Faults) {
	c, f, readable := mirrored[lithologiesFile](name, data)
	if !readable {
		return nil, c.faults
	}
	c.version(f.Version)
	var all []ground.Lithology
	for i, l := range f.Lithologies {
		all = append(all, readLithology(c, at("lithologies", i), l))
	}
	return all, c.faults
}

// readLithology reads one lithology, which must be complete and sourced.
func readLithology(c *reader, path string, f lithologyFile) ground.Lithology {
	l := ground.Lithology{Name: c.name(join(path, "name"), f.Name)}
	c.sourced(join(path, "side_shear"), f.SideShear)
	c.sourced(join(path, "drilling_rate"), f.DrillingRate)
	c.sourced(join(path, "drilling_ahead_rate"), f.DrillingAheadRate)
	l.Strength = c.quantity(join(path, "side_shear"), f.SideShear, strengthMeasure, spread.Quantity{})
	l.Rate = c.quantity(join(path, "drilling_rate"), f.DrillingRate, penetrationRate, spread.Quantity{})
	l.Ahead = c.quantity(join(path, "drilling_ahead_rate"), f.DrillingAheadRate, penetrationRate, spread.Quantity{})
	toolKeys(c, join(path, "recovery"), f.Recovery)
	for tool := range coring.Tools {
		inner := join(path, "recovery."+tool.Key())
		given := ofTool(f.Recovery, tool)
		c.sourced(inner, given)
		l.Recovery[tool] = c.quantity(inner, given, recoveryMeasure, spread.Quantity{})
	}
	return l
}

// ofTool is what is given for a tool, nil where nothing is.
func ofTool(given map[string]spreadFile, t coring.Tool) *spreadFile {
	if s, is := given[t.Key()]; is {
		return &s
	}
	return nil
}

// toolKeys refuses keys that are no tools.
func toolKeys(c *reader, path string, given map[string]spreadFile) {
	var known []string
	for tool := range coring.Tools {
		known = append(known, tool.Key())
	}
	for _, key := range slices.Sorted(maps.Keys(given)) {
		if !slices.Contains(known, key) {
			wanted, meant := suggest(key, known, "key")
			c.outline.fault(join(path, key), "", wanted) // even where an empty value is said
			if meant != "" {
				c.said = append(c.said, join(path, meant))
			}
		}
	}
}

// altered is a lithology with what is stated otherwise.
func altered(c *reader, path string, f lithologyFile, l ground.Lithology) ground.Lithology {
	if f.SideShear != nil {
		l.Strength = c.quantity(join(path, "side_shear"), f.SideShear, strengthMeasure, l.Strength)
	}
	if f.DrillingRate != nil {
		l.Rate = c.quantity(join(path, "drilling_rate"), f.DrillingRate, penetrationRate, l.Rate)
	}
	if f.DrillingAheadRate != nil {
		l.Ahead = c.quantity(join(path, "drilling_ahead_rate"), f.DrillingAheadRate, penetrationRate, l.Ahead)
	}
	toolKeys(c, join(path, "recovery"), f.Recovery)
	for tool := range coring.Tools {
		if given := ofTool(f.Recovery, tool); given != nil {
			l.Recovery[tool] = c.quantity(join(path, "recovery."+tool.Key()), given, recoveryMeasure, l.Recovery[tool])
		}
	}
	return l
}

// named finds a lithology by its name.
func named(all []ground.Lithology, name string) (ground.Lithology, bool) {
	for _, l := range all {
		if l.Name == name {
			return l, true
		}
	}
	return ground.Lithology{}, false
}

func names(all []ground.Lithology) (list []string) {
	for _, l := range all {
		list = append(list, l.Name)
	}
	return list
}
