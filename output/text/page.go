package text

import (
	"bytes"
	"fmt"
	"io"
	"strings"

	"coredays/output/words"
)

// PageWidth is the widest line, in columns of a terminal.
const PageWidth = 100

// indent sets text off from its heading.
const indent = "  "

// printer collects what is printed, so that a failing writer leaves nothing half said.
type printer struct{ bytes.Buffer }

// heading begins a section.
func (p *printer) heading(format string, args ...any) {
	p.WriteByte('\n')
	p.paragraph("", "", fmt.Sprintf(format, args...))
}

// say writes a sentence below a heading.
func (p *printer) say(format string, args ...any) {
	p.paragraph(indent, indent, fmt.Sprintf(format, args...))
}

// item writes one entry of a list.
func (p *printer) item(text string) { p.paragraph(indent+"- ", indent+"  ", text) }

// paragraph writes text wrapped, the first line after one prefix and the others after another.
func (p *printer) paragraph(first, others, text string) {
	prefix := first
	for _, line := range words.Wrap(text, PageWidth-max(len(first), len(others))) {
		p.WriteString(strings.TrimRight(prefix+line, " ") + "\n")
		prefix = others
	}
}

// to hands the page over in one piece.
func (p *printer) to(w io.Writer) error {
	_, err := w.Write(bytes.Map(words.Shown, p.Bytes()))
	return err
}
