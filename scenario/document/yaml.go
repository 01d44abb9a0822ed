package document

import (
	"errors"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"

	"coredays/scenario/fault"

	"go.yaml.in/yaml/v3"
)

// mostNodes keeps a few lines of aliases to aliases from growing without end.
const mostNodes = 200_000

// yamlOutline reads the lines of a YAML file. Nothing else is taken from this second parse.
func yamlOutline(file string, data []byte) *Outline {
	o := NewOutline(file)
	decoder := yaml.NewDecoder(strings.NewReader(string(data)))
	var root, more yaml.Node
	switch err := decoder.Decode(&root); {
	case errors.Is(err, io.EOF):
		o.Fault("", "", "an expedition; the file is empty")
	case err != nil:
		o.yamlError(err)
	default:
		walk := yamlWalk{Outline: o}
		walk.node(&root, "")
		if walk.nodes > mostNodes {
			o.Fault("", "", fmt.Sprintf("at most %d values, aliases counted each time", mostNodes))
		} else if err := decoder.Decode(&more); !errors.Is(err, io.EOF) {
			o.Fault("", "", "one document only; there is another after a line of three hyphens")
		}
	}
	return o
}

var yamlErrorForm = regexp.MustCompile(`^yaml: (?:line (\d+): )?(.*)`)

// yamlError notes an error of the parser at its line.
func (o *Outline) yamlError(err error) {
	line, what := 0, err.Error()
	if parts := yamlErrorForm.FindStringSubmatch(what); parts != nil {
		line, _ = strconv.Atoi(parts[1]) // 0 where there is none
		what = parts[2]
	}
	o.Faults = append(o.Faults, fault.Fault{File: o.File, Line: line, Wanted: "well-formed YAML; " + what})
}

type yamlWalk struct {
	*Outline
	nodes int
}

func (w *yamlWalk) node(n *yaml.Node, path string) {
	if w.nodes++; w.nodes > mostNodes || w.tooDeep(path) {
		return
	}
	switch n.Kind {
	case yaml.DocumentNode:
		w.node(n.Content[0], path)
	case yaml.AliasNode:
		w.node(n.Alias, path)
	case yaml.SequenceNode:
		for i, item := range n.Content {
			w.lines[At(path, i)] = item.Line
			w.node(item, At(path, i))
		}
	case yaml.MappingNode:
		w.mapping(n, path)
	}
	if path != "" && (n.Tag == "!!null" || n.Kind != yaml.ScalarNode && n.Kind != yaml.AliasNode && len(n.Content) == 0) {
		w.Fault(path, "", WantedValue)
	}
}

func (w *yamlWalk) mapping(n *yaml.Node, path string) {
	seen := map[string]bool{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		key, value := n.Content[i], n.Content[i+1]
		if key.Tag == "!!merge" {
			w.node(value, path)
			continue
		}
		inner := Join(path, key.Value)
		w.lines[inner] = key.Line
		if seen[inner] {
			w.Fault(inner, "", WantedOnce)
		}
		seen[inner] = true
		w.node(value, inner)
	}
}
