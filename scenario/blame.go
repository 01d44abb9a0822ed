package scenario

import (
	"fmt"
	"slices"

	"coredays/scenario/document"
	"coredays/scenario/fault"
)

// blame names the settings from which faults come that show on lines of the file: what is no fault of the
// file alone is one of the setting with which it first comes up, in the order of the command line.
func blame(o *document.Outline, data []byte, settings []string) {
	if len(settings) == 0 || !slices.ContainsFunc(o.Faults, func(f fault.Fault) bool { return f.File == o.File }) {
		return
	}
	name := o.File
	since := map[fault.Fault]int{} // how many settings there were when a fault first came up
	for n := range settings {
		for _, f := range faultsWith(name, data, settings[:n]) {
			if _, known := since[bare(f)]; !known {
				since[bare(f)] = n
			}
		}
	}
	for i, f := range o.Faults {
		n, known := since[bare(f)]
		if !known {
			n = len(settings)
		}
		if f.File == name && n > 0 {
			o.Faults[i] = dueTo(f, settings[n-1])
		}
	}
}

// faultsWith are the faults of a file with some settings.
func faultsWith(name string, data []byte, settings []string) fault.List {
	v, o := document.Load(name, data)
	read(document.WithSettings(v, o, settings), o)
	return o.Faults
}

// bare is a fault without its place.
func bare(f fault.Fault) fault.Fault {
	return fault.Fault{Path: f.Path, Value: f.Value, Wanted: f.Wanted}
}

// dueTo is a fault that comes from a setting and shows on a line of the file; line 1 is that of what the
// file does not state at all.
func dueTo(f fault.Fault, setting string) fault.Fault {
	if f.Line > 1 {
		f.Wanted += fmt.Sprintf(" (see %s:%d)", f.File, f.Line)
	}
	f.File, f.Line = document.SettingName(setting), 0
	return f
}
