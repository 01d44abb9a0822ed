package document

import (
	"bytes"
	"encoding/json"
	"errors"
	"regexp"

	"coredays/scenario/fault"
)

// jsonOutline reads the lines of a JSON file as those of the YAML that it is too, once it is well-formed JSON.
func jsonOutline(file string, data []byte) *Outline {
	var all any
	if err := json.Unmarshal(data, &all); err != nil {
		o := NewOutline(file)
		o.jsonError(data, err)
		return o
	}
	data = lateColon.ReplaceAll(data, []byte(`":$1`))
	return yamlOutline(file, escapes.ReplaceAllFunc(data, escapeInYAML))
}

// lateColon stands on a line below its key, where YAML has none. No text of JSON goes over an end of line.
var lateColon = regexp.MustCompile(`"(\s*\n\s*):`)

// escapes of JSON, where a character beyond 16 bits has two.
var escapes = regexp.MustCompile(`\\(?:u[0-9a-fA-F]{4}|.)`)

var halfCharacter = regexp.MustCompile(`\\u[dD][89a-fA-F]`)

// escapeInYAML replaces the escapes that YAML has not: of texts an outline takes nothing but keys.
func escapeInYAML(escape []byte) []byte {
	switch {
	case string(escape) == `\/`:
		return []byte("/")
	case halfCharacter.Match(escape):
		return []byte(`\uFFFD`)
	}
	return escape
}

// jsonError notes an error of the parser at its line.
func (o *Outline) jsonError(data []byte, err error) {
	f := fault.Fault{File: o.File, Wanted: "well-formed JSON; " + err.Error()}
	var syntax *json.SyntaxError
	if errors.As(err, &syntax) {
		f.Line = 1 + bytes.Count(data[:min(int(syntax.Offset), len(data))], []byte("\n"))
	}
	if len(bytes.TrimSpace(data)) == 0 {
		f = fault.Fault{File: o.File, Wanted: "an expedition; the file is empty"}
	}
	o.Faults = append(o.Faults, f)
}
