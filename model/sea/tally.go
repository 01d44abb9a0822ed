package sea

import "time"

// Tally counts spells and waits at several heights, by the groups of a division of the year, over
// any number of series.
type Tally struct {
	division Division
	heights  []float64 // m
	spells   [][]Spells
}

// NewTally begins to count at heights in metres.
func NewTally(d Division, heights []float64) *Tally {
	t := &Tally{division: d, heights: heights, spells: make([][]Spells, len(heights))}
	for i := range heights {
		t.spells[i] = make([]Spells, d.groups())
	}
	return t
}

// Add counts a series of heights in metres, hour by hour from start, NaN in a gap.
func (t *Tally) Add(start time.Time, series []float32) {
	groups := make([]int8, len(series))
	month := newMonths(start)
	for i := range series {
		groups[i] = int8(t.division[month.of(i)])
	}
	for i, height := range t.heights {
		c := count{into: t.spells[i], series: series, groups: groups, height: float32(height)}
		c.hours()
		c.whole()
		for w := range Windows {
			c.waits(w)
		}
	}
}

// At is what was counted at a height, by its place in the list, in a group of the division.
func (t *Tally) At(height, group int) *Spells { return &t.spells[height][group] }

// merge adds what another tally of the same heights and division counted.
func (t *Tally) merge(o *Tally) {
	for i := range t.spells {
		for g := range t.spells[i] {
			t.spells[i][g].merge(&o.spells[i][g])
		}
	}
}

// count counts at one height in one series.
type count struct {
	into   []Spells // by group
	series []float32
	groups []int8 // of each hour
	height float32
}

// at are the spells that an hour counts to.
func (c *count) at(hour int) [2]*Spells { return [2]*Spells{&c.into[0], &c.into[c.groups[hour]]} }

func (c *count) hours() {
	for i, h := range c.series {
		if h != h {
			continue
		}
		for _, s := range c.at(i) {
			s.hours++
			if h > c.height {
				s.above++
			}
			if i > 0 && c.series[i-1] == c.series[i-1] && (c.series[i-1] > c.height) != (h > c.height) {
				s.crossings++
			}
		}
	}
}

// whole finds whole spells: those with a crossing at both ends and no gap in them.
func (c *count) whole() {
	begun := -1
	for i := 1; i < len(c.series); i++ {
		a, b := c.series[i-1], c.series[i]
		if a != a || b != b {
			begun = -1
			continue
		}
		if (a > c.height) == (b > c.height) {
			continue
		}
		if begun >= 0 {
			for _, s := range c.at(begun) {
				s.add(a > c.height, float64(i-begun))
			}
		}
		begun = i
	}
}

// waits counts, from every hour, the hours until the start of a window, going backwards. A wait
// that a gap or the end cuts off is not known.
func (c *count) waits(w int) {
	const unknown = -1
	wait, calm := unknown, 0
	for i := len(c.series) - 1; i >= 0; i-- {
		h := c.series[i]
		if h != h {
			wait, calm = unknown, 0
			continue
		}
		if calm++; h > c.height {
			calm = 0
		}
		switch {
		case calm >= Windows[w]:
			wait = 0
		case wait != unknown:
			wait++
		}
		if wait == unknown {
			continue
		}
		for _, s := range c.at(i) {
			s.waits[w]++
			s.waited[w] += float64(wait)
		}
	}
	c.belong(w)
}

// belong counts the hours of calms that are long enough for a window.
func (c *count) belong(w int) {
	calm := 0
	for i := 0; i <= len(c.series); i++ {
		if i < len(c.series) && c.series[i] <= c.height {
			calm++
			continue
		}
		for j := i - calm; j < i && calm >= Windows[w]; j++ {
			for _, s := range c.at(j) {
				s.inWindows[w]++
			}
		}
		calm = 0
	}
}
