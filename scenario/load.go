package scenario

import (
	"bytes"
	"errors"
	"path/filepath"
	"strings"

	"github.com/spf13/viper"

	"coredays/model/plaintext"
)

// mostBytes is far more than any scenario needs.
const mostBytes = 4 << 20

// load reads a file in the format that its name says. The outline has faults where there is
// nothing to go on with.
func load(name string, data []byte) (*viper.Viper, *outline) {
	v := viper.NewWithOptions(viper.KeyDelimiter("::")) // names may contain dots
	data, o := readable(name, data)
	if len(o.faults) > 0 {
		return v, o
	}
	format, o := outlined(name, data)
	if len(o.faults) > 0 && !o.onlyEmpty() {
		return v, o
	}
	v.SetConfigType(format)
	if err := v.ReadConfig(bytes.NewReader(data)); err != nil {
		o.fault("", "", "keys with their values; "+err.Error())
	}
	return v, o
}

// readable is the text in a file, or an outline with the fault that there is none.
func readable(name string, data []byte) ([]byte, *outline) {
	o := newOutline(name)
	if len(data) > mostBytes {
		o.fault("", "", "a file of at most 4 MiB")
		return nil, o
	}
	text, err := plaintext.Of(data)
	if err != nil {
		o.faults = append(o.faults, notText(name, err))
	}
	return text, o
}

// notText is the fault of a file that holds something else.
func notText(name string, err error) Fault {
	f := Fault{File: name, Wanted: err.Error()}
	if odd, is := errors.AsType[*plaintext.Odd](err); is {
		f.Line = odd.Line
	}
	return f
}

// outlined chooses the format and reads the outline.
func outlined(name string, data []byte) (string, *outline) {
	switch extension := strings.ToLower(filepath.Ext(name)); extension {
	case ".yaml", ".yml":
		return "yaml", yamlOutline(name, data)
	case ".toml":
		return "toml", tomlOutline(name, data)
	case ".json":
		return "json", jsonOutline(name, data)
	}
	o := newOutline(name)
	o.fault("", "", "a name that ends in .yaml, .yml, .toml or .json")
	return "", o
}

// onlyEmpty reports whether the faults so far are values left empty, which keep nothing from being read.
func (o *outline) onlyEmpty() bool {
	for _, f := range o.faults {
		if f.Wanted != wantedValue {
			return false
		}
	}
	return true
}
