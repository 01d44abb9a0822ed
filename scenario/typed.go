package scenario

import "go.yaml.in/yaml/v3"

// Typed is what a YAML scenario states, key by key as typed: maps, lists, and every value as text.
// It is nil where the text is no YAML; the faults of Read tell why.
func Typed(data []byte) any {
	if _, o := outlined("plan.yaml", data); len(o.faults) > 0 && !o.onlyEmpty() {
		return nil // among others, what would grow without end
	}
	var document yaml.Node
	if err := yaml.Unmarshal(data, &document); err != nil || len(document.Content) != 1 {
		return nil
	}
	return typed(document.Content[0])
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
		keys := map[string]any{}
		for i := 0; i+1 < len(n.Content); i += 2 {
			keys[n.Content[i].Value] = typed(n.Content[i+1])
		}
		return keys
	}
	return n.Value
}
