package drillstring

import (
	"fmt"
	"math"

	"coredays/model/unit"
)

// Stock is the pipe of one kind on board.
type Stock struct {
	Pipe   Pipe
	Class  Class
	Length unit.Length
}

// Board is what a string can be made of: an assembly, and pipe in the order in which it may hang, from
// the bit up. Lighter pipe first reaches deepest.
type Board struct {
	Assembly Assembly
	Stock    []Stock
}

// Reach is the longest string that bears its conditions, and what ends it.
type Reach struct {
	String String
	Length unit.Length // from the floor to the bit
	Limit  string      // "pipe on board", or the loading that is reached
}

// Reach is the longest string that can be hung: every kind of pipe is used or left on board, whatever
// reaches deepest. It is of length 0 if not even the assembly may hang.
func (b Board) Reach(c Conditions) Reach { return b.longest(c, unit.Length(math.Inf(1))) }

// Hang makes a string with its bit at a depth below the floor.
func (b Board) Hang(depth unit.Length, c Conditions) (String, error) {
	if depth < b.Assembly.Length() {
		return String{}, fmt.Errorf("the assembly is %s long, the bit can't hang at %s", b.Assembly.Length().Tell(), depth.Tell())
	}
	reach := b.longest(c, depth)
	if reach.Length < depth*(1-1e-9) { // rounding of sums
		return String{}, fmt.Errorf("the string reaches %s and not %s: limited by %s", reach.Length.Tell(), depth.Tell(), reach.Limit)
	}
	return reach.String, nil
}

// longest tries every choice of kinds, as many as 2^kinds; of equally long strings it takes the one with
// the most margin.
func (b Board) longest(c Conditions, most unit.Length) (best Reach) {
	for choice := 0; choice < 1<<len(b.Stock); choice++ {
		var stock []Stock
		for i, s := range b.Stock {
			if choice>>i&1 == 1 {
				stock = append(stock, s)
			}
		}
		reach, ok := taper{b.Assembly, stock, c, most}.settle()
		if ok && better(reach, best, c) {
			best = reach
		}
	}
	return best
}

func better(a, b Reach, c Conditions) bool {
	const same = 1e-6 // m
	if near(a.Length, b.Length, same) && b.Length > 0 {
		return a.String.Margin(c).Overpull() > b.String.Margin(c).Overpull()
	}
	return a.Length > b.Length
}
