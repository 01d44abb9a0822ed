package document

import (
	"bytes"
	"errors"
	"path/filepath"
	"strings"

	"github.com/spf13/viper"

	"coredays/model/plaintext"
	"coredays/scenario/fault"
)

// mostBytes is far more than any scenario needs.
const mostBytes = 4 << 20

// Load reads a file in the format that its name says. The outline has faults where there is
// nothing to go on with.
func Load(name string, data []byte) (*viper.Viper, *Outline) {
	v := viper.NewWithOptions(viper.KeyDelimiter("::")) // names may contain dots
	data, o := readable(name, data)
	if len(o.Faults) > 0 {
		return v, o
	}
	format, o := Outlined(name, data)
	if len(o.Faults) > 0 && !o.OnlyEmpty() {
		return v, o
	}
	v.SetConfigType(format)
	if err := v.ReadConfig(bytes.NewReader(data)); err != nil {
		o.Fault("", "", "keys with their values; "+err.Error())
	}
	return v, o
}

// readable is the text in a file, or an outline with the fault that there is none.
func readable(name string, data []byte) ([]byte, *Outline) {
	o := NewOutline(name)
	if len(data) > mostBytes {
		o.Fault("", "", "a file of at most 4 MiB")
		return nil, o
	}
	text, err := plaintext.Of(data)
	if err != nil {
		o.Faults = append(o.Faults, NotText(name, err))
	}
	return text, o
}

// NotText is the fault of a file that holds something else.
func NotText(name string, err error) fault.Fault {
	f := fault.Fault{File: name, Wanted: err.Error()}
	if odd, is := errors.AsType[*plaintext.Odd](err); is {
		f.Line = odd.Line
	}
	return f
}

// Outlined chooses the format and reads the outline.
func Outlined(name string, data []byte) (string, *Outline) {
	switch extension := strings.ToLower(filepath.Ext(name)); extension {
	case ".yaml", ".yml":
		return "yaml", yamlOutline(name, data)
	case ".toml":
		return "toml", tomlOutline(name, data)
	case ".json":
		return "json", jsonOutline(name, data)
	}
	o := NewOutline(name)
	o.Fault("", "", "a name that ends in .yaml, .yml, .toml or .json")
	return "", o
}

// OnlyEmpty reports whether the faults so far are values left empty, which keep nothing from being read.
func (o *Outline) OnlyEmpty() bool {
	for _, f := range o.Faults {
		if f.Wanted != WantedValue {
			return false
		}
	}
	return true
}
