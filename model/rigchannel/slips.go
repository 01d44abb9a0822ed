package rigchannel

import (
	"errors"
	"math"
	"slices"

	"coredays/model/riglog"
)

// Hang is a time during which the pipe hung in the slips.
type Hang struct {
	From, To    float64 // s since the recording began
	Block       float64 // height of the block when it began, m, heave taken out
	BlockAfter  float64 // and when it ended
	first, last int     // samples
}

// Stand is one stand moved between two hangs.
type Stand struct {
	From, To float64 // s
	Moved    float64 // m the block rose; below 0 where it was lowered
}

// Connection is the time in the slips between two stands.
type Connection struct {
	From, To float64
}

// Took is how long it took, s.
func (c *Connection) Took() float64 { return c.To - c.From }

// Found is what a recording shows.
type Found struct {
	Hangs       []Hang
	Stands      []Stand
	Connections []Connection
}

const (
	spike    = 2.0   // s on either side: a spike is a sample or two
	heaveFor = 12.0  // s on either side: two periods of a swell of 12 s
	baseline = 900.0 // s on either side over which the weight on the hook is looked for
	rises    = 0.6   // share of the way from hanging to hooked above which the pipe hangs on the hook
	falls    = 0.4   // and below which it hangs in the slips: between the two nothing changes
	shortest = 15.0  // s: a shorter spell in or out of the slips is no spell
	twoHeaps = 0.6   // share of the variance that lies between two states of the hook load where there are two
	whole    = 0.75  // share of a stand's length that the block moves at least
	more     = 1.35  // and at most
)

// ErrOneState is the error of a recording in which the hook load has one state alone.
var ErrOneState = errors.New("the hook load does not fall to that of the block alone: there are no slips to be found")

// Look finds slips, stands and connections in a recording. stand is the length of a stand, or of the joint that is added
// while coring, m. The sizes of windows and
// thresholds are judgement.
func Look(r *riglog.Recording, stand float64) (*Found, error) {
	hook := medianOver(r.Time, r.Hook, spike)
	lower, upper, apart := twoLevels(hook)
	if apart < twoHeaps || upper < 1.2*lower {
		return nil, ErrOneState
	}
	hanging := states(r.Time, hook, lower, upper)
	block := medianOver(r.Time, r.Block, spike)
	f := &Found{Hangs: hangs(r.Time, block, hanging)}
	f.pair(r.Time, block, stand)
	return f, nil
}

// states says of each sample whether the pipe hangs in the slips, with hysteresis between two thresholds. The weight on
// the hook drifts as pipe is added, so the upper state is that around; the lower is the block's own weight.
func states(at, hook []float64, lower, upper float64) (hanging []bool) {
	above := upperAround(at, hook, (lower+upper)/2, upper)
	hanging = make([]bool, len(hook))
	now := hook[0] < (lower+above[0])/2
	for i, h := range hook {
		switch share := (h - lower) / (above[i] - lower); {
		case share > rises:
			now = false
		case share < falls:
			now = true
		}
		hanging[i] = now
	}
	return hanging
}

// upperAround is the mean of the hook loads above a split within the baseline around each sample.
func upperAround(at, hook []float64, split, otherwise float64) []float64 {
	sums, count := make([]float64, len(hook)+1), make([]float64, len(hook)+1)
	for i, h := range hook {
		sums[i+1], count[i+1] = sums[i], count[i]
		if h > split {
			sums[i+1], count[i+1] = sums[i]+h, count[i]+1
		}
	}
	out := make([]float64, len(hook))
	from, to := 0, 0
	for i := range hook {
		for at[from] < at[i]-baseline {
			from++
		}
		for to < len(hook) && at[to] <= at[i]+baseline {
			to++
		}
		out[i] = otherwise
		if n := count[to] - count[from]; n > 0 {
			out[i] = (sums[to] - sums[from]) / n
		}
	}
	return out
}

// hangs are the spells in the slips, those too short to be one left out, and those joined between which the pipe was
// out of the slips too briefly to be moved.
func hangs(at, block []float64, hanging []bool) (list []Hang) {
	for i := 0; i < len(at); {
		j := i
		for j < len(at) && hanging[j] == hanging[i] {
			j++
		}
		if hanging[i] {
			h := Hang{From: edge(at, i), To: edge(at, j), first: i, last: j - 1}
			if n := len(list); n > 0 && h.From-list[n-1].To < shortest {
				list[n-1].To, list[n-1].last = h.To, h.last
			} else {
				list = append(list, h)
			}
		}
		i = j
	}
	list = slices.DeleteFunc(list, func(h Hang) bool { return h.To-h.From < shortest })
	for n := range list {
		h := &list[n]
		h.Block, h.BlockAfter = block[h.first], block[h.last]
	}
	return list
}

// edge is the time between a sample and the one before it, at which a state changed.
func edge(at []float64, i int) float64 {
	switch {
	case i == 0:
		return at[0]
	case i == len(at):
		return at[i-1]
	}
	return (at[i-1] + at[i]) / 2
}

// pair finds the stand between each two hangs: the block's way there, with heave taken out, between its turning points.
func (f *Found) pair(at, block []float64, stand float64) {
	calm := meanOver(at, block, heaveFor)
	moved := make([]bool, len(f.Hangs))
	for n := 1; n < len(f.Hangs); n++ {
		a, b := &f.Hangs[n-1], &f.Hangs[n]
		way := travel(calm[a.last : b.first+1])
		if math.Abs(way) >= whole*stand && math.Abs(way) <= more*stand {
			f.Stands = append(f.Stands, Stand{a.To, b.From, way})
			moved[n] = true
		}
	}
	for n := 1; n+1 < len(f.Hangs); n++ {
		if moved[n] && moved[n+1] { // between two stands
			f.Connections = append(f.Connections, Connection{f.Hangs[n].From, f.Hangs[n].To})
		}
	}
}

// travel is the way between the two turning points of a stretch: from its lowest to its highest, below 0 where the
// highest came first.
func travel(x []float64) float64 {
	low, high := 0, 0
	for i := range x {
		if x[i] < x[low] {
			low = i
		}
		if x[i] > x[high] {
			high = i
		}
	}
	if high < low {
		return -(x[high] - x[low])
	}
	return x[high] - x[low]
}
