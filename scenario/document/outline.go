// Package document reads the text of a scenario, in YAML, TOML or JSON: every value as it was typed, with its line, and
// with settings of the command line over it. What the values mean is no matter of this package.
package document

import (
	"fmt"
	"strings"

	"coredays/scenario/fault"
)

// Outline is where things stand in a file, and what is wrong with its form alone: viper says no
// lines and overlooks keys that stand twice in another case, or are empty.
type Outline struct {
	File   string
	lines  map[string]int    // by path; empty for formats without lines
	set    map[string]string // by path: the setting from which its value came, not from the file
	Faults fault.List

	tooDeepSaid bool
}

// NewOutline is the outline of a file of which nothing is known yet.
func NewOutline(file string) *Outline {
	return &Outline{File: file, lines: map[string]int{}, set: map[string]string{}}
}

// Fault notes what is wrong at a path.
func (o *Outline) Fault(path, value, wanted string) {
	file, line := o.where(path)
	o.Faults = append(o.Faults, fault.Fault{File: file, Line: line, Path: path, Value: value, Wanted: wanted})
}

// where is the file and line of a path, or of the nearest thing around it that has one.
func (o *Outline) where(path string) (file string, line int) {
	for p := path; p != ""; p = parent(p) {
		if setting, is := o.set[p]; is {
			return setting, 0
		}
		if line, found := o.lines[p]; found {
			return o.File, line
		}
	}
	if len(o.lines) > 0 {
		return o.File, 1
	}
	return o.File, 0
}

// Source names the place of a value for those who ask where it came from.
func (o *Outline) Source(path string) string {
	file, line := o.where(path)
	if isSetting(file) {
		file = settingFlag // its path says the rest
	}
	if line == 0 {
		return fmt.Sprintf("%s: %s", file, path)
	}
	return fmt.Sprintf("%s:%d", file, line)
}

// Places says where all that is stated in a tree stands, by its path.
func (o *Outline) Places(tree any, path string, all map[string]string) map[string]string {
	switch t := tree.(type) {
	case map[string]any:
		for key, value := range t {
			o.Places(value, Join(path, key), all)
		}
	case []any:
		for i, value := range t {
			o.Places(value, At(path, i), all)
		}
	}
	if path != "" {
		all[path] = o.Source(path)
	}
	return all
}

// Join is the path of a key. Keys are lower case to viper, so they are here.
func Join(path, key string) string {
	if path == "" {
		return strings.ToLower(key)
	}
	return path + "." + strings.ToLower(key)
}

// At is the path of an element of a list.
func At(path string, i int) string { return fmt.Sprintf("%s[%d]", path, i) }

// parent is the path around a path.
func parent(path string) string {
	return path[:max(strings.LastIndexAny(path, ".["), 0)]
}

// Within reports whether a path is another or inside it.
func Within(path, outer string) bool {
	rest, found := strings.CutPrefix(path, outer)
	return found && (rest == "" || outer == "" || rest[0] == '.' || rest[0] == '[')
}

// deepest is more levels of keys and lists than a scenario has.
const deepest = 40

// tooDeep notes a value inside too many others, or inside itself.
func (o *Outline) tooDeep(path string) bool {
	deep := strings.Count(path, ".")+strings.Count(path, "[") > deepest
	if deep && !o.tooDeepSaid {
		o.tooDeepSaid = true
		o.Faults = append(o.Faults, fault.Fault{File: o.File, Wanted: fmt.Sprintf("values inside at most %d others", deepest)})
	}
	return deep
}

const (
	WantedOnce  = "one value only; this key stands twice"
	WantedValue = "a value, or leave the key out"
)
