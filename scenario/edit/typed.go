package edit

import (
	"bytes"
	"encoding/json"

	"coredays/scenario/document"

	"go.yaml.in/yaml/v3"
)

// TypedMap is the keys of a map with their values, in the order of the file.
type TypedMap []TypedPair

// TypedPair is a key and its value.
type TypedPair struct {
	Key   string
	Value any
}

// MarshalJSON writes an object with its keys in order.
func (m TypedMap) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	for i, pair := range m {
		b.WriteByte("{,"[min(i, 1)])
		for _, part := range []struct {
			value any
			then  string
		}{{pair.Key, ":"}, {pair.Value, ""}} {
			text, err := json.Marshal(part.value)
			if err != nil {
				return nil, err
			}
			b.Write(text)
			b.WriteString(part.then)
		}
	}
	if len(m) == 0 {
		b.WriteByte('{')
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// Typed is what a YAML scenario states, key by key as typed: TypedMap, []any, and every value as text.
// It is nil where the text is no YAML; the faults of Read tell why.
func Typed(data []byte) any {
	if _, o := document.Outlined("plan.yaml", data); len(o.Faults) > 0 && !o.OnlyEmpty() {
		return nil // among others, what would grow without end
	}
	var root yaml.Node
	if err := yaml.Unmarshal(data, &root); err != nil || len(root.Content) != 1 {
		return nil
	}
	return typed(root.Content[0])
}

func typed(n *yaml.Node) any {
	switch n.Kind {
	case yaml.AliasNode:
		return typed(n.Alias)
	case yaml.SequenceNode:
		list := make([]any, len(n.Content))
		for i, element := range n.Content {
			list[i] = typed(element)
		}
		return list
	case yaml.MappingNode:
		keys := TypedMap{}
		for i := 0; i+1 < len(n.Content); i += 2 {
			keys = append(keys, TypedPair{n.Content[i].Value, typed(n.Content[i+1])})
		}
		return keys
	}
	return n.Value
}
