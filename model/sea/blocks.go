package sea

import (
	"errors"
	"math"
	"time"

	"coredays/model/chance"
)

// Blocks makes a sea of pieces of a record: each begins within 10 days of the day of the year that
// it is to stand for, in any year, where the hour before it is about as high as the sea is at the
// end of the piece before [state-matched block resampling; Monbet, Ailliot and Prevosto 2007, on
// resampling, abstract only]. It can't go beyond the heights of the record. With pieces from 15
// days to either side, spring and autumn at five NDBC buoys came out less like themselves; with
// pieces of 10 days, so did long waits.
type Blocks struct {
	heights  []float32 // m, hour by hour, NaN in gaps
	logs     []float32 // ln of the heights
	until    []int32   // hours from here on without a gap
	newYears []int     // hours from the start to the new years of the record
}

const (
	shortestBlock = 360 // h: 15 days
	longestBlock  = 480
	worthBlock    = 72 // h without a gap that make a piece of the record worth using
	apart         = 10 // days of the year between a piece and what it stands for
	candidates    = 400
	nearest       = 10   // of the candidates, of which one is taken
	mostTries     = 4000 // for candidates without gaps
	hoursApart    = apart * 24
)

// NewBlocks readies a record. It fails where some time of the year has no piece without gaps.
func NewBlocks(r *Record) (*Blocks, error) {
	n := len(r.Heights)
	b := &Blocks{heights: r.Heights, logs: make([]float32, n), until: make([]int32, n+1)}
	for i := n - 1; i >= 0; i-- {
		b.logs[i] = float32(math.Log(float64(r.Heights[i])))
		if h := r.Heights[i]; h == h {
			b.until[i] = b.until[i+1] + 1
		}
	}
	b.until = b.until[:n]
	for year := r.Start.Year() - 1; year <= r.at(n).Year(); year++ {
		b.newYears = append(b.newYears, int(time.Date(year, 1, 1, 0, 0, 0, 0, time.UTC).Sub(r.Start).Hours()))
	}
	for hour := 0; hour < 8760; hour += 24 {
		if _, _, ok := b.pick(chance.Replication(1, hour), hour, noMatch); !ok {
			return nil, errors.New("the record has too many gaps for pieces of it to be put together")
		}
	}
	return b, nil
}

// noMatch is the ln height of no sea before.
var noMatch = float32(math.NaN())

// pick chooses a piece of the record for an hour of the year, to follow on a sea of ln height
// last: where it begins and how long it is.
func (b *Blocks) pick(stream chance.Source, hourOfYear int, last float32) (from, length int, ok bool) {
	var best [nearest]candidate
	found, kept := 0, 0
	for try := 0; try < mostTries && found < candidates; try++ {
		at, usable := b.candidate(stream.Bits(try+2), hourOfYear)
		if !usable {
			continue
		}
		found++
		c := candidate{at: at}
		if last == last {
			c.off = abs(b.logs[at-1] - last)
		}
		kept = insert(&best, kept, c)
		if last != last && kept == nearest {
			break // nothing to match: the first will do
		}
	}
	if kept == 0 {
		return 0, 0, false
	}
	from = best[int(stream.Uniform(0)*float64(kept))].at
	length = shortestBlock + int(stream.Uniform(1)*(longestBlock-shortestBlock+1))
	return from, min(length, int(b.until[from])), true
}

// candidate is a place in the record and how far the hour before it is from the sea to match.
type candidate struct {
	at  int
	off float32 // of ln height
}

// candidate draws a place in the record near an hour of the year, usable with enough hours before
// the next gap and an hour before it.
func (b *Blocks) candidate(bits uint64, hourOfYear int) (at int, usable bool) {
	year := int(uint64(uint32(bits)) * uint64(len(b.newYears)) >> 32)
	off := int(bits >> 32 * (2*hoursApart + 1) >> 32)
	at = b.newYears[year] + hourOfYear + off - hoursApart
	return at, at >= 1 && at < len(b.until) && b.until[at] >= worthBlock && b.until[at-1] > 0
}

// insert keeps the nearest candidates in order and says how many there are.
func insert(best *[nearest]candidate, kept int, c candidate) int {
	if kept == nearest && c.off >= best[nearest-1].off {
		return kept
	}
	i := min(kept, nearest-1)
	for ; i > 0 && best[i-1].off > c.off; i-- {
		best[i] = best[i-1]
	}
	best[i] = c
	return min(kept+1, nearest)
}

func abs(x float32) float32 { return max(x, -x) }
