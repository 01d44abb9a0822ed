package rates

import (
	"math"
	"slices"
	"time"

	"golang.org/x/exp/stats"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/riglog"
)

// cycle is the time from one core on deck to the next.
type cycle struct {
	core     *riglog.Core
	tool     coring.Tool
	hole     int // number of the hole in the table
	order    int // in the hole
	seconds  float64
	way      float64 // of the barrel, from the rig floor to the bottom of the hole, m; not a number where the water's depth is not known
	cored    float64 // m
	troubled bool
	alone    bool // no tool but piston corers was used at the site
}

// types are the letters of the four tools in a core table.
var types = map[string]coring.Tool{"H": coring.APC, "F": coring.HLAPC, "X": coring.XCB, "R": coring.RCB}

// longest parts a cycle from a bit trip or a storm between two cores: a day is longer than a round trip of the pipe
// in any depth of water [judgement, as for records].
const longest = 24 * time.Hour

// key names a hole of a core table.
type key struct{ leg, site, hole string }

// cyclesOf finds the cycles of a core table: between cores of one tool that follow each other, so the first core of a
// hole, of a tool, and after a drilled interval has none. What a log has between the two that is no coring, such as
// weather, repairs and rig service, is taken out.
func cyclesOf(cores []riglog.Core, lines []riglog.Line) (cycles []cycle, firsts int) {
	index := map[key]int{}
	last := map[key]*riglog.Core{}
	order := map[key]int{}
	for i := range cores {
		c := &cores[i]
		k := key{c.Leg, c.Site, c.Hole}
		if _, known := index[k]; !known {
			index[k] = len(index)
		}
		tool, cored := types[c.Type]
		before := last[k]
		last[k] = c
		if !cored || c.OnDeck.IsZero() {
			continue
		}
		if before == nil || before.Type != c.Type || c.Number != before.Number+1 {
			firsts++
			continue
		}
		took := c.OnDeck.Sub(before.OnDeck)
		if before.OnDeck.IsZero() || took <= 0 || took > longest {
			continue
		}
		seconds := took.Seconds() - beside(lines, before.OnDeck, c.OnDeck)
		if seconds <= 0 {
			continue
		}
		order[k]++
		cycles = append(cycles, cycle{core: c, tool: tool, hole: index[k], order: order[k], seconds: seconds,
			way: float64(c.Water) + math.Max(0, float64(c.Top)), cored: float64(c.Cored)})
	}
	troubles(cycles)
	others := map[[2]string]bool{}
	for i := range cores {
		if tool, cored := types[cores[i].Type]; cored && !tool.Piston() {
			others[[2]string{cores[i].Leg, cores[i].Site}] = true
		}
	}
	for i := range cycles {
		c := &cycles[i]
		c.alone = c.tool.Piston() && !others[[2]string{c.core.Leg, c.core.Site}]
	}
	return cycles, firsts
}

// beside is how long, between two times, a log has what is no coring, s.
func beside(lines []riglog.Line, from, to time.Time) (seconds float64) {
	first := 0
	if len(lines) > 0 {
		first, _ = slices.BinarySearchFunc(lines, from.Add(-time.Duration(48*float64(time.Hour))), func(l riglog.Line, at time.Time) int { return l.From.Compare(at) })
	}
	for i := first; i < len(lines) && lines[i].From.Before(to); i++ {
		l := &lines[i]
		if !l.Mapped || isCoring(l) {
			continue
		}
		a, b := l.From, l.To
		if a.Before(from) {
			a = from
		}
		if b.After(to) {
			b = to
		}
		if b.After(a) {
			seconds += b.Sub(a).Seconds()
		}
	}
	return seconds
}

// isCoring tells whether a line is part of a coring cycle.
func isCoring(l *riglog.Line) bool {
	for _, k := range l.Doing {
		if k.Of().Class != activity.Coring || k == activity.OrientationWait {
			return false
		}
	}
	return true
}

// trouble is by how much a cycle must exceed the hole's median, and that of the cycles around it, to count as trouble
// instead of pace: the rule by which the ship's chances of trouble were found in the core records.
const (
	trouble = 2.0
	around  = 3 // cycles on either side
)

// troubles marks the cycles in which something went wrong.
func troubles(cycles []cycle) {
	groups := map[[2]int][]*cycle{}
	for i := range cycles {
		k := [2]int{cycles[i].hole, int(cycles[i].tool)}
		groups[k] = append(groups[k], &cycles[i])
	}
	for _, g := range groups {
		seconds := make([]float64, len(g))
		for i, c := range g {
			seconds[i] = c.seconds
		}
		median := stats.Median(seconds)
		for i, c := range g {
			c.troubled = len(g) >= 3 && c.seconds > trouble*median
			if c.troubled && !c.tool.Piston() {
				near := slices.Clone(seconds[max(0, i-around):min(len(g), i+around+1)])
				c.troubled = c.seconds > trouble*stats.Median(near)
			}
		}
	}
}

