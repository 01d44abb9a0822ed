package sensitivity

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"coredays/model/activity"
	"coredays/model/chance"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/random"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// spreadOver is spread evenly to both sides of a middle, at one level.
func spreadOver(middle, half float64, level spread.Level) spread.Quantity {
	q := simtest.Evenly(middle-half, middle+half)
	q.Shares = spread.All(level)
	return q
}

// influenced is how much each quantity matters in a simulation, and the share of each cause.
func influenced(t *testing.T, p *plan.Plan, replications int) (*voyage.Voyage, []result.Influence, map[string]float64) {
	t.Helper()
	r := sim.Replicate(t.Context(), simtest.Compiled(t, p), sim.Run{Seed: 3, Replications: replications})
	causes := map[string]float64{}
	for _, d := range r.Summary().Drivers {
		causes[d.Name] = d.Share
	}
	return r.Layout.Voyage, Sensitivity(t.Context(), r), causes
}

// within gives a share that is not what it must be.
func within(t *testing.T, what string, got, want, by float64) {
	t.Helper()
	if !(math.Abs(got-want) <= by) {
		t.Errorf("%s has a share of %.3f, want %.3f within %.3f", what, got, want, by)
	}
}

// One number alone varies, so the whole variance is its own, at whatever level it does, and however many holes
// there are where it does not count. Of an even spread a cubic in the normal score says 99.5 %: by
// hand, 12 (1/(4 pi) + 1/(96 pi)) = 0.9947.
func TestTheOnlySpreadHasAllOfTheVariance(t *testing.T) {
	for level := range spread.Levels {
		for _, holes := range [][]plan.Item{
			{simtest.RotaryHole("R", 120)},
			{simtest.RotaryHole("R", 120), simtest.PistonHole("A", 100), simtest.PistonHole("B", 100), simtest.PistonHole("C", 100)},
			{simtest.RotaryHole("R", 120), simtest.RotaryHole("Q", 60)},
		} {
			p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, holes...))
			p.Ship.Rates[rig.RotaryDurationFactor] = spreadOver(1, 0.5, level)
			_, influences, causes := influenced(t, p, 500)
			by := 0.02
			if level == spread.Run {
				by = 0.06 // cores differ in length and in the way up, and the mean of their scores is what is given
			}
			within(t, "the pace, by "+level.String(), influences[rig.RotaryDurationFactor].Share, 1, by)
			within(t, "coring, by "+level.String(), causes[activity.OfRotating.String()], 1, 0.03)
			if first := influences[rig.RotaryDurationFactor].Causes[0]; first.Name != activity.OfRotating.String() {
				t.Errorf("the pace lies in %v", first)
			}
		}
	}
}

// A task and positioning are spread evenly, one twice as wide as the other: by hand the variances are as 4 to
// 1. Both the causes and the numbers have 80 and 20 %.
func TestTwoSpreadsShareAsTheirVariances(t *testing.T) {
	p := simtest.Tasks(spreadOver(20*simtest.Hours, 8*simtest.Hours, spread.Run))
	p.Ship.Rates[rig.Positioning] = spreadOver(5*simtest.Hours, 4*simtest.Hours, spread.Expedition)
	v, influences, causes := influenced(t, p, 2000)
	within(t, "the task", influences[v.Sites[0].Items[0].Takes[0]].Share, 0.8, 0.03)
	within(t, "positioning", influences[rig.Positioning].Share, 0.2, 0.03)
	within(t, "tasks", causes[activity.OfTasks.String()], 0.8, 0.03)
	within(t, "rig-up", causes[activity.OfRigUp.String()], 0.2, 0.03)
	if d := sim.Replicate(t.Context(), simtest.Compiled(t, p), sim.Run{Seed: 3, Replications: 100}).Summary().Drivers; d[0].Name != activity.OfTasks.String() {
		t.Errorf("%v comes first", d[0])
	}
}

// A number's share is part of that of the causes that it lies in, and its parts add up to it. Here each cause has one number,
// and the rest of what a cause has is noise.
func TestANumbersShareIsPartOfItsCauses(t *testing.T) {
	p := simtest.Tasks(spreadOver(20*simtest.Hours, 8*simtest.Hours, spread.Site))
	p.Ship.Rates[rig.Positioning] = spreadOver(5*simtest.Hours, 4*simtest.Hours, spread.Hole)
	v, influences, causes := influenced(t, p, 2000)
	for id, cause := range map[voyage.Quantity]activity.Cause{v.Sites[0].Items[0].Takes[0]: activity.OfTasks, voyage.Quantity(rig.Positioning): activity.OfRigUp} {
		sum, i := 0.0, influences[id]
		for _, c := range i.Causes {
			sum += c.Share
		}
		within(t, "all parts", sum, i.Share, 1e-12)
		at := slices.IndexFunc(i.Causes, func(d result.Driver) bool { return d.Name == cause.String() })
		within(t, cause.String()+", of its number", i.Causes[at].Share, causes[cause.String()], 0.02)
	}
}

// Two paces that have a factor in common: by hand, with parts a and b of the days and a correlation of c squared, the
// first has a(a+bc^2) of the variance a^2+b^2+2abc^2, and the second the rest. Squared correlations would give
// 0.92 and 0.49 and add up to 1.41.
func TestWhatIsInCommonIsSharedAsItWorks(t *testing.T) {
	const a, b, c = 6 * simtest.Hours, 3 * simtest.Hours, 0.75
	p := simtest.Tasks(simtest.Just(20 * simtest.Hours))
	for r, half := range map[rig.Rate]float64{rig.Positioning: a, rig.Securing: b} {
		q := spreadOver(10*simtest.Hours, half, spread.Expedition)
		q.Common = c
		p.Ship.Rates[r] = q
	}
	_, influences, _ := influenced(t, p, 2000)
	whole := a*a + b*b + 2*a*b*c*c
	within(t, "the first", influences[rig.Positioning].Share, a*(a+b*c*c)/whole, 0.03)
	within(t, "the second", influences[rig.Securing].Share, b*(b+a*c*c)/whole, 0.03)
}

