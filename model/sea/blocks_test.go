package sea

import (
	"math"
	"testing"

	"coredays/model/chance"
)

func blocksOf(t testing.TB, r *Record) *Blocks {
	t.Helper()
	b, err := NewBlocks(r)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func TestAPieceBeginsNearItsDayOfTheYearAndHasNoGap(t *testing.T) {
	r := madeUp(t, 6)
	for i := range r.Heights { // three days lost every three weeks
		if i/24%21 < 3 {
			r.Heights[i] = float32(math.NaN())
		}
	}
	b := blocksOf(t, r)
	for n := range 2000 {
		hour := n * 4
		from, length, ok := b.pick(chance.Replication(5, n), hour, float32(math.Log(2)))
		if !ok {
			t.Fatal("nothing found")
		}
		at := r.at(from)
		off := math.Abs(at.Sub(newYear(at.Year())).Hours() - float64(hour))
		if off = min(off, 8760-off); off > 10*24+24 { // a day more where the year changes
			t.Errorf("hour %d of the year is made of %v", hour, at)
		}
		if length < worthBlock || length > longestBlock {
			t.Errorf("a piece of %d h", length)
		}
		for i := from - 1; i < from+length; i++ {
			if h := r.Heights[i]; h != h {
				t.Fatalf("a gap in a piece of %d h from %v", length, at)
			}
		}
	}
}

func TestPiecesFollowOnWhereTheSeaIsAsHigh(t *testing.T) {
	b := blocksOf(t, madeUp(t, 8))
	var sum float64
	for n := range 1000 {
		last := float32(math.Log(1.2 + float64(n%30)/10))
		from, _, _ := b.pick(chance.Replication(6, n), n*8, last)
		sum += math.Abs(float64(b.logs[from-1] - last))
	}
	// One of the 10 nearest of 400 over a range of about 2 of ln h: about 5/400 of it on average.
	if mean := sum / 1000; mean > 0.04 {
		t.Errorf("pieces join with steps of %.3f of ln h on average", mean)
	}
}

func TestARecordFullOfGapsMakesNoPieces(t *testing.T) {
	r := madeUp(t, 6)
	for i := range r.Heights {
		if i%60 == 0 {
			r.Heights[i] = float32(math.NaN())
		}
	}
	if _, err := NewBlocks(r); err == nil {
		t.Error("accepted")
	}
	l, err := NewLikeness(r, "gaps")
	if err != nil || l.Blocks {
		t.Errorf("%v, blocks %t: a process is wanted", err, l.Blocks)
	}
}

func TestLengthOfTheRecordDecidesBetweenPiecesAndAProcess(t *testing.T) {
	for years, want := range map[int]bool{2: false, 4: false, 5: true, 8: true} {
		if l := likenessOf(t, years); l.Blocks != want {
			t.Errorf("%d years: blocks %t", years, l.Blocks)
		}
	}
}
