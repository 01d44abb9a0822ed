package edit

import (
	"bytes"
	"errors"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"
)

// editor changes a text by the places of its nodes.
type editor struct {
	text  []byte
	lines []int // where each line begins
}

var errNotThere = errors.New("a path to something that is there")

// edit follows the steps down from a node and changes what it comes to.
func (e editor) edit(n *yaml.Node, steps []any, typed string) ([]byte, error) {
	i, stride := child(n, steps[0]), 1
	if n.Kind == yaml.MappingNode {
		stride = 2
	}
	if n.Anchor != "" || n.Kind == yaml.AliasNode {
		return nil, errByHand
	}
	switch last := len(steps) == 1; {
	case i < 0 && last && typed == "":
		return e.text, nil
	case i < 0 && last:
		return e.add(n, steps[0], typed)
	case i < 0:
		return nil, errNotThere
	case !last:
		return e.edit(n.Content[i], steps[1:], typed)
	case typed == "":
		return e.remove(n, i-stride+1, stride)
	}
	from, to, err := e.span(n.Content[i])
	if err != nil {
		return nil, err
	}
	return e.splice(from, to, typed), nil
}

// child is the place of the node that a step leads to among the contents, below 0 where there is none.
func child(n *yaml.Node, step any) int {
	switch step := step.(type) {
	case string:
		for i := 0; n.Kind == yaml.MappingNode && i+1 < len(n.Content); i += 2 {
			if strings.EqualFold(n.Content[i].Value, step) {
				return i + 1
			}
		}
	case int:
		if n.Kind == yaml.SequenceNode && step < len(n.Content) {
			return step
		}
	}
	return -1
}

func (e editor) splice(from, to int, with string) []byte {
	return slices.Concat(e.text[:from], []byte(with), e.text[to:])
}

// add puts a new key or element behind the last one.
func (e editor) add(n *yaml.Node, step any, typed string) ([]byte, error) {
	key, isKey := step.(string)
	if isKey != (n.Kind == yaml.MappingNode) || !isKey && (n.Kind != yaml.SequenceNode || step != len(n.Content)) || len(n.Content) == 0 {
		return nil, errNotThere
	}
	entry := typed
	if isKey {
		entry = key + ": " + typed
	}
	_, end, err := e.span(n.Content[len(n.Content)-1])
	if err != nil {
		return nil, err
	}
	if n.Style&yaml.FlowStyle != 0 {
		return e.splice(end, end, ", "+entry), nil
	}
	indent := strings.Repeat(" ", n.Column-1)
	if !isKey {
		indent += "- "
	}
	if rest := bytes.IndexByte(e.text[end:], '\n'); rest >= 0 {
		return e.splice(end+rest+1, end+rest+1, indent+entry+"\n"), nil
	}
	return e.splice(len(e.text), len(e.text), "\n"+indent+entry+"\n"), nil
}

// remove takes an entry out of a list or map, with its comma or its lines.
func (e editor) remove(n *yaml.Node, first, stride int) ([]byte, error) {
	if len(n.Content) == stride {
		return nil, errors.New("is the last entry of what it stands in: take that out instead")
	}
	from, _, err := e.span(n.Content[first])
	if err != nil {
		return nil, err
	}
	_, to, err := e.span(n.Content[first+stride-1])
	if err != nil {
		return nil, err
	}
	switch {
	case n.Style&yaml.FlowStyle != 0 && first > 0:
		_, from, err = e.span(n.Content[first-1])
	case n.Style&yaml.FlowStyle != 0:
		to, _, err = e.span(n.Content[stride])
	case first == 0 && stride == 2 && n.Column > 1: // it may share its line with the hyphen of a list
		to, _, err = e.span(n.Content[stride])
	default:
		from = e.lines[n.Content[first].Line-1]
		if rest := bytes.IndexByte(e.text[to:], '\n'); rest >= 0 {
			to += rest + 1
		} else {
			to = len(e.text)
		}
	}
	return e.splice(from, to, ""), err
}
