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

// Indent sets text off from its heading.
const Indent = "  "

// Printer collects what is printed, so that a failing writer leaves nothing half said.
type Printer struct {
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

// On is a printer for what a writer can show.
func On(w io.Writer) *Printer {
	if s, is := w.(Screen); is {
		return &Printer{width: s.Width, colour: s.Colour}
	}
	return &Printer{width: PageWidth}
}

// Heading begins a section.
func (p *Printer) Heading(format string, args ...any) {
	p.WriteByte('\n')
	from := p.Len()
	p.Paragraph("", "", fmt.Sprintf(format, args...))
	p.setAs(bold, from)
}

// setAs sets all from an offset to here in a way of its own.
func (p *Printer) setAs(code string, from int) {
	if p.colour && p.Len() > from {
		p.set = append(p.set, span{from, p.Len(), code})
	}
}

// Say writes a sentence below a heading.
func (p *Printer) Say(format string, args ...any) {
	p.Paragraph(Indent, Indent, fmt.Sprintf(format, args...))
}

// Says writes a sentence, if there is one.
func (p *Printer) Says(sentence string) {
	if sentence != "" {
		p.Say("%s", sentence)
	}
}

// Item writes one entry of a list.
func (p *Printer) Item(text string) { p.Paragraph(Indent+"- ", Indent+"  ", text) }

// Paragraph writes text wrapped, the first line after one prefix and the others after another.
func (p *Printer) Paragraph(first, others, text string) {
	prefix := first
	for _, line := range words.Wrap(text, p.width-max(len(first), len(others))) {
		p.WriteString(strings.TrimRight(prefix+line, " ") + "\n")
		prefix = others
	}
}

// To hands the page over in one piece.
func (p *Printer) To(w io.Writer) error {
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
