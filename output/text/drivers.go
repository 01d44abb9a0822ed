package text

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"coredays/model/result"
	"coredays/output/words"
)

// small is the share of the variance below which causes are given together. Our choice.
const small = 0.02

// drivers prints what makes days needed uncertain.
func (p *Printer) drivers(s *result.Summary) error {
	shown, negative := Shown(s.Drivers)
	if len(shown) == 0 || s.Replications < 2 {
		return nil
	}
	p.Heading("What drives the spread of days needed (share of its variance from P1 to P99)")
	if negative {
		p.Say("A negative share belongs to a cause that is short where the others are long.")
	}
	p.WriteByte('\n')
	var rows [][]string
	for _, d := range shown {
		rows = append(rows, []string{d.Name, words.Percent(d.Share), bar(d.Share)})
	}
	return p.Table([]Column{WordColumn("cause", 44), NumberColumn("share (%)"), WordColumn("", barWidth)}, rows)
}

// Shown lists the causes worth a line, the largest first and the small ones as one at the end.
func Shown(drivers []result.Driver) (shown []result.Driver, negative bool) {
	var few []result.Driver
	for _, d := range drivers {
		switch {
		case !words.Defined(d.Share):
		case math.Abs(d.Share) < small:
			few = append(few, d)
		default:
			shown = append(shown, d)
			negative = negative || d.Share < 0
		}
	}
	slices.SortStableFunc(shown, func(a, b result.Driver) int { return cmp.Compare(b.Share, a.Share) })
	return append(shown, folded(few)...), negative
}

// folded makes several causes one; a single one keeps its name.
func folded(few []result.Driver) []result.Driver {
	if len(few) < 2 {
		return few
	}
	rest := result.Driver{Name: fmt.Sprintf("the rest (%d smaller causes)", len(few))}
	for _, d := range few {
		rest.Share += d.Share
	}
	return []result.Driver{rest}
}
