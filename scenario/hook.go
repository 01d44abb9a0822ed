package scenario

import (
	"encoding"
	"errors"
	"reflect"
	"strconv"
)

// hook is the one decode hook. It keeps every value as it was written and converts nothing: no
// list is taken for a single value, no number for a text, nothing is cut off.
func hook(from, to reflect.Value) (any, error) {
	switch to.Type() {
	case reflect.TypeFor[text]():
		return single(from)
	case reflect.TypeFor[spreadFile]():
		if from.Kind() != reflect.Map {
			value, err := single(from)
			return spreadFile{Value: value, short: true}, err
		}
	case reflect.TypeFor[variesFile]():
		if from.Kind() != reflect.Map {
			value, err := single(from)
			return variesFile{level: value}, err
		}
	}
	return from.Interface(), matches(from.Kind(), to.Kind())
}

// matches refuses a single value where a list or keys belong, and the other way round.
func matches(from, to reflect.Kind) error {
	switch {
	case (to == reflect.Struct || to == reflect.Map) && from != reflect.Map:
		return errors.New("keys with their values, such as {key: value}")
	case to == reflect.Slice && from != reflect.Slice:
		return errors.New("a list, such as [one, two]")
	}
	return nil
}

// single is a value that is neither a list nor has keys.
func single(from reflect.Value) (text, error) {
	if written, ok := from.Interface().(encoding.TextMarshaler); ok { // a date
		value, err := written.MarshalText()
		return text{string(value), true, true}, err
	}
	switch {
	case from.Kind() == reflect.String:
		return text{from.String(), true, false}, nil
	case from.Kind() == reflect.Bool:
		return text{strconv.FormatBool(from.Bool()), true, true}, nil
	case from.CanInt():
		return text{strconv.FormatInt(from.Int(), 10), true, true}, nil
	case from.CanUint():
		return text{strconv.FormatUint(from.Uint(), 10), true, true}, nil
	case from.CanFloat():
		return text{strconv.FormatFloat(from.Float(), 'g', -1, 64), true, true}, nil
	}
	return text{}, errors.New("one value, neither a list nor keys")
}