// ways are how often a barrel's cycle goes the length of the pipe: down and up on the wire, or down, down with the
// overshot, and up.
func ways(t coring.Tool) float64 {
	if t.Piston() {
		return 2
	}
	return 3
}

// Cutting with the extended barrel: 20 min for a full core, as the ship's figure for its handling takes it (core
// records, doi:10.5281/zenodo.10498831); that it is off by 10 min one way or the other is judgement. What the rotary
// barrel cuts is rock of every kind, so that its cycles alone say nothing of its pace.
const (
	cutting       = 20 * 60.0
	cuttingSpread = 10 * 60.0
	fullCore      = 9.5 // m, ODP XCB tool sheet
)

// Where the bench may bind: below the first share of its time the rig waits for it in most cycles, above the second in few
// [judgement]. A cycle longer than the bench ever takes, 9 times in 10, was not set by it.
const (
	benchBinds = 0.8
	benchFree  = 1.25
)

// expected is what a cycle takes at the ship's figures but for its pace: the part that goes at that pace, and the rest,
// with the spread of the rest, s. wire and handling may have been learned.
func (g *gatherer) expected(c *cycle) (paced, rest, sd float64) {
	r := c.tool.Of()
	paced = ways(c.tool)*c.way/g.median(r.Wire) + g.median(r.Handling)
	rest = g.median(rig.Connection) * connections(c, g)
	if c.tool.Piston() {
		paced += g.median(rig.Shot) + g.median(rig.CorePull)
		return paced * g.aloneFactor(c), rest, 0
	}
	share := c.cored / fullCore
	if math.IsNaN(share) {
		share = 1
	}
	if c.tool.Has(coring.SlowsDown) && float64(c.core.Top) >= g.median(rig.ExtendedDeepFrom) {
		share /= g.median(rig.ExtendedDeep)
	}
	return paced, rest + cutting*share, cuttingSpread * share
}

// aloneFactor is the duration factor of piston cycles at sites where no other tool is used.
func (g *gatherer) aloneFactor(c *cycle) float64 {
	if c.alone {
		return g.median(rig.PistonAlone)
	}
	return 1
}

// connections is how many joints a core's advance needs.
func connections(c *cycle, g *gatherer) float64 {
	if math.IsNaN(c.cored) {
		return 1
	}
	return c.cored / g.median(rig.JointLength)
}

// paces takes in the pace of each cycle.
func (g *gatherer) paces(cycles []cycle) {
	bench, slowBench := g.median(rig.Bench), g.ship[rig.Bench].Shape.Quantile(0.9)
	for i := range cycles {
		c := &cycles[i]
		if c.troubled || math.IsNaN(c.way) {
			continue
		}
		r := c.tool.Of()
		if c.tool == coring.RCB {
			g.why[rig.RotaryDurationFactor] = "not identified: how long the rotary barrel cut is not in a core table, and most of its cycle is that"
			continue
		}
		paced, rest, sd := g.expected(c)
		s := sample{site: c.core.Leg + "/" + c.core.Site, hole: c.core.Hole, from: c.core.OnDeck, to: c.core.OnDeck, run: c.order,
			value: (c.seconds - rest) / paced, err: sd / paced, exposure: 1, along: c.way}
		if paced+rest < benchFree*bench && c.seconds <= slowBench {
			if paced+rest < benchBinds*bench { // the bench sets the cycle
				g.add(rig.Bench, sample{site: s.site, hole: s.hole, from: s.from, to: s.to, run: c.order, value: c.seconds, exposure: 1, along: c.way}, "cores")
			}
			s.bound = learn.AtMost // the pace may be anything that is quicker
		}
		g.add(r.DurationFactor, s, "cores")
	}
}

// Cycles are the cycles of a tool, as the core table has them.
type Cycles struct {
	Tool     coring.Tool
	N        int
	Troubled int
	Minutes  Triple // of those without trouble
	Line
}

// cyclesByTool describes the cycles of each tool.
func (g *gatherer) cyclesByTool(cycles []cycle) (list []Cycles) {
	for t := range coring.Tools {
		var minutes []float64
		x := Cycles{Tool: t}
		var mine []cycle
		for _, c := range cycles {
			if c.tool != t {
				continue
			}
			x.N++
			if c.troubled {
				x.Troubled++
				continue
			}
			minutes = append(minutes, c.seconds/60)
			mine = append(mine, c)
		}
		if len(minutes) == 0 {
			continue
		}
		x.Minutes = quantiles(minutes)
		x.Line = g.line(mine)
		list = append(list, x)
	}
	return list
}

// quantiles are the low, even and high value of a sample (Hyndman and Fan 1996, R-7).
func quantiles(x []float64) (t Triple) {
	copy(t[:], stats.Quantiles(x, 0.1, 0.5, 0.9))
	return t
}
