package words

import (
	"strings"
	"unicode"

	"coredays/model/plaintext"
)

// Shown gives for a control character the sign of what can't be shown, U+FFFD; line feeds and tabs stay. What is
// written passes through here last, whatever came in by names and texts of a file: a terminal or a browser
// gets no commands.
func Shown(r rune) rune {
	if unicode.IsControl(r) && r != '\n' && r != '\t' {
		return unicode.ReplacementChar
	}
	return r
}

// CellText is a text as it stands in a cell of a CSV file or a workbook: no spreadsheet runs it.
func CellText(text string) string { return strings.Map(Shown, plaintext.Guarded(text)) }

// AboutTexts is what the dictionary gives all texts in cells.
const AboutTexts = "a text that begins with =, +, - or @ has an apostrophe before it, since spreadsheets would run it; numbers have none; a control character shows as U+FFFD"
