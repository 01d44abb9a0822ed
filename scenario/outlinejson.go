package scenario

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
)

// jsonOutline finds keys that stand twice, which the parser would let pass in silence.
func jsonOutline(file string, data []byte) *outline {
	o := newOutline(file)
	var all any
	if err := json.Unmarshal(data, &all); err != nil {
		o.jsonError(data, err)
		return o
	}
	walk := jsonWalk{o, json.NewDecoder(bytes.NewReader(data))}
	walk.value("")
	return o
}

// jsonError notes an error of the parser at its line.
func (o *outline) jsonError(data []byte, err error) {
	fault := Fault{File: o.file, Wanted: "well-formed JSON; " + err.Error()}
	var syntax *json.SyntaxError
	if errors.As(err, &syntax) {
		fault.Line = 1 + bytes.Count(data[:min(int(syntax.Offset), len(data))], []byte("\n"))
	}
	if len(bytes.TrimSpace(data)) == 0 {
		fault = Fault{File: o.file, Wanted: "an expedition; the file is empty"}
	}
	o.faults = append(o.faults, fault)
}

// jsonWalk goes through a text that is known to be well formed.
type jsonWalk struct {
	*outline
	*json.Decoder
}

func (w jsonWalk) value(path string) {
	if w.tooDeep(path) {
		var skipped any
		w.Decode(&skipped)
		return
	}
	token, err := w.Token()
	if err == io.EOF {
		return
	}
	inside := 0
	switch token {
	case json.Delim('{'):
		inside = w.object(path)
	case json.Delim('['):
		for ; w.More(); inside++ {
			w.value(at(path, inside))
		}
		w.Token()
	case nil:
	default:
		return
	}
	if inside == 0 && path != "" {
		w.fault(path, "", wantedValue)
	}
}

func (w jsonWalk) object(path string) int {
	seen := map[string]bool{}
	for w.More() {
		key, _ := w.Token()
		inner := join(path, fmt.Sprint(key))
		if seen[inner] {
			w.fault(inner, "", wantedOnce)
		}
		seen[inner] = true
		w.value(inner)
	}
	w.Token()
	return len(seen)
}
