package scenario

import (
	"fmt"
	"slices"
)

// blame names the settings from which faults come that show on lines of the file: what is no fault of the
// file alone is one of the setting with which it first is recovered, in the order of the command line.
func blame(o *outline, data []byte, settings []string) {
	if len(settings) == 0 || !slices.ContainsFunc(o.faults, func(f Fault) bool { return f.File == o.file }) {
		return
	}
	name := o.file
	since := map[Fault]int{} // how many settings there were when a fault first was recovered
	for n := range settings {
		for _, f := range faultsWith(name, data, settings[:n]) {
			if _, known := since[bare(f)]; !known {
				since[bare(f)] = n
			}
		}
	}
	for i, f := range o.faults {
		n, known := since[bare(f)]
		if !known {
			n = len(settings)
		}
		if f.File == name && n > 0 {
			o.faults[i] = dueTo(f, settings[n-1])
		}
	}
}

// faultsWith are the faults of a file with some settings.
func faultsWith(name string, data []byte, settings []string) Faults {
	v, o := load(name, data)
	read(withSettings(v, o, settings), o)
	return o.faults
}

// bare is a fault without its place.
func bare(f Fault) Fault { return Fault{Path: f.Path, Value: f.Value, Wanted: f.Wanted} }

// dueTo is a fault that comes from a setting and shows on a line of the file; line 1 is that of what the
// file does not state at all.
func dueTo(f Fault, setting string) Fault {
	if f.Line > 1 {
		f.Wanted += fmt.Sprintf(" (see %s:%d)", f.File, f.Line)
	}
	f.File, f.Line = settingName(setting), 0
	return f
}
