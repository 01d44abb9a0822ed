package scenario

import (
	"fmt"
	"strings"

	"github.com/spf13/viper"
	"go.yaml.in/yaml/v3"
)

// settingFlag gives a value in place of the file's.
const settingFlag = "--set"

// settingName stands for a file in faults of values that were set.
func settingName(setting string) string { return fmt.Sprintf("%s %q", settingFlag, brief(setting)) }

func isSetting(file string) bool { return strings.HasPrefix(file, settingFlag+" ") }

// withSettings replaces values in what was loaded.
func withSettings(v *viper.Viper, o *outline, settings []string) *viper.Viper {
	if len(settings) == 0 {
		return v
	}
	tree := v.AllSettings()
	for _, s := range settings {
		from := set{outline: o, from: settingName(s)}
		path, value, found := strings.Cut(s, "=")
		if !found || strings.TrimSpace(value) == "" {
			from.fault("", `a path and a value, such as "sites[0].cap=9 d"`)
			continue
		}
		from.value = settingValue(value)
		from.into(tree, strings.TrimSpace(path))
	}
	changed := viper.NewWithOptions(viper.KeyDelimiter("::"))
	if err := changed.MergeConfigMap(tree); err != nil {
		o.faults = append(o.faults, Fault{File: settingFlag, Wanted: err.Error()})
	}
	return changed
}

// settingValue reads a value as it would be read in a YAML file.
func settingValue(value string) any {
	var read any
	if err := yaml.Unmarshal([]byte(value), &read); err != nil || read == nil {
		return value
	}
	return read
}

// set is a setting on its way into the tree.
type set struct {
	*outline
	from  string // the setting, as faults name it
	done  string // the path so far, with indices for names
	value any
}

func (s set) fault(path, wanted string) {
	s.faults = append(s.faults, Fault{File: s.from, Path: path, Wanted: wanted})
}

// into goes one step along the path and puts the value where it ends.
func (s set) into(tree any, path string) {
	if strings.HasPrefix(path, "[") {
		s.intoList(tree, path)
		return
	}
	end := strings.IndexAny(path+".", ".[")
	key, rest := strings.ToLower(path[:end]), strings.TrimPrefix(path[end:], ".")
	keys, isMap := tree.(map[string]any)
	if !isMap || key == "" {
		s.fault(join(s.done, path), "a path to something that is there")
		return
	}
	s.done = join(s.done, key)
	if rest == "" {
		keys[key] = s.value
		s.mark()
		return
	}
	if keys[key] == nil && !strings.HasPrefix(rest, "[") {
		keys[key] = map[string]any{}
	}
	s.into(keys[key], rest)
}

// intoList goes into an element of a list, by its name or its place.
func (s set) intoList(tree any, path string) {
	which, rest, closed := strings.Cut(path[1:], "]")
	list, isList := tree.([]any)
	i, known := find(list, which)
	if !closed || !isList || i < 0 {
		wanted, _ := suggest(which, known, "element")
		s.fault(s.done+path, wanted)
		return
	}
	s.done = at(s.done, i)
	if rest == "" {
		list[i] = s.value
		s.mark()
		return
	}
	s.into(list[i], strings.TrimPrefix(rest, "."))
}

// mark remembers that the value at the path came from a setting. Faults of the old value are gone.
func (s set) mark() {
	s.set[s.done] = s.from
	kept := s.faults[:0]
	for _, f := range s.faults {
		if !within(f.Path, s.done) || isSetting(f.File) {
			kept = append(kept, f)
		}
	}
	s.faults = kept
	for path := range s.lines {
		if within(path, s.done) {
			delete(s.lines, path)
		}
	}
}
