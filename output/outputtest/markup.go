package outputtest

import (
	"regexp"
	"strings"
)

// keptTogether is what a browser is told not to break.
var keptTogether = regexp.MustCompile(`<span class="w">([^<]*)</span>`)

// AsRead is the markup of a page with its blanks as people read them, whether a line may break there or not.
func AsRead(markup string) string {
	return keptTogether.ReplaceAllString(strings.ReplaceAll(markup, "\u00a0", " "), "$1")
}
