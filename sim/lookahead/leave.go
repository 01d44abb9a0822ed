package lookahead

import (
	"math"
	"slices"
	"time"

	"golang.org/x/exp/stats"

	"coredays/model/morning"
	"coredays/model/state"
	"coredays/sim"
	"coredays/sim/statistics"
)

// leaveChances are those for which the latest time to leave is told.
var leaveChances = []float64{0.90, 0.95}

// leaveBy counts backwards from the last moment in port: the way home with its weather and the pilotage, securing,
// pulling pipe. The ship leaves from how she stands now, but at that later date, in the sea of that date.
func (l *look) leaveBy(p *morning.Page) error {
	if l.x.State.Now.Site == state.None {
		return nil
	}
	at := l.x.At
	for _, chance := range leaveChances {
		var leave morning.Leave
		for range 2 { // the first estimate is in the sea of now
			o := sim.GoOn(l.ctx, l.x.Later(at-l.x.At), sim.Choice{Home: true}, l.run)
			if o.Stopped {
				return l.ctx.Err()
			}
			leave = l.backwards(o, at, chance)
			at = math.Max(l.x.At, leave.PullOut.Sub(l.v.Plan.Sails).Seconds())
		}
		p.LeaveBy = append(p.LeaveBy, leave)
	}
	return nil
}

// backwards takes the times that a share of the replications need no more than from the last moment.
func (l *look) backwards(o *sim.Onward, from, chance float64) morning.Leave {
	home := o.Column(o.Constrained, statistics.ColDays)
	var whole, deck, way []float64
	for i, at := range home {
		whole = append(whole, at-from)
		deck = append(deck, at-(o.UnderWay[i]-o.Secured[i]))
		way = append(way, at-o.UnderWay[i])
	}
	before := func(takes []float64) time.Time {
		takes = slices.DeleteFunc(takes, math.IsNaN)
		if len(takes) == 0 {
			return time.Time{}
		}
		slices.Sort(takes)
		q := stats.Quantiles(takes, chance)
		return l.v.Plan.Sails.Add(time.Duration((l.v.Deadline - q[0]) * float64(time.Second))).Truncate(time.Minute)
	}
	return morning.Leave{Chance: chance, PullOut: before(whole), BitOnDeck: before(deck), UnderWay: before(way)}
}
