// Package plaintext knows what is met in files that people export: what is text and what is not, dates in forms
// that cannot be read, and cells that a spreadsheet would run.
package plaintext

import (
	"bytes"
	"fmt"
	"unicode/utf8"
)

// Odd is why a file is not read as text, and what to do about it.
type Odd struct {
	Line int // of the first thing that is wrong, 0 where it is the whole file
	What string
	Cure string
}

// Error says it without the line, which has its own place in a message.
func (o *Odd) Error() string {
	return fmt.Sprintf("text in UTF-8 is wanted, and this %s: %s", o.What, o.Cure)
}

const saveAsUTF8 = "save it as UTF-8"

// mark is the byte order mark that some programs put before UTF-8.
var mark = []byte("\ufeff")

// Of is the text in a file: without a byte order mark, its lines ended by line feeds as far as they had
// carriage returns alone. The error is an *Odd.
func Of(data []byte) ([]byte, error) {
	data = bytes.TrimPrefix(data, mark)
	if odd := known(data); odd != nil {
		return nil, odd
	}
	if i := bytes.IndexByte(data, 0); i >= 0 {
		return nil, holdingNUL(data, i)
	}
	if !utf8.Valid(data) {
		return nil, notUTF8(data)
	}
	if bytes.IndexByte(data, '\n') < 0 {
		data = bytes.ReplaceAll(data, []byte("\r"), []byte("\n"))
	}
	return data, nil
}

// holdingNUL says text in two bytes a letter from what is no text at all.
func holdingNUL(data []byte, first int) *Odd {
	start := data[:min(len(data), 512)]
	var even, odd int
	for i, b := range start {
		if b == 0 && i%2 == 0 {
			even++
		} else if b == 0 {
			odd++
		}
	}
	if quarter := len(start) / 4; len(start) >= 4 && (even > quarter && odd == 0 || odd > quarter && even == 0) {
		return &Odd{What: "is in UTF-16", Cure: saveAsUTF8}
	}
	return &Odd{Line: lineOf(data, first), What: "has a NUL byte on this line, as no text has", Cure: "see whether it is the right file, or damaged"}
}

// notUTF8 shows the first byte that is not UTF-8, as its number: what the file says is not repeated.
func notUTF8(data []byte) *Odd {
	at := 0
	for at < len(data) {
		r, size := utf8.DecodeRune(data[at:])
		if r == utf8.RuneError && size <= 1 {
			break
		}
		at += size
	}
	return &Odd{Line: lineOf(data, at), What: fmt.Sprintf("has the byte 0x%02X on this line, as text in Latin-1 or Windows-1252 has", data[at]), Cure: saveAsUTF8}
}

// lineOf is the line of a byte.
func lineOf(data []byte, at int) int { return 1 + bytes.Count(data[:at], []byte("\n")) }
