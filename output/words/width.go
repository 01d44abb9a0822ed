package words

import (
	"strings"
	"unicode"

	"github.com/olekukonko/tablewriter/pkg/twwidth"
)

// Displayed is the width of a text in columns of a terminal without East Asian habits, whatever
// the one at hand has: the same summary must print the same bytes. Tables measure likewise, rune by rune.
func Displayed(text string) int { return twwidth.WidthWithOptions(text, twwidth.Options{}) }

// Printable replaces what would move the cursor, or more, by blanks: names come from files.
func Printable(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsPrint(r) {
			return r
		}
		return ' '
	}, text)
}

// Wrap breaks text at blanks into lines no wider than width, and words only where they are
// wider than that themselves.
func Wrap(text string, width int) []string {
	lines := []string{""}
	for _, word := range strings.Fields(Printable(text)) {
		last := &lines[len(lines)-1]
		switch {
		case *last == "":
			*last = word
		case Displayed(*last)+1+Displayed(word) <= width:
			*last += " " + word
		default:
			lines = append(lines, word)
		}
		lines = append(lines[:len(lines)-1], Pieces(lines[len(lines)-1], width)...)
	}
	return lines
}

// Pieces cuts a word that is wider than a line, a key of several words behind one of them.
func Pieces(word string, width int) []string {
	var done []string
	piece, used := "", 0
	for _, r := range word {
		wide := Displayed(string(r))
		if piece != "" && used+wide > width {
			cut := len(piece)
			if i := strings.LastIndexAny(piece, "_/"); i > 0 {
				cut = i + 1
			}
			done, piece = append(done, piece[:cut]), piece[cut:]
			used = Displayed(piece)
		}
		piece, used = piece+string(r), used+wide
	}
	return append(done, piece)
}
