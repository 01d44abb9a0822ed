package lookahead

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/morning"
	"coredays/model/state"
	"coredays/sim"
	"coredays/sim/statistics"
)

// option is a choice with its name.
type option struct {
	name   string
	choice sim.Choice
}

// mostOptions is how many choices are sailed: each takes as long as the answer itself.
const mostOptions = 6

// options are what the people on the ship may decide now: to stop the hole in hand, to run no more tools in it, to
// leave out a hole or task to come, to go to the next site, to go home.
func (l *look) options() (list []option) {
	st, v := l.x.State, l.v
	now := &st.Now
	add := func(c sim.Choice, format string, values ...any) {
		list = append(list, option{fmt.Sprintf(format, values...), c})
	}
	if n := now.Item; n != state.None {
		site := &v.Sites[st.Items[n].Site]
		item := &site.Items[st.Items[n].Number]
		if item.Hole != nil && now.Hole.Open && !now.Hole.Finished {
			add(sim.Choice{EndHole: true}, "stop hole %s of %s here", item.Name, site.Name)
			if left := len(item.Hole.Logging) - now.Hole.Logged; left > 0 {
				add(sim.Choice{NoLogging: true}, "no logging in hole %s of %s", item.Name, site.Name)
			}
		}
		if rest := l.toCome(st.Items[n].Site); len(rest) > 0 {
			add(sim.Choice{EndHole: true, Drop: rest}, "stop here and leave %s", site.Name)
		}
	}
	type late struct {
		rank int
		option
	}
	var drops []late
	for n := range st.Items {
		x := &st.Items[n]
		site := &v.Sites[x.Site]
		if item := &site.Items[x.Number]; x.State == state.ToCome && item.When == nil && !site.Alternate {
			drops = append(drops, late{item.Rank, option{fmt.Sprintf("leave out %s of %s", item.Name, site.Name), sim.Choice{Drop: []int{n}}}})
		}
	}
	slices.SortStableFunc(drops, func(a, b late) int { return b.rank - a.rank }) // what ranks last is dropped first
	for i := range drops {
		if len(list) >= mostOptions {
			break
		}
		list = append(list, drops[i].option)
	}
	return list
}

// toCome are the items of a site that are not begun.
func (l *look) toCome(site int) (list []int) {
	for n := range l.x.State.Items {
		if x := &l.x.State.Items[n]; x.Site == site && x.State == state.ToCome {
			list = append(list, n)
		}
	}
	return list
}

// choices sails each choice with the random numbers of going on, and ranks them: by the chance that all of the first
// rank is done, where that is told apart, then by metres.
func (l *look) choices(p *morning.Page, planned *sim.Onward) error {
	going := choiceOf("go on as planned", planned, planned, l.x.At)
	p.Choices = []morning.Choice{going}
	for _, o := range l.options() {
		r := sim.GoOn(l.ctx, l.x, o.choice, l.run)
		if r.Stopped {
			return l.ctx.Err()
		}
		p.Choices = append(p.Choices, choiceOf(o.name, planned, r, l.x.At))
	}
	best := &p.Choices[0]
	for i := range p.Choices[1:] {
		if c := &p.Choices[i+1]; better(c) && (best == &p.Choices[0] || c.ChancePrimary > best.ChancePrimary ||
			c.ChancePrimary == best.ChancePrimary && c.Recovered.Mean > best.Recovered.Mean) {
			best, p.Advice = c, c.Name
		}
	}
	return nil
}

// Differences below these are of no use to anybody, however sure they are [judgement].
const (
	leastChance = 0.02
	leastMetres = 5.0
)

// better tells whether a choice is better than going on: a higher chance of what ranks first, or where that is the same
// more metres. What is within the simulation error, with room to spare so that another seed says the same, is not.
func better(c *morning.Choice) bool {
	switch d := c.Primary; {
	case surely(d, leastChance):
		return true
	case d.CI[0] < -leastChance:
		return false
	}
	return surely(c.Metres, leastMetres)
}

// surely tells whether a difference is above a size by more than its interval reaches to one side.
func surely(d morning.Difference, least float64) bool { return d.CI[0] > least }

// choiceOf describes a choice, paired with going on.
func choiceOf(name string, planned, r *sim.Onward, at float64) morning.Choice {
	column := func(o *sim.Onward, c int) []float64 { return o.Column(o.Constrained, c) }
	days := column(r, statistics.ColDays)
	return morning.Choice{Name: name, ChancePrimary: mean(column(r, statistics.ColFirst)), ChanceAll: mean(column(r, statistics.ColAll)),
		Recovered: statistics.Summarise(Recovered(r)), DaysLeft: statistics.Summarise(less(days, at)),
		Primary: paired(column(planned, statistics.ColFirst), column(r, statistics.ColFirst)),
		All:     paired(column(planned, statistics.ColAll), column(r, statistics.ColAll)),
		Metres:  paired(Recovered(planned), Recovered(r)),
		Days:    paired(column(planned, statistics.ColDays), days)}
}

// paired is the mean of the differences of replications with the same random numbers, with its 95 % interval (normal,
// by the standard error of the mean).
func paired(a, b []float64) (d morning.Difference) {
	var sum, squares float64
	for i := range a {
		x := b[i] - a[i]
		sum, squares = sum+x, squares+x*x
	}
	n := float64(len(a))
	d.Mean = sum / n
	const z = 1.96 // normal quantile of 0.975
	half := z * math.Sqrt(math.Max(0, squares/n-d.Mean*d.Mean)/math.Max(1, n-1))
	d.CI = [2]float64{d.Mean - half, d.Mean + half}
	return d
}
