// Package lookahead says each morning what still fits: it sails the rest of an expedition from where the ship is, with
// what was learned so far, and weighs what the people on board may decide.
package lookahead

import (
	"context"
	"fmt"
	"math"
	"slices"
	"time"

	"coredays/model/activity"
	"coredays/model/morning"
	"coredays/model/riglog"
	"coredays/model/state"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// Asked is what is asked for beside the state.
type Asked struct {
	Forecast []Wave  // of the sea to come, in the order of time
	Run      sim.Run // Replications of the answer; choices take as many
}

// Wave is a significant wave height forecast.
type Wave struct {
	At     time.Time
	Height unit.Length
}

// Look makes the morning page of a voyage from a state. papers are what the state was read from. Where the context
// ends the page is nil.
func Look(ctx context.Context, v *voyage.Voyage, st *state.State, papers *riglog.Papers, asked Asked) (*morning.Page, error) {
	if !st.Home.IsZero() {
		v = v.WithDays(unit.Duration(st.Home.Sub(v.Plan.Sails).Seconds()))
	}
	x := sim.TakeUp(v, st)
	learned, err := Learn(v, x, papers)
	if err != nil {
		return nil, fmt.Errorf("nothing can be learned from the papers: %w", err)
	}
	var points []ship.SeaPoint
	for _, f := range asked.Forecast {
		points = append(points, ship.SeaPoint{At: f.At.Sub(v.Plan.Sails).Seconds(), Height: float64(f.Height)})
	}
	x.KnowSea(float64(st.Waves), points)
	l := &look{ctx: ctx, v: v, x: x, run: asked.Run}
	planned := sim.GoOn(ctx, x, sim.Choice{}, asked.Run)
	if planned.Stopped {
		return nil, ctx.Err()
	}
	p := l.page(planned)
	p.Learned = learned
	if err := l.leaveBy(p); err != nil {
		return nil, err
	}
	if err := l.choices(p, planned); err != nil {
		return nil, err
	}
	l.pace(p)
	p.Warnings = append(p.Warnings, st.Notes...)
	if !x.Known && st.Now.Item != state.None {
		p.Warnings = append(p.Warnings, "what is in hand could not be told from the log line by line: it is taken to begin now")
	}
	return p, nil
}

// look is one answer in the making.
type look struct {
	ctx context.Context
	v   *voyage.Voyage
	x   *sim.Start
	run sim.Run
}

// page fills in what going on as planned comes to.
func (l *look) page(o *sim.Onward) *morning.Page {
	v, st := l.v, l.x.State
	p := &morning.Page{Scenario: v.Plan.Title, Seed: l.run.Seed, Replications: o.Replications(), At: st.At, Sails: v.Plan.Sails, State: st, Known: l.x.Known,
		ArriveBy: v.Plan.Sails.Add(time.Duration(v.Deadline * float64(time.Second)))}
	if st.Now.Site != state.None {
		p.LocalAhead = int(math.Round(float64(v.Sites[st.Now.Site].Position.Longitude) / 15)) // 15 degrees an hour
		p.Where.Site, p.Where.Floor = v.Sites[st.Now.Site].Name, v.Sites[st.Now.Site].WaterDepth
		if n := st.Now.Item; n != state.None {
			p.Where.Hole = v.Sites[st.Items[n].Site].Items[st.Items[n].Number].Name
		}
	}
	home := o.Column(o.Constrained, statistics.ColDays)
	p.Home = statistics.Summarise(home)
	p.DaysLeft = statistics.Summarise(less(home, l.x.At))
	p.ChanceInTime = share(home, func(t float64) bool { return t <= v.Deadline })
	p.ChanceAll = mean(o.Column(o.Constrained, statistics.ColAll))
	p.ChancePrimary = mean(o.Column(o.Constrained, statistics.ColFirst))
	p.Recovered = statistics.Summarise(Recovered(o))
	for i, h := range sim.Horizons {
		p.Next = append(p.Next, morning.Ahead{Hours: h / 3600, Cored: statistics.Summarise(o.Deepened[i]), Recovered: statistics.Summarise(o.Metres[i])})
	}
	for i := range o.Cores {
		p.Shifts = append(p.Shifts, statistics.Summarise(o.Cores[i]))
	}
	for n := range v.Sites {
		for i := range v.Sites[n].Items {
			p.Items = append(p.Items, l.item(o, &v.Sites[n], &v.Sites[n].Items[i]))
		}
	}
	return p
}

// item is what becomes of a hole or task.
func (l *look) item(o *sim.Onward, site *voyage.Site, i *voyage.Item) morning.Item {
	x := &l.x.State.Items[i.Number]
	column := func(c int) []float64 { return o.Column(o.Constrained, o.Layout.Item(i.Number, c)) }
	m := morning.Item{Site: site.Name, Name: i.Name, Rank: i.Rank, Status: x.State.String(), Chance: mean(column(statistics.ItemDone)),
		Finished: statistics.Summarise(o.Finished[i.Number]), Depth: statistics.Summarise(column(statistics.ItemDepth)), Recovered: statistics.Summarise(column(statistics.ItemRecovered))}
	if x.State == state.InHand && l.x.State.Now.Hole.Lost {
		m.Status = "lost"
	}
	return m
}

// Recovered is the core recovered in all of each replication, m.
func Recovered(o *sim.Onward) []float64 {
	sum := make([]float64, o.Replications())
	for n := range sum {
		row := o.Row(o.Constrained, n)
		for t := statistics.ColTool; t < statistics.ColUsed; t += 3 {
			sum[n] += row[t+2]
		}
	}
	return sum
}

func less(values []float64, by float64) []float64 {
	out := slices.Clone(values)
	for i := range out {
		out[i] -= by
	}
	return out
}

func mean(values []float64) (sum float64) {
	n := 0
	for _, x := range values {
		if !math.IsNaN(x) {
			sum, n = sum+x, n+1
		}
	}
	return sum / float64(max(1, n))
}

func share(values []float64, holds func(float64) bool) float64 {
	n := 0
	for _, x := range values {
		if holds(x) {
			n++
		}
	}
	return float64(n) / float64(max(1, len(values)))
}

// pace splits how far behind the plan the ship is. What she did is worth so many calm days by the plan; the plan's own
// expeditions take so much more for sea and trouble.
func (l *look) pace(p *morning.Page) {
	st, v := l.x.State, l.v
	calm := sim.Estimate(v)
	worth := 0.0
	for n := range st.Items {
		x := &st.Items[n]
		took := float64(calm.Items[n])
		switch x.State {
		case state.Done:
			worth += took
		case state.InHand:
			item := &v.Sites[x.Site].Items[x.Number]
			if target := float64(item.AskedFor()); target > 0 {
				worth += took * math.Min(1, float64(x.Depth)/target)
			}
		}
	}
	last := -1
	for _, n := range v.Plan.Order {
		if v.Sites[n].Alternate {
			continue
		}
		if st.Sites[n].State == state.Done || st.Sites[n].State == state.InHand {
			before := 0.0
			if last >= 0 {
				before = float64(calm.Leaves[last])
			}
			worth += float64(calm.Arrives[n]) - before
		}
		last = n
	}
	plan := sim.Replicate(l.ctx, v, sim.Run{Seed: l.run.Seed, Replications: 400, Workers: l.run.Workers})
	if plan.Stopped || worth <= 0 {
		return
	}
	total := mean(plan.Column(plan.Unconstrained, statistics.ColDays))
	waits := mean(plan.Column(plan.Unconstrained, statistics.ColClass+int(activity.Waiting)))
	repairs := mean(plan.Column(plan.Unconstrained, statistics.ColClass+int(activity.Repair)))
	share := worth / float64(calm.Total)
	var waited, repaired, again float64
	for k, t := range st.Spent {
		switch activity.Kind(k).Of().Class {
		case activity.Waiting:
			waited += float64(t)
		case activity.Repair:
			repaired += float64(t)
		}
	}
	for n := range st.Items { // holes begun again, each as long as what the log gives the item beyond the plan's figure
		x := &st.Items[n]
		if x.Spudded > 1 && x.State == state.Done {
			again += math.Max(0, x.Ended.Sub(x.Began).Seconds()-float64(x.Lost)-float64(calm.Items[n]))
		}
	}
	b := &morning.Pace{Behind: l.x.At - share*total, Sea: waited - share*waits, Trouble: repaired - share*repairs, Scope: again}
	b.Rest = b.Behind - b.Sea - b.Trouble - b.Scope
	p.Pace = b
}
