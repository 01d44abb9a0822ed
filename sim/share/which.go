package share

import (
	"fmt"
	"strconv"
	"strings"
)

// Most is how many shares there may be: merging keeps a file of each open.
const Most = 10_000

// Which is which share of how many, from 1 on. The zero value is none.
type Which struct{ Number, Of int }

// ParseWhich reads what people give, such as 3/16.
func ParseWhich(text string) (Which, error) {
	number, of, _ := strings.Cut(text, "/")
	i, bad := strconv.Atoi(number)
	n, worse := strconv.Atoi(of)
	if bad != nil || worse != nil || i < 1 || i > n || n > Most {
		return Which{}, fmt.Errorf("%q: give which share of how many, such as 3/16, at most %d", text, Most)
	}
	return Which{i, n}, nil
}

func (w Which) String() string { return fmt.Sprintf("%d/%d", w.Number, w.Of) }

// Range is what of so many pieces of equal work the share does: from the first to before the end. The shares
// follow each other without a gap, and none has more than one piece more than another.
func (w Which) Range(pieces int) (first, end int) {
	return (w.Number - 1) * pieces / w.Of, w.Number * pieces / w.Of
}

// RangeOf is the same for rows of pieces, each row with so many, whose pieces are as much work as the row's
// weight says (1 or more). Pieces are counted through all rows.
func (w Which) RangeOf(weights []int, pieces int) (first, end int) {
	return border(w.Number-1, w.Of, weights, pieces), border(w.Number, w.Of, weights, pieces)
}

// border is the piece at which the work before it is so much of all work, to a piece.
func border(part, of int, weights []int, pieces int) int {
	all := 0
	for _, weight := range weights {
		all += weight * pieces
	}
	// In whole numbers, so that every machine finds the same. The quotient and the rest apart, since all
	// times part may be more than an int holds.
	before := all/of*part + all%of*part/of
	for row, weight := range weights {
		if before < weight*pieces {
			return row*pieces + before/weight
		}
		before -= weight * pieces
	}
	return len(weights) * pieces
}
