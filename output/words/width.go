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

// Wrap breaks text at blanks into lines no wider than width, but between a number and its unit and within
// words only where these are wider than that themselves.
func Wrap(text string, width int) []string {
	lines := []string{""}
	for _, bound := range strings.FieldsFunc(Bound(Printable(text)), func(r rune) bool { return r == ' ' }) {
		together := []string{strings.ReplaceAll(bound, blankKept, " ")}
		if Displayed(together[0]) > width {
			together = strings.Split(bound, blankKept)
		}
		for _, word := range together {
			lines = append(lines[:len(lines)-1], appended(lines[len(lines)-1], word, width)...)
		}
	}
	return lines
}

// appended is a line with a word behind it, in as many lines as it takes.
func appended(line, word string, width int) []string {
	switch {
	case line == "":
		return Pieces(word, width)
	case Displayed(line)+1+Displayed(word) <= width:
		return []string{line + " " + word}
	}
	return append([]string{line}, Pieces(word, width)...)
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