// Two sites have the same ground, whose rate is the same all expedition long. Each has half of its share.
func TestWhatTwoSitesDrawAlikeIsHalved(t *testing.T) {
	near, far := simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.RotaryHole("R", 120)), simtest.Site("T", geo.Position{Longitude: 2}, 1500, simtest.RotaryHole("R", 120))
	for _, s := range []*plan.Site{&near, &far} {
		s.Layers[0].Lithology.Rate = spreadOver(10/simtest.Hours, 5/simtest.Hours, spread.Expedition)
	}
	v, influences, _ := influenced(t, simtest.Expedition(near, far), 500)
	for i := range v.Sites {
		within(t, v.Sites[i].Name, influences[v.Sites[i].Layers[0].Rate].Share, 0.5, 0.02)
	}
}

// What has no spread, or is drawn nowhere, has no share; what is drawn and moves no day has nothing but chance.
func TestWhatMovesNoDayHasNoShare(t *testing.T) {
	p := simtest.Tasks(spreadOver(20*simtest.Hours, 8*simtest.Hours, spread.Run))
	p.Ship.Rates[rig.RotaryDurationFactor] = spreadOver(1, 0.5, spread.Run)
	p.InPort = spreadOver(50*simtest.Hours, 40*simtest.Hours, spread.Run)
	v, influences, _ := influenced(t, p, 300)
	for name, id := range map[string]voyage.Quantity{"a fixed rate": voyage.Quantity(rig.Connection), "a pace that is never drawn": voyage.Quantity(rig.RotaryDurationFactor), "days in port": v.InPort} {
		if !math.IsNaN(influences[id].Share) {
			t.Errorf("%s has a share of %g", name, influences[id].Share)
		}
	}
}

// Of quantities that are drawn and do not matter about one in a hundred is given to: of 4,000 that is 40, give or
// take four times the deviation of 6.3.
func TestWhatMayBeChanceIsNotTold(t *testing.T) {
	told := 0
	for seed := range uint64(4000) {
		stream := chance.Replication(seed, 1<<40)
		if madeUpInfluence(t, seed, 60, func(n int, _ float64) float64 { return stream.Normal(n) }).Share != 0 {
			told++
		}
	}
	if math.Abs(float64(told)-40) > 25 {
		t.Errorf("%d of 4000 are told", told)
	}
}

// Days of which one of six scores has four fifths are given so, on average over few replications: six
// regressors for 40 replications would tell 0.8+0.2*6/39 = 0.83 if that were not taken off.
func TestManyRegressorsOfFewReplicationsTellNoMoreThanThereIs(t *testing.T) {
	sum := 0.0
	const experiments = 400
	for seed := range uint64(experiments) {
		stream := chance.Replication(seed, 1<<40)
		sum += madeUpInfluence(t, seed, 40, func(n int, score float64) float64 { return 2*score + stream.Normal(n) }).Share
	}
	within(t, "the quantity", sum/experiments, 0.8, 0.012)
}

// madeUpInfluence is that of a quantity with a score in each of six holes, where the days of so many replications
// are made of the score in the first.
func madeUpInfluence(t *testing.T, seed uint64, replications int, days func(n int, score float64) float64) result.Influence {
	t.Helper()
	v := &voyage.Voyage{Quantities: []spread.Drawn{spreadOver(2, 1, spread.Hole).Compile()}, Purposes: []chance.Key{7}, Above: []chance.Key{7}}
	var places []random.UsedAt
	for i := range 6 {
		places = append(places, random.UsedAt{Place: random.Place{Site: 1, Hole: chance.Key(i)}})
	}
	scores, s := random.ScoresOf(v, 0, places, nil), random.New(v)
	var numbers []int
	var rows []float64
	for n := range replications {
		s.Stream = chance.Replication(seed, n)
		numbers, rows = append(numbers, n), append(rows, days(n, s.Score(&scores[0])))
	}
	return fitOf(seed, numbers, rows, 1).influence(&s, scores)
}

// One expedition in a thousand waits for a year. It is left aside, and so tasks, which vary in all the others, have the whole.
func TestOneThatWaitsForAYearDoesNotTakeTheWhole(t *testing.T) {
	r := sim.Replicate(t.Context(), simtest.Compiled(t, simtest.Tasks(spreadOver(20*simtest.Hours, 8*simtest.Hours, spread.Run))), sim.Run{Seed: 3, Replications: 1000})
	late := r.Unconstrained[500*r.Layout.Width:]
	late[statistics.ColCause+int(activity.OfWeather)] += 365 * simtest.Day
	late[statistics.ColDays] += 365 * simtest.Day
	drivers := r.Summary().Drivers
	if !slices.IsSortedFunc(drivers, func(a, b result.Driver) int { return cmp.Compare(b.Share, a.Share) }) {
		t.Errorf("not the largest first: %v", drivers)
	}
	for _, d := range drivers {
		if d.Name == activity.OfTasks.String() {
			within(t, d.Name, d.Share, 1, 1e-9)
		}
	}
	if n := len(r.Usual()); n != 980 {
		t.Errorf("%d of 1000 are usual, by hand 980", n)
	}
	id := r.Layout.Voyage.Sites[0].Items[0].Takes[0]
	within(t, "the task", Sensitivity(t.Context(), r)[id].Share, 1, 0.02)
}
