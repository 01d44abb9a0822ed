package output

import (
	"strings"
	"unicode"

	"coredays/model/plaintext"
)

// shown gives for a control character the sign of what can't be shown, U+FFFD; line feeds and tabs stay. What is
// written passes through here last, whatever came in by names and texts of a file: a terminal or a browser
// gets no commands.
func shown(r rune) rune {
	if unicode.IsControl(r) && r != '\n' && r != '\t' {
		return unicode.ReplacementChar
	}
	return r
}

// cellText is a text as it stands in a cell of a CSV file or a workbook: no spreadsheet runs it.
func cellText(text string) string { return strings.Map(shown, plaintext.Guarded(text)) }

// aboutTexts is what the dictionary tells of all texts in cells.
const aboutTexts = "a text that begins with =, +, - or @ has an apostrophe before it, since spreadsheets would run it; numbers have none; a control character shows as U+FFFD"
