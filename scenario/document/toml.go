package document

import (
	"errors"
	"reflect"
	"slices"

	"coredays/scenario/fault"

	"github.com/pelletier/go-toml/v2"
)

// tomlOutline finds keys that differ in case only and what is empty. Keys that stand twice are
// errors to the parser already.
func tomlOutline(file string, data []byte) *Outline {
	o := NewOutline(file)
	all := map[string]any{}
	if err := toml.Unmarshal(data, &all); err != nil {
		o.tomlError(err)
		return o
	}
	if len(all) == 0 {
		o.Fault("", "", "an expedition; the file is empty")
	}
	o.tomlValue(reflect.ValueOf(all), "")
	return o
}

// tomlError notes an error of the parser at its line.
func (o *Outline) tomlError(err error) {
	fault := fault.Fault{File: o.File, Wanted: "well-formed TOML; " + err.Error()}
	var place *toml.DecodeError
	if errors.As(err, &place) {
		fault.Line, _ = place.Position()
	}
	o.Faults = append(o.Faults, fault)
}

func (o *Outline) tomlValue(v reflect.Value, path string) {
	if v.Kind() == reflect.Interface {
		v = v.Elem()
	}
	if o.tooDeep(path) {
		return
	}
	switch v.Kind() {
	case reflect.Slice:
		for i := range v.Len() {
			o.tomlValue(v.Index(i), At(path, i))
		}
	case reflect.Map:
		o.tomlTable(v, path)
	default:
		return
	}
	if v.Len() == 0 && path != "" {
		o.Fault(path, "", WantedValue)
	}
}

func (o *Outline) tomlTable(v reflect.Value, path string) {
	seen := map[string]bool{}
	keys := v.MapKeys()
	slices.SortFunc(keys, func(a, b reflect.Value) int {
		if a.String() < b.String() {
			return -1
		}
		return 1
	})
	for _, key := range keys {
		inner := Join(path, key.String())
		if seen[inner] {
			o.Fault(inner, "", WantedOnce)
		}
		seen[inner] = true
		o.tomlValue(v.MapIndex(key), inner)
	}
}
