// Package fault says what is wrong with a file of a user, where, and what is wanted there.
package fault

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
)

// Fault is one thing that is wrong with a file: where, what stands there, and what is wanted.
type Fault struct {
	File   string
	Line   int    // 0 where the format has none, or the value did not come from the file
	Path   string // such as "sites[0].water_depth", counted from 0
	Value  string // as written, empty where nothing is
	Wanted string
	// Infeasible: the file is in order, but what it asks for can't be done. The plan still says what was asked.
	Infeasible bool
}

// Error is the fault on one line: file:line: path: "value": what is wanted.
func (f Fault) Error() string {
	parts := []string{f.File}
	if f.Line > 0 {
		parts[0] = fmt.Sprintf("%s:%d", f.File, f.Line)
	}
	if f.Path != "" {
		parts = append(parts, Brief(f.Path))
	}
	if f.Value != "" {
		parts = append(parts, fmt.Sprintf("%q", Brief(f.Value)))
	}
	return printable(strings.Join(append(parts, f.Wanted), ": "))
}

// Brief is the beginning of a long value: enough to find it again.
func Brief(value string) string {
	const letters = 80
	runes := []rune(value)
	if len(runes) <= letters {
		return value
	}
	return string(runes[:letters]) + "…"
}

// printable writes letters that steer a terminal as what they are called in Go.
func printable(line string) string {
	if _, place := Unprintable(line); place == 0 {
		return line
	}
	var safe strings.Builder
	for _, r := range line {
		if _, place := Unprintable(string(r)); place > 0 {
			safe.WriteString(strings.Trim(strconv.QuoteRuneToASCII(r), "'"))
			continue
		}
		safe.WriteRune(r)
	}
	return safe.String()
}

// List is all that is wrong, in the order of the lines.
type List []Fault

// mostTold is as many faults as anybody reads at once.
const mostTold = 100

// Error has a line for each fault, up to as many as are read.
func (f List) Error() string {
	lines := make([]string, min(len(f), mostTold))
	for i := range lines {
		lines[i] = f[i].Error()
	}
	if more := len(f) - len(lines); more > 0 {
		lines = append(lines, fmt.Sprintf("and %d more: mend these first", more))
	}
	return strings.Join(lines, "\n")
}

// Unwrap gives the single faults to errors.As.
func (f List) Unwrap() []error {
	errs := make([]error, len(f))
	for i, fault := range f {
		errs[i] = fault
	}
	return errs
}

// OrNil is the error of the faults, none where there are none.
func (f List) OrNil() error {
	if len(f) == 0 {
		return nil
	}
	slices.SortStableFunc(f, func(a, b Fault) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line))
	})
	return f
}

// Unprintable is the first letter that steers a terminal, a table or the direction of writing rather than
// being printed, and its place from 1; place 0 where there is none. The two joiners that some scripts
// need within words are none.
func Unprintable(s string) (letter rune, place int) {
	const nonJoiner, joiner = '\u200c', '\u200d'
	for _, r := range s {
		place++
		if r != nonJoiner && r != joiner && unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp) {
			return r, place
		}
	}
	return 0, 0
}
