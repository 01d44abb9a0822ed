// Package lithology reads what the ground is made of, and has the lithologies that are built in.
package lithology

import (
	_ "embed"
	"maps"
	"slices"
	"sync"

	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/spread"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

//go:embed lithologies.yaml
var Text []byte

// BuiltIn are those that come with the program, and their faults: none, which a test holds.
var BuiltIn = sync.OnceValues(func() ([]ground.Lithology, fault.List) { return readList("lithologies.yaml", Text) })

type listFile struct {
	Version     document.Text `mapstructure:"version"`
	Lithologies []File        `mapstructure:"lithologies"`
}

// File mirrors a lithology, or what a layer says otherwise of one.
type File struct {
	Name              document.Text              `mapstructure:"name"`
	SideShear         *document.Spread           `mapstructure:"side_shear"`
	DrillingRate      *document.Spread           `mapstructure:"drilling_rate"`
	DrillingAheadRate *document.Spread           `mapstructure:"drilling_ahead_rate"`
	Sticking          *document.Spread           `mapstructure:"sticking"`
	BitWear           *document.Spread           `mapstructure:"bit_wear"`
	Recovery          map[string]document.Spread `mapstructure:"recovery"` // by the key of a coring.Tool
}

// readList reads the file of lithologies.
func readList(name string, data []byte) ([]ground.Lithology, fault.List) {
	c, f, readable := entry.Mirrored[listFile](name, data)
	if !readable {
		return nil, c.Faults
	}
	c.Version(f.Version)
	var all []ground.Lithology
	for i, l := range f.Lithologies {
		all = append(all, Read(c, document.At("lithologies", i), l))
	}
	return all, c.Faults
}

// Read reads one lithology, which must be complete and sourced.
func Read(c *entry.Reader, path string, f File) ground.Lithology {
	l := ground.Lithology{Name: c.Name(document.Join(path, "name"), f.Name)}
	c.Sourced(document.Join(path, "side_shear"), f.SideShear)
	c.Sourced(document.Join(path, "drilling_rate"), f.DrillingRate)
	c.Sourced(document.Join(path, "drilling_ahead_rate"), f.DrillingAheadRate)
	l.Strength = c.Quantity(document.Join(path, "side_shear"), f.SideShear, entry.StrengthMeasure, spread.Quantity{})
	l.Rate = c.Quantity(document.Join(path, "drilling_rate"), f.DrillingRate, entry.PenetrationRate, spread.Quantity{})
	l.Ahead = c.Quantity(document.Join(path, "drilling_ahead_rate"), f.DrillingAheadRate, entry.PenetrationRate, spread.Quantity{})
	c.Sourced(document.Join(path, "sticking"), f.Sticking)
	l.Sticking = c.Quantity(document.Join(path, "sticking"), f.Sticking, entry.StickingMeasure, spread.Quantity{})
	c.Sourced(document.Join(path, "bit_wear"), f.BitWear)
	l.Wear = c.Quantity(document.Join(path, "bit_wear"), f.BitWear, entry.WearMeasure, spread.Quantity{})
	toolKeys(c, document.Join(path, "recovery"), f.Recovery)
	for tool := range coring.Tools {
		inner := document.Join(path, "recovery."+tool.Key())
		given := ofTool(f.Recovery, tool)
		c.Sourced(inner, given)
		l.Recovery[tool] = c.Quantity(inner, given, entry.RecoveryMeasure, spread.Quantity{})
	}
	return l
}

// ofTool is what is given for a tool, nil where nothing is.
func ofTool(given map[string]document.Spread, t coring.Tool) *document.Spread {
	if s, is := given[t.Key()]; is {
		return &s
	}
	return nil
}

// toolKeys refuses keys that are no tools.
func toolKeys(c *entry.Reader, path string, given map[string]document.Spread) {
	var known []string
	for tool := range coring.Tools {
		known = append(known, tool.Key())
	}
	for _, key := range slices.Sorted(maps.Keys(given)) {
		if !slices.Contains(known, key) {
			wanted, meant := fault.Suggest(key, known, "key")
			c.Outline.Fault(document.Join(path, key), "", wanted) // even where an empty value is said
			if meant != "" {
				c.Said = append(c.Said, document.Join(path, meant))
			}
		}
	}
}

// Altered is a lithology with what is stated otherwise.
func Altered(c *entry.Reader, path string, f File, l ground.Lithology) ground.Lithology {
	if f.SideShear != nil {
		l.Strength = c.Quantity(document.Join(path, "side_shear"), f.SideShear, entry.StrengthMeasure, l.Strength)
	}
	if f.DrillingRate != nil {
		l.Rate = c.Quantity(document.Join(path, "drilling_rate"), f.DrillingRate, entry.PenetrationRate, l.Rate)
	}
	if f.DrillingAheadRate != nil {
		l.Ahead = c.Quantity(document.Join(path, "drilling_ahead_rate"), f.DrillingAheadRate, entry.PenetrationRate, l.Ahead)
	}
	if f.Sticking != nil {
		l.Sticking = c.Quantity(document.Join(path, "sticking"), f.Sticking, entry.StickingMeasure, l.Sticking)
	}
	if f.BitWear != nil {
		l.Wear = c.Quantity(document.Join(path, "bit_wear"), f.BitWear, entry.WearMeasure, l.Wear)
	}
	toolKeys(c, document.Join(path, "recovery"), f.Recovery)
	for tool := range coring.Tools {
		if given := ofTool(f.Recovery, tool); given != nil {
			l.Recovery[tool] = c.Quantity(document.Join(path, "recovery."+tool.Key()), given, entry.RecoveryMeasure, l.Recovery[tool])
		}
	}
	return l
}

// Named finds a lithology by its name.
func Named(all []ground.Lithology, name string) (ground.Lithology, bool) {
	for _, l := range all {
		if l.Name == name {
			return l, true
		}
	}
	return ground.Lithology{}, false
}

// Names are those of lithologies.
func Names(all []ground.Lithology) (list []string) {
	for _, l := range all {
		list = append(list, l.Name)
	}
	return list
}
