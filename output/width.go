package output

import (
	"strings"
	"unicode"

	"github.com/olekukonko/tablewriter/pkg/twwidth"
)

// displayed is the width of a text in columns of a terminal without East Asian habits, whatever
// the one at hand has: the same summary must print the same bytes. Tables measure likewise, rune by rune.
func displayed(text string) int { return twwidth.WidthWithOptions(text, twwidth.Options{}) }

// printable replaces what would move the cursor, or more, by blanks: names come from files.
func printable(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsPrint(r) {
			return r
		}
		return ' '
	}, text)
}

// wrap breaks text at blanks into lines no wider than width, and words only where they are
// wider than that themselves.
func wrap(text string, width int) []string {
	lines := []string{""}
	for _, word := range strings.Fields(printable(text)) {
		last := &lines[len(lines)-1]
		switch {
		case *last == "":
			*last = word
		case displayed(*last)+1+displayed(word) <= width:
			*last += " " + word
		default:
			lines = append(lines, word)
		}
		lines = append(lines[:len(lines)-1], pieces(lines[len(lines)-1], width)...)
	}
	return lines
}

// pieces cuts a word that is wider than a line.
func pieces(word string, width int) []string {
	var done []string
	piece, used := "", 0
	for _, r := range word {
		wide := displayed(string(r))
		if piece != "" && used+wide > width {
			done, piece, used = append(done, piece), "", 0
		}
		piece, used = piece+string(r), used+wide
	}
	return append(done, piece)
}
