package share

import (
	"testing"

	"pgregory.net/rapid"
)

func TestWhichShareOfHowMany(t *testing.T) {
	for text, want := range map[string]Which{"3/16": {3, 16}, "1/1": {1, 1}} {
		if got, err := ParseWhich(text); err != nil || got != want || got.String() != text {
			t.Errorf("%s: %v, %v", text, got, err)
		}
	}
	for _, text := range []string{"", "3", "0/3", "4/3", "2/3x", "-1/3", "1/20000"} {
		if got, err := ParseWhich(text); err == nil {
			t.Errorf("%q is taken for %v", text, got)
		}
	}
}

// Shares cut from rows of unlike weight follow each other without a gap from the first piece to the last, and the
// work of none is more than a piece away from an equal share.
func TestSharesAreAllOfTheWorkInEqualParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		weights := rapid.SliceOfN(rapid.IntRange(1, 1000), 1, 40).Draw(t, "weights")
		pieces, of := rapid.IntRange(1, 50).Draw(t, "pieces"), rapid.IntRange(1, 60).Draw(t, "of")
		all, heaviest := 0, 0
		for _, w := range weights {
			all, heaviest = all+w*pieces, max(heaviest, w)
		}
		next := 0
		for n := 1; n <= of; n++ {
			first, end := Which{n, of}.RangeOf(weights, pieces)
			if first != next || end < first {
				t.Fatalf("share %d is %d to %d, after one that ends at %d", n, first, end, next)
			}
			work := 0
			for k := first; k < end; k++ {
				work += weights[k/pieces]
			}
			if off := work*of - all; off > heaviest*of+of || off < -heaviest*of-of {
				t.Fatalf("share %d of %d is %d of %d units of work", n, of, work, all)
			}
			next = end
		}
		if next != len(weights)*pieces {
			t.Fatalf("the last share ends at %d of %d", next, len(weights)*pieces)
		}
	})
}

// By hand: rows of 10 pieces that are 1, 2 and 1 units of work each are 40 units; halves meet in the middle of the
// second row, quarters at its borders too.
func TestBordersOfSharesByHand(t *testing.T) {
	for which, want := range map[Which][2]int{{1, 2}: {0, 15}, {2, 2}: {15, 30}, {1, 4}: {0, 10}, {2, 4}: {10, 15}, {4, 4}: {20, 30}} {
		if first, end := which.RangeOf([]int{1, 2, 1}, 10); first != want[0] || end != want[1] {
			t.Errorf("%v: %d to %d, by hand %v", which, first, end, want)
		}
	}
	if first, end := (Which{2, 3}).Range(100); first != 33 || end != 66 {
		t.Errorf("the second third of 100 is %d to %d", first, end)
	}
}
