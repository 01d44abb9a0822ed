package edit

import (
	"bytes"
	"unicode/utf8"

	"go.yaml.in/yaml/v3"
)

// lineStarts says where each line of a text begins.
func lineStarts(text []byte) []int {
	starts := []int{0}
	for i, b := range text {
		if b == '\n' {
			starts = append(starts, i+1)
		}
	}
	return starts
}

// span is where a node stands in the text, from its first byte to behind its last. The parser says
// where nodes begin, in letters; where they end is found from what they hold.
func (e editor) span(n *yaml.Node) (from, to int, err error) {
	if n.Anchor != "" || n.Kind == yaml.AliasNode || n.Style&yaml.TaggedStyle != 0 || n.Line < 1 || n.Line > len(e.lines) {
		return 0, 0, errByHand
	}
	from = e.lines[n.Line-1]
	for range n.Column - 1 {
		_, size := utf8.DecodeRune(e.text[from:])
		from += size
	}
	if n.Kind == yaml.ScalarNode {
		to, err = e.scalarEnd(n, from)
		return from, to, err
	}
	to = from + 1 // behind an opening bracket
	if len(n.Content) > 0 {
		if _, to, err = e.span(n.Content[len(n.Content)-1]); err != nil {
			return 0, 0, err
		}
	}
	if n.Style&yaml.FlowStyle == 0 {
		return from, to, nil
	}
	closing := byte(']')
	if n.Kind == yaml.MappingNode {
		closing = '}'
	}
	for to < len(e.text) && e.text[to] != closing {
		if e.text[to] == '#' { // a comment may hold a bracket
			to += max(bytes.IndexByte(e.text[to:], '\n'), 0)
		}
		to++
	}
	if to >= len(e.text) {
		return 0, 0, errByHand
	}
	return from, to + 1, nil
}

// scalarEnd is where a value on one line ends.
func (e editor) scalarEnd(n *yaml.Node, from int) (int, error) {
	rest := e.text[from:]
	switch {
	case n.Style&yaml.DoubleQuotedStyle != 0:
		for i := 1; i < len(rest) && rest[i] != '\n'; i++ {
			if rest[i] == '\\' {
				i++
			} else if rest[i] == '"' {
				return from + i + 1, nil
			}
		}
	case n.Style&yaml.SingleQuotedStyle != 0:
		for i := 1; i < len(rest) && rest[i] != '\n'; i++ {
			if rest[i] != '\'' {
				continue
			}
			if i+1 < len(rest) && rest[i+1] == '\'' {
				i++
				continue
			}
			return from + i + 1, nil
		}
	case n.Style == 0 && n.Value != "" && bytes.HasPrefix(rest, []byte(n.Value)):
		return from + len(n.Value), nil
	}
	return 0, errByHand
}
