package output

import (
	"bytes"
	"fmt"
	"io"
	"strings"
)

// pageWidth is the widest line, in columns of a terminal.
const pageWidth = 100

// indent sets text off from its heading.
const indent = "  "

// page collects what is printed, so that a failing writer leaves nothing half said.
type page struct{ bytes.Buffer }

// heading begins a section.
func (p *page) heading(format string, args ...any) {
	p.WriteByte('\n')
	p.paragraph("", "", fmt.Sprintf(format, args...))
}

// say writes a sentence below a heading.
func (p *page) say(format string, args ...any) {
	p.paragraph(indent, indent, fmt.Sprintf(format, args...))
}

// item writes one entry of a list.
func (p *page) item(text string) { p.paragraph(indent+"- ", indent+"  ", text) }

// paragraph writes text wrapped, the first line after one prefix and the others after another.
func (p *page) paragraph(first, others, text string) {
	prefix := first
	for _, line := range wrap(text, pageWidth-max(len(first), len(others))) {
		p.WriteString(strings.TrimRight(prefix+line, " ") + "\n")
		prefix = others
	}
}

// to hands the page over in one piece.
func (p *page) to(w io.Writer) error {
	_, err := w.Write(bytes.Map(shown, p.Bytes()))
	return err
}
