package plaintext

import (
	"strconv"
	"strings"
	"unicode"
)

// Guarded is a text as it may stand in a cell of a table: spreadsheets take what begins with =, +, - or @
// for a formula and run it, so such a text gets an apostrophe before it, by which they know a text. Numbers
// stay as they are. (OWASP, "CSV Injection", names the signs and the cure [from memory].)
func Guarded(text string) string {
	if armed(strings.TrimLeft(text, "'")) {
		return "'" + text
	}
	return text
}

// Unguarded takes off the apostrophe that Guarded put there.
func Unguarded(cell string) string {
	if text, quoted := strings.CutPrefix(cell, "'"); quoted && armed(strings.TrimLeft(text, "'")) {
		return text
	}
	return cell
}

// starting are the signs that begin a formula, in their wide forms of East Asian typing too.
const starting = "=+-@＝＋－＠"

// armed reports whether a spreadsheet would take a text for a formula.
func armed(text string) bool {
	bare := strings.TrimLeftFunc(text, func(r rune) bool { return unicode.IsSpace(r) || unicode.IsControl(r) })
	return strings.IndexAny(bare, starting) == 0 && bare != "-" && !isNumber(text)
}

// isNumber describes a number written in figures.
func isNumber(text string) bool {
	_, err := strconv.ParseFloat(text, 64)
	return err == nil && strings.Trim(text, "0123456789.+-eE") == ""
}
