package text

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// notes are sources, each numbered when it is first wanted and printed once.
type notes []string

// of is the number of a source, empty for none.
func (n *notes) of(source string) string {
	if source == "" {
		return ""
	}
	at := slices.Index(*n, source)
	if at < 0 {
		*n, at = append(*n, source), len(*n)
	}
	return strconv.Itoa(at + 1)
}

// sources prints notes below one another.
func (p *Printer) sources(heading string, n notes) {
	if len(n) == 0 {
		return
	}
	p.Heading("%s", heading)
	width := len(strconv.Itoa(len(n)))
	for i, source := range n {
		p.Paragraph(fmt.Sprintf("%s%*d  ", Indent, width, i+1), Indent+strings.Repeat(" ", width+2), source)
	}
}
