package fault

import (
	"fmt"
	"slices"
	"strings"

	"github.com/agext/levenshtein"
)

// alike is how similar a name must be to be suggested: 1 is the same, 0 has nothing in common.
const alike = 0.6

// longest is the length of names beyond which none is suggested, in letters: nobody has names of a page's length.
const longest = 80

// Suggest says that there is no such thing and names the nearest that there is. meant is that
// name, empty where none is near.
func Suggest(name string, known []string, thing string) (wanted, meant string) {
	if now := renamed(name); now != "" && slices.Contains(known, now) {
		return fmt.Sprintf("there is no such %s; it is %q now", thing, now), now
	}
	best := 0.0
	for _, k := range known {
		if len(name) > longest {
			break // nobody's slip of a letter
		}
		near := levenshtein.Match(strings.ToLower(name), strings.ToLower(k), nil)
		if near >= alike && near > best {
			best, meant = near, k
		}
	}
	switch {
	case meant != "":
		return fmt.Sprintf("there is no such %s; did you mean %q?", thing, meant), meant
	case len(known) == 0:
		return fmt.Sprintf("there is no such %s", thing), ""
	}
	return fmt.Sprintf("there is no such %s; wanted: %s", thing, Listed(known)), ""
}

// renamed is the present name of a key that had another once: a pace, above 100 % the slower, is a duration factor.
func renamed(name string) string {
	if tool, is := strings.CutSuffix(name, "_pace"); is {
		return tool + "_duration_factor"
	}
	return ""
}

// Listed joins names with commas and "or".
func Listed(names []string) string {
	last := len(names) - 1
	if last < 1 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:last], ", ") + " or " + names[last]
}
