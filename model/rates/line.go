package rates

import (
	"fmt"
	"math"
	"slices"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/spread"
)

// Line is how cycles rise with the way of the barrel, by least squares through the medians of the holes.
type Line struct {
	Holes      int
	At0        float64 // s, at no depth
	PerMetre   float64 // s for each metre of way
	ErrorAt0   float64 // standard errors
	Error      float64
	Identified bool
	Why        string // why the line says nothing
	mean       float64
	spanned    float64
}

// What a line needs before it says anything [judgement]: holes, cycles, a span of depths, and a slope known to a third
// of the ship's own.
const (
	leastHoles  = 4
	leastCycles = 10
	leastSpan   = 1000.0 // m
	mostUnsure  = 1.0 / 3
)

// line separates wire and rig floor: cycles at several depths of water have the same work on the rig floor, and a longer
// way. Cycles for which the bench may set the time are left aside, since they do not rise with depth.
func (g *gatherer) line(cycles []cycle) (l Line) {
	holes := map[int][]*cycle{}
	n := 0
	for i := range cycles {
		c := &cycles[i]
		paced, rest, _ := g.expected(c)
		if math.IsNaN(c.way) || paced+rest < benchFree*g.median(rig.Bench) {
			continue
		}
		holes[c.hole] = append(holes[c.hole], c)
		n++
	}
	var way, took []float64
	for _, h := range holes {
		var ways, seconds []float64
		for _, c := range h {
			ways, seconds = append(ways, c.way), append(seconds, c.seconds/g.aloneFactor(c))
		}
		way, took = append(way, stats.Median(ways)), append(took, stats.Median(seconds))
	}
	l.Holes = len(way)
	if l.Holes > 1 {
		l.spanned = slices.Max(way) - slices.Min(way)
	}
	switch {
	case l.Holes == 0:
		l.Why = "not identified: in water so shallow the bench sets the cycle"
		return l
	case l.Holes < leastHoles || n < leastCycles || l.spanned < leastSpan:
		l.Why = fmt.Sprintf("not identified: to part wire and rig floor takes %d holes over %g m of depth, and these are %d over %.0f m", leastHoles, leastSpan, l.Holes, l.spanned)
		return l
	}
	l.At0, l.PerMetre = stat.LinearRegression(way, took, nil, false)
	var squares float64
	for i := range way {
		e := took[i] - l.At0 - l.PerMetre*way[i]
		squares += e * e
	}
	l.mean = stat.Mean(way, nil)
	across := stat.Variance(way, nil) * float64(l.Holes-1)
	residual := squares / float64(l.Holes-2)
	l.Error = math.Sqrt(residual / across)                                         // standard error of a slope, Draper and Smith 1998, ch. 1 (from memory)
	l.ErrorAt0 = math.Sqrt(residual * (1/float64(l.Holes) + l.mean*l.mean/across)) // same, of the intercept
	r := cycles[0].tool.Of()
	if usual := ways(cycles[0].tool) / g.median(r.Wire); l.PerMetre <= 0 || l.Error > mostUnsure*usual {
		l.Why = fmt.Sprintf("not identified: the slope with depth is %.1f ± %.1f min for each km", l.PerMetre*1000/60, l.Error*1000/60)
		return l
	}
	l.Identified = true
	return l
}

// Interval is the 95 % interval of the slope, s for each metre (Student's t).
func (l *Line) Interval() (low, high float64) {
	t := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(max(1, l.Holes-2))}.Quantile(0.975)
	return l.PerMetre - t*l.Error, l.PerMetre + t*l.Error
}

// stated is how far a figure that the ship states without a spread may be off, as the factor between its even and its
// 9-in-10 value [judgement].
const stated = 1.3

// loosened gives a figure that is stated without a spread the one that it has for whoever learns.
func loosened(q spread.Quantity, shares spread.Shares) spread.Quantity {
	if !q.IsFixed() {
		return q
	}
	shape, err := spread.NewLognormal(q.Median(), stated)
	if err != nil {
		return q
	}
	return spread.Quantity{Shape: shape, Shares: shares, Source: q.Source}
}

// wires learns wire and rig floor from the line of each tool, where it says something, and goes on with what it learned.
func (g *gatherer) wires(cycles []cycle, lines []Cycles) (learned []Rate) {
	for i := range lines {
		x := &lines[i]
		r := x.Tool.Of()
		if seen := g.samples[r.Wire]; len(seen) > 0 { // timed on the line itself
			wire := g.rate(r.Wire, seen)
			g.samples[r.Wire], g.ship[r.Wire] = nil, wire.quantity()
			learned = append(learned, wire)
			continue
		}
		if !x.Identified {
			g.why[r.Wire] = x.Why
			continue
		}
		speed := ways(x.Tool) / x.PerMetre
		wire := g.single(r.Wire, speed, speed/x.PerMetre*x.Error, x.N)
		g.ship[r.Wire] = wire.quantity()
		at0 := x.At0 + x.PerMetre*x.mean - ways(x.Tool)/wire.Use[1]*x.mean // the line through the mean of the holes, at the wire's speed as learned
		floor := at0
		if x.Tool.Piston() {
			floor -= g.median(rig.Shot) + g.median(rig.CorePull)
		} else {
			floor -= cutting
		}
		floor -= g.median(rig.Connection)
		if floor > 0 && !x.Tool.Piston() || floor > 60 {
			handling := g.single(r.Handling, floor, x.Error*x.mean/2+60, x.N)
			g.ship[r.Handling] = handling.quantity()
			learned = append(learned, wire, handling)
			continue
		}
		learned = append(learned, wire)
	}
	return learned
}

// single learns a rate of which one value is known with its error.
func (g *gatherer) single(of rig.Rate, value, err float64, cores int) Rate {
	q := loosened(g.ship[of], spread.All(spread.Expedition))
	rate := Rate{Of: of, N: cores, Exposure: float64(cores), Unit: "cores", Ship: tripleOf(&q), Identified: true, Shares: spread.All(spread.Expedition)}
	if g.ship[of].IsFixed() {
		rate.Ship = Triple{g.median(of), g.median(of), g.median(of)}
	}
	z := spread.Score(0.9)
	rate.Log = Triple{value - z*err, value, value + z*err}
	p, wrong := learn.From(learn.Evidence{Of: q, Seen: []learn.Observation{{Value: value, Error: err}}})
	if wrong != nil {
		rate.Use, rate.Why = rate.Ship, wrong.Error()
		return rate
	}
	rate.Use = through(&q, p.Total(0, learn.Place{}))
	return rate
}
