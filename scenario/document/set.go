package document

import (
	"fmt"
	"strings"

	"coredays/scenario/fault"

	"github.com/spf13/viper"
	"go.yaml.in/yaml/v3"
)

// settingFlag gives a value in place of the file's.
const settingFlag = "--set"

// SettingName stands for a file in faults of values that were set.
func SettingName(setting string) string {
	return fmt.Sprintf("%s %q", settingFlag, fault.Brief(setting))
}

func isSetting(file string) bool { return strings.HasPrefix(file, settingFlag+" ") }

// WithSettings replaces values in what was loaded.
func WithSettings(v *viper.Viper, o *Outline, settings []string) *viper.Viper {
	if len(settings) == 0 {
		return v
	}
	tree := v.AllSettings()
	for _, s := range settings {
		from := set{Outline: o, from: SettingName(s)}
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
		o.Faults = append(o.Faults, fault.Fault{File: settingFlag, Wanted: err.Error()})
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
	*Outline
	from  string // the setting, as faults name it
	done  string // the path so far, with indices for names
	value any
}

func (s set) fault(path, wanted string) {
	s.Faults = append(s.Faults, fault.Fault{File: s.from, Path: path, Wanted: wanted})
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
		s.fault(Join(s.done, path), "a path to something that is there")
		return
	}
	s.done = Join(s.done, key)
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
		wanted, _ := fault.Suggest(which, known, "element")
		s.fault(s.done+path, wanted)
		return
	}
	s.done = At(s.done, i)
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
	kept := s.Faults[:0]
	for _, f := range s.Faults {
		if !Within(f.Path, s.done) || isSetting(f.File) {
			kept = append(kept, f)
		}
	}
	s.Faults = kept
	for path := range s.lines {
		if Within(path, s.done) {
			delete(s.lines, path)
		}
	}
}
