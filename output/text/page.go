package text

import (
	"bytes"
	"fmt"
	"io"
	"strings"

	"coredays/output/words"
)

// PageWidth is the widest line where nothing says how wide the screen is, in columns of a terminal.
const PageWidth = 100

// Screen is a writer that says what it can show. Any other writer takes lines of PageWidth without colour.
type Screen struct {
	io.Writer
	Width  int  // columns
	Colour bool // headings are set in bold, rules are faint: no more, and no hue that says anything by itself
}

// indent sets text off from its heading.
const indent = "  "

// printer collects what is printed, so that a failing writer leaves nothing half said.
type printer struct {
	bytes.Buffer
	width  int
	colour bool
	set    []span // what is set otherwise than the rest, in order
}

// span is a part of the bytes collected, with the code that a terminal sets it by (ECMA-48, select graphic
// rendition).
type span struct {
	from, to int
	code     string
}

const (
	bold  = "\x1b[1m"
	faint = "\x1b[2m"
	plain = "\x1b[0m"
)

// on is a printer for what a writer can show.
func on(w io.Writer) *printer {
	if s, is := w.(Screen); is {
		return &printer{width: s.Width, colour: s.Colour}
	}
	return &printer{width: PageWidth}
}

// heading begins a section.
func (p *printer) heading(format string, args ...any) {
	p.WriteByte('\n')
	from := p.Len()
	p.paragraph("", "", fmt.Sprintf(format, args...))
	p.setAs(bold, from)
}

// setAs sets all from an offset to here in a way of its own.
func (p *printer) setAs(code string, from int) {
	if p.colour && p.Len() > from {
		p.set = append(p.set, span{from, p.Len(), code})
	}
}

// say writes a sentence below a heading.
func (p *printer) say(format string, args ...any) {
	p.paragraph(indent, indent, fmt.Sprintf(format, args...))
}

// says writes a sentence, if there is one.
func (p *printer) says(sentence string) {
	if sentence != "" {
		p.say("%s", sentence)
	}
}

// item writes one entry of a list.
func (p *printer) item(text string) { p.paragraph(indent+"- ", indent+"  ", text) }

// paragraph writes text wrapped, the first line after one prefix and the others after another.
func (p *printer) paragraph(first, others, text string) {
	prefix := first
	for _, line := range words.Wrap(text, p.width-max(len(first), len(others))) {
		p.WriteString(strings.TrimRight(prefix+line, " ") + "\n")
		prefix = others
	}
}

// to hands the page over in one piece.
func (p *printer) to(w io.Writer) error {
	var page bytes.Buffer
	all, done := p.Bytes(), 0
	for _, s := range p.set {
		page.Write(bytes.Map(words.Shown, all[done:s.from]))
		page.WriteString(s.code)
		page.Write(bytes.TrimRight(bytes.Map(words.Shown, all[s.from:s.to]), "\n"))
		page.WriteString(plain + "\n")
		done = s.to
	}
	page.Write(bytes.Map(words.Shown, all[done:]))
	_, err := w.Write(page.Bytes())
	return err
}
