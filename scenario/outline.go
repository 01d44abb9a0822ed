package scenario

import (
	"fmt"
	"strings"
)

// outline is where things stand in a file, and what is wrong with its form alone: viper says no
// lines and overlooks keys that stand twice in another case, or are empty.
type outline struct {
	file   string
	lines  map[string]int    // by path; empty for formats without lines
	set    map[string]string // by path: the setting from which its value came, not from the file
	faults Faults

	tooDeepSaid bool
}

func newOutline(file string) *outline {
	return &outline{file: file, lines: map[string]int{}, set: map[string]string{}}
}

// fault notes what is wrong at a path.
func (o *outline) fault(path, value, wanted string) {
	file, line := o.where(path)
	o.faults = append(o.faults, Fault{File: file, Line: line, Path: path, Value: value, Wanted: wanted})
}

// where is the file and line of a path, or of the nearest thing around it that has one.
func (o *outline) where(path string) (file string, line int) {
	for p := path; p != ""; p = parent(p) {
		if setting, is := o.set[p]; is {
			return setting, 0
		}
		if line, found := o.lines[p]; found {
			return o.file, line
		}
	}
	if len(o.lines) > 0 {
		return o.file, 1
	}
	return o.file, 0
}

// source names the place of a value for those who ask where it came from.
func (o *outline) source(path string) string {
	file, line := o.where(path)
	if isSetting(file) {
		file = settingFlag // its path says the rest
	}
	if line == 0 {
		return fmt.Sprintf("%s: %s", file, path)
	}
	return fmt.Sprintf("%s:%d", file, line)
}

// places says where all that is stated in a tree stands, by its path.
func (o *outline) places(tree any, path string, all map[string]string) map[string]string {
	switch t := tree.(type) {
	case map[string]any:
		for key, value := range t {
			o.places(value, join(path, key), all)
		}
	case []any:
		for i, value := range t {
			o.places(value, at(path, i), all)
		}
	}
	if path != "" {
		all[path] = o.source(path)
	}
	return all
}

// join is the path of a key. Keys are lower case to viper, so they are here.
func join(path, key string) string {
	if path == "" {
		return strings.ToLower(key)
	}
	return path + "." + strings.ToLower(key)
}

// at is the path of an element of a list.
func at(path string, i int) string { return fmt.Sprintf("%s[%d]", path, i) }

// parent is the path around a path.
func parent(path string) string {
	return path[:max(strings.LastIndexAny(path, ".["), 0)]
}

// within reports whether a path is another or inside it.
func within(path, outer string) bool {
	rest, found := strings.CutPrefix(path, outer)
	return found && (rest == "" || outer == "" || rest[0] == '.' || rest[0] == '[')
}

// deepest is more levels of keys and lists than a scenario has.
const deepest = 40

// tooDeep notes a value inside too many others, or inside itself.
func (o *outline) tooDeep(path string) bool {
	deep := strings.Count(path, ".")+strings.Count(path, "[") > deepest
	if deep && !o.tooDeepSaid {
		o.tooDeepSaid = true
		o.faults = append(o.faults, Fault{File: o.file, Wanted: fmt.Sprintf("values inside at most %d others", deepest)})
	}
	return deep
}

const (
	wantedOnce  = "one value only; this key stands twice"
	wantedValue = "a value, or leave the key out"
)
