package document

import (
	"errors"
	"reflect"
	"regexp"
	"strings"

	"coredays/scenario/fault"

	"github.com/spf13/viper"
)

// Decode fills a mirror of the file and notes keys that do not belong and values of the wrong
// form. What it noted is returned as paths about which nothing more need be said.
func Decode(v *viper.Viper, o *Outline, mirror any) (said []string) {
	for _, f := range o.Faults {
		if f.Path != "" {
			said = append(said, f.Path)
		}
	}
	err := v.UnmarshalExact(mirror, viper.DecodeHook(hook))
	for _, e := range leaves(err) {
		said = append(said, o.decodeFault(e, reflect.TypeOf(mirror))...)
	}
	return said
}

// placed is an error of the decoder that knows its place.
type placed interface {
	error
	Name() string
	Unwrap() error
}

// leaves takes joined errors apart down to the ones that know their place.
func leaves(err error) []placed {
	switch e := err.(type) {
	case nil:
		return nil
	case placed:
		return []placed{e}
	case interface{ Unwrap() []error }:
		var all []placed
		for _, inner := range e.Unwrap() {
			all = append(all, leaves(inner)...)
		}
		return all
	}
	return leaves(errors.Unwrap(err))
}

// unknownKeys is how the decoder begins to tell of keys that the mirror does not have.
const unknownKeys = "has invalid keys: "

func (o *Outline) decodeFault(e placed, mirror reflect.Type) (said []string) {
	path, what := dotted(e.Name()), e.Unwrap().Error()
	unknown, found := strings.CutPrefix(what, unknownKeys)
	if !found {
		o.Fault(path, "", what)
		return []string{path}
	}
	known := keysAt(mirror, path)
	for key := range strings.SplitSeq(unknown, ", ") {
		wanted, meant := fault.Suggest(key, known, "key")
		o.Fault(Join(path, key), "", wanted)
		if meant != "" {
			said = append(said, Join(path, meant))
		}
	}
	return said
}

// keyed are the decoder's keys of a map, such as the "rates[tripping]" of rates.tripping.
var keyed = regexp.MustCompile(`\b(rates|recovery)\[([^\]]*)\]`)

// dotted writes the decoder's path as files and people do.
func dotted(path string) string { return keyed.ReplaceAllString(path, "$1.$2") }

// keysAt lists the keys that a mirror has at a path, none where the path leads nowhere.
func keysAt(t reflect.Type, path string) []string {
	for path != "" && t != nil {
		switch t.Kind() {
		case reflect.Pointer:
			t = t.Elem()
		case reflect.Slice:
			t, path = t.Elem(), strings.TrimPrefix(path[strings.Index(path, "]")+1:], ".")
		case reflect.Map:
			_, path, _ = strings.Cut(path, ".")
			t = t.Elem()
		case reflect.Struct:
			key := path[:strings.IndexAny(path+".", ".[")]
			t, path = field(t, key), strings.TrimPrefix(path[len(key):], ".")
		default:
			return nil
		}
	}
	return Keys(t)
}

// field is the type of the field with a key, nil where there is none.
func field(t reflect.Type, key string) reflect.Type {
	for f := range t.Fields() {
		if f.Tag.Get("mapstructure") == key {
			return f.Type
		}
	}
	return nil
}

// Keys lists the keys of a struct or of what holds structs.
func Keys(t reflect.Type) (all []string) {
	for t != nil && (t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice) {
		t = t.Elem()
	}
	if t == nil || t.Kind() != reflect.Struct {
		return nil
	}
	for f := range t.Fields() {
		if key := f.Tag.Get("mapstructure"); key != "" {
			all = append(all, key)
		}
	}
	return all
}
