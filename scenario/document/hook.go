package document

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
	case reflect.TypeFor[Text]():
		return single(from)
	case reflect.TypeFor[Spread]():
		if from.Kind() != reflect.Map {
			value, err := single(from)
			return Spread{Value: value, Short: true}, err
		}
	case reflect.TypeFor[Levels]():
		if from.Kind() != reflect.Map {
			value, err := single(from)
			return Levels{Level: value}, err
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
func single(from reflect.Value) (Text, error) {
	if written, ok := from.Interface().(encoding.TextMarshaler); ok { // a date
		value, err := written.MarshalText()
		return Text{string(value), true, true}, err
	}
	switch {
	case from.Kind() == reflect.String:
		return Text{from.String(), true, false}, nil
	case from.Kind() == reflect.Bool:
		return Text{strconv.FormatBool(from.Bool()), true, true}, nil
	case from.CanInt():
		return Text{strconv.FormatInt(from.Int(), 10), true, true}, nil
	case from.CanUint():
		return Text{strconv.FormatUint(from.Uint(), 10), true, true}, nil
	case from.CanFloat():
		return Text{strconv.FormatFloat(from.Float(), 'g', -1, 64), true, true}, nil
	}
	return Text{}, errors.New("one value, neither a list nor keys")
}
