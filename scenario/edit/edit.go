// Package edit changes a value in the text of a YAML scenario and leaves every other byte as it is.
package edit

import (
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"coredays/scenario/document"
	"coredays/scenario/fault"

	"go.yaml.in/yaml/v3"
)

// errByHand is the answer where a value is written in a way that can't be changed without touching
// what stands around it.
var errByHand = errors.New("is written in a way that only the text itself can be changed: a value over several lines, an anchor, an alias or a tag")

// Set changes one value in the text of a YAML scenario and leaves every other byte as it is:
// comments, order of keys, blanks. The path is such as "sites[0].water_depth", counted from 0. The
// value is as it would be typed in the file; lists and maps in brackets. An empty one takes the key
// out. A key that is not there is added after the last of those around it. The text that comes out
// is read again, and where it does not say exactly what was asked, nothing is changed.
func Set(data []byte, path, value string) ([]byte, error) {
	var root yaml.Node
	if _, o := document.Outlined("plan.yaml", data); len(o.Faults) > 0 && !o.OnlyEmpty() {
		return nil, o.Faults.OrNil()
	}
	if err := yaml.Unmarshal(data, &root); err != nil || len(root.Content) != 1 {
		return nil, fmt.Errorf("%s: no YAML to change", path)
	}
	steps, err := stepsOf(path)
	if err != nil {
		return nil, err
	}
	typed := asTyped(strings.TrimSpace(value))
	e := editor{text: data, lines: lineStarts(data)}
	changed, err := e.edit(root.Content[0], steps, typed)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	if !saysWhatWasAsked(data, changed, steps, typed) {
		return nil, fmt.Errorf("%s: %w", path, errByHand)
	}
	return changed, nil
}

// stepsOf are the keys and places of a path.
func stepsOf(path string) (steps []any, err error) {
	for _, part := range strings.Split(path, ".") {
		key, places, _ := strings.Cut(part, "[")
		if key == "" {
			return nil, fmt.Errorf("%q: a path such as sites[0].water_depth is wanted", fault.Brief(path))
		}
		steps = append(steps, key)
		for _, place := range strings.Split(places, "[") {
			if place == "" {
				continue
			}
			n, err := strconv.Atoi(strings.TrimSuffix(place, "]"))
			if err != nil || n < 0 || !strings.HasSuffix(place, "]") {
				return nil, fmt.Errorf("%q: a path such as sites[0].water_depth is wanted", fault.Brief(path))
			}
			steps = append(steps, n)
		}
	}
	return steps, nil
}

// asTyped is a value as it stands in a file: quoted where YAML would take it for something else.
func asTyped(value string) string {
	if value == "" || value[0] == '[' || value[0] == '{' {
		return value
	}
	var list []any
	if err := yaml.Unmarshal([]byte("["+value+"]"), &list); err == nil && len(list) == 1 && !strings.ContainsAny(value, "\r\n") {
		if _, tree := list[0].(map[string]any); !tree && list[0] != nil {
			var node yaml.Node
			if err := yaml.Unmarshal([]byte(value), &node); err == nil && len(node.Content) == 1 && node.Content[0].Value == value && node.Content[0].Anchor == "" && node.Content[0].Kind == yaml.ScalarNode {
				return value
			}
		}
	}
	return strconv.Quote(value)
}

// saysWhatWasAsked holds what the new text says against what the old one says with the value put in.
func saysWhatWasAsked(before, after []byte, steps []any, typed string) bool {
	var was, is, value any
	if yaml.Unmarshal(before, &was) != nil || yaml.Unmarshal(after, &is) != nil || yaml.Unmarshal([]byte(typed), &value) != nil {
		return false
	}
	return reflect.DeepEqual(is, putIn(was, steps, value))
}

// putIn puts a value into a tree, or takes it out where it is nil.
func putIn(tree any, steps []any, value any) any {
	if len(steps) == 0 {
		return value
	}
	switch step := steps[0].(type) {
	case string:
		keys, _ := tree.(map[string]any)
		if keys == nil {
			return tree
		}
		for key := range keys {
			if strings.EqualFold(key, step) {
				step = key
			}
		}
		if len(steps) == 1 && value == nil {
			delete(keys, step)
			return keys
		}
		keys[step] = putIn(keys[step], steps[1:], value)
	case int:
		list, _ := tree.([]any)
		if step < len(list) {
			if len(steps) == 1 && value == nil {
				return slices.Delete(list, step, step+1)
			}
			list[step] = putIn(list[step], steps[1:], value)
		} else if step == len(list) && len(steps) == 1 {
			return append(list, value)
		}
		return list
	}
	return tree
}
