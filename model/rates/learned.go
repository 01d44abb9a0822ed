package rates

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/spread"
)

func tripleOf(q *spread.Quantity) Triple {
	return Triple{q.Shape.Quantile(0.1), q.Median(), q.Shape.Quantile(0.9)}
}

// through are the low, even and high values of a quantity whose score is known.
func through(q *spread.Quantity, s learn.Score) (t Triple) {
	d := q.Compile()
	for i, p := range []float64{0.1, 0.5, 0.9} {
		t[i] = d.At(s.Mean + s.SD*spread.Score(p))
	}
	return t
}

// quantity is a rate to use, as a quantity for what is learned after it.
func (r *Rate) quantity() spread.Quantity {
	return spread.Quantity{Shape: spread.Fixed(r.Use[1]), Shares: r.Shares}
}

const (
	// prior is how many observations the ship's own spread between runs is worth [judgement].
	prior = 10.0
	// mostOutside is the share of values that may lie outside of what the ship's figure allows before its bounds give
	// way to a spread without them [judgement].
	mostOutside = 0.1
	// Fewer cycles or times, or stands, than these are little to go by (common practice).
	manyTimes  = 10
	manyStands = 100
)

// learn makes rates of the observations.
func (g *gatherer) learn() (list []Rate) {
	for of := range rig.Rates {
		if len(g.samples[of]) > 0 {
			list = append(list, g.rate(of, g.samples[of]))
		}
	}
	return list
}

// rate is what the observations of one rate say.
func (g *gatherer) rate(of rig.Rate, samples []sample) Rate {
	q := open(loosened(g.ship[of], spread.Shares{spread.Expedition: 0.5, spread.Run: 0.5}))
	r := Rate{Of: of, N: len(samples), Unit: g.unit[of], Along: g.axis[of], Ship: tripleOf(&q), Identified: true, Persists: q.Persistence}
	if g.ship[of].IsFixed() {
		r.Ship = Triple{g.median(of), g.median(of), g.median(of)}
	}
	seen := placed(g.steadied(of, samples))
	var exact []float64
	for i, s := range samples {
		r.Exposure += s.exposure
		x := s.along
		if x == 0 || math.IsNaN(x) {
			x = float64(i + 1)
		}
		r.Points = append(r.Points, Point{x, s.value, s.bound != learn.Exactly})
		if !s.from.IsZero() {
			r.From, r.To = earlier(r.From, s.from), later(r.To, s.to)
		}
		if s.bound == learn.Exactly {
			exact = append(exact, s.value)
		} else {
			r.Bounds++
		}
	}
	if len(exact) > 0 {
		r.Log = quantiles(exact)
	} else {
		r.Log = Triple{math.NaN(), math.NaN(), math.NaN()}
	}
	q = g.unbounded(q, seen)
	scatter := runScatter(q, seen)
	q.Shares[spread.Run] *= scatter
	hidden := g.hidden(of, &q, samples)
	q.Shares[spread.Hole] += hidden
	p, err := learn.From(learn.Evidence{Of: q, Seen: seen})
	if err != nil {
		r.Use, r.Identified, r.Why, r.Shares = r.Ship, false, err.Error(), q.Shares
		return r
	}
	next := p.Total(0, elsewhere)
	next.SD = math.Sqrt(next.SD*next.SD - hidden)
	q.Shares[spread.Hole] -= hidden
	trust := enough(&r)
	r.Use = through(&q, trusted(next, trust))
	e := trusted(p.Of(learn.Factor{Level: spread.Expedition}), trust)
	r.Shares = q.Shares
	r.Shares[spread.Expedition] *= e.SD * e.SD
	normalise(&r.Shares)
	r.Why = g.little(&r)
	return r
}

// enough is the share of the work seen of that from which a rate is taken to say what it seems to say, at most 1. A first few
// cores are of one shift, one hole and one spell of weather: they are alike beyond what the levels know of, which were fitted
// to whole holes [judgement].
func enough(r *Rate) float64 {
	if r.Unit == "stands" {
		return math.Min(1, r.Exposure/manyStands)
	}
	return math.Min(1, float64(r.N)/manyTimes)
}

// trusted is a score of which so much is taken over: the mean and variance of a mixture of what was learned, with that weight,
// and of what was known before, a standard normal score, with the rest (law of total variance).
func trusted(s learn.Score, share float64) learn.Score {
	return learn.Score{Mean: share * s.Mean, SD: math.Sqrt(share*s.SD*s.SD + 1 - share + share*(1-share)*s.Mean*s.Mean)}
}

// unsure is the share of the variance of a figure, stated as varying by run alone, by which a ship's own mean may
// differ from it [judgement]. Without it no log, however long, could move the figure.
const unsure = 0.2

// between is the share of the variance that lies between runs of a figure that is stated as varying by expedition, site
// or hole alone [judgement]: no two trips take the same.
const between = 0.1

// open leaves room for a mean of the ship's own, and for runs that differ.
func open(q spread.Quantity) spread.Quantity {
	switch q.Shares[spread.Run] {
	case 1:
		q.Shares = spread.Shares{spread.Expedition: unsure, spread.Run: 1 - unsure}
	case 0:
		for l := range q.Shares {
			q.Shares[l] *= 1 - between
		}
		q.Shares[spread.Run] = between
	}
	return q
}

// elsewhere is a site that nothing was observed at: what is learned is for the sites to come.
var elsewhere = learn.Place{Site: -1}

// placed numbers sites and holes.
func placed(samples []sample) (seen []learn.Observation) {
	sites, holes := map[string]int{}, map[[2]string]int{}
	for _, s := range samples {
		site, known := sites[s.site]
		if !known {
			site = len(sites)
			sites[s.site] = site
		}
		hole, known := holes[[2]string{s.site, s.hole}]
		if !known {
			hole = len(holes)
			holes[[2]string{s.site, s.hole}] = hole
		}
		seen = append(seen, learn.Observation{At: learn.Place{Site: site, Hole: hole}, Run: s.run, Value: s.value, Bound: s.bound, Error: s.err})
	}
	return seen
}

// unbounded gives way where the log has what the ship's figure does not allow: a lognormal through its median, as
// wide as the wider of its sides.
func (g *gatherer) unbounded(q spread.Quantity, seen []learn.Observation) spread.Quantity {
	p, err := learn.From(learn.Evidence{Of: q, Seen: seen})
	if err != nil || float64(p.Outside[0]) <= mostOutside*float64(len(seen)) {
		return q
	}
	t := tripleOf(&q)
	factor := math.Max(stated, math.Max(t[2]/t[1], t[1]/t[0]))
	if shape, err := spread.NewLognormal(t[1], factor); err == nil {
		q.Shape = shape
	}
	return q
}

// runScatter is how many times the variance between runs at one place is the ship's, from how the scores scatter about
// the mean of their place: the scaled inverse chi-squared distribution is conjugate to a variance, and its mean is taken
// as prior observations pull it (Gelman et al. 2013, ch. 2.6 and 3.2, from memory).
func runScatter(q spread.Quantity, seen []learn.Observation) float64 {
	w2 := q.Shares[spread.Run]
	if w2 == 0 {
		return 1
	}
	places := map[learn.Place][]learn.Reading{}
	for _, r := range learn.Readings(q, seen) {
		places[r.At] = append(places[r.At], r)
	}
	squares, free := 0.0, 0.0
	for _, at := range places {
		mean, weight := 0.0, 0.0
		for _, r := range at {
			w := 1 / (w2 + r.Error*r.Error)
			mean, weight = mean+w*r.Score, weight+w
		}
		mean /= weight
		for _, r := range at {
			squares += (r.Score - mean) * (r.Score - mean) / (w2 + r.Error*r.Error)
		}
		free += float64(len(at) - 1)
	}
	if free < 2 {
		return 1
	}
	return (prior + squares) / (prior + free)
}

func normalise(s *spread.Shares) {
	sum := 0.0
	for _, x := range s {
		sum += x
	}
	for l := range s {
		s[l] /= sum
	}
}

// little says of a rate that few observations keep near the ship's, or what kept it from being identified.
func (g *gatherer) little(r *Rate) string {
	switch {
	case r.Bounds == r.N:
		return "only bounds are known: the bench sets the cycle, or the work was cut short"
	case r.Unit == "stands" && r.Exposure < manyStands:
		return fmt.Sprintf("little: %.0f stands, of %d that are wanted before a rate moves much", r.Exposure, manyStands)
	case r.Unit != "stands" && r.N < manyTimes:
		unit := r.Unit
		if r.N == 1 {
			unit = strings.TrimSuffix(unit, "s")
		}
		return fmt.Sprintf("little: %d %s, of %d that are wanted before a rate moves much", r.N, unit, manyTimes)
	}
	return ""
}

func earlier(a, b time.Time) time.Time {
	if a.IsZero() || b.Before(a) {
		return b
	}
	return a
}

func later(a, b time.Time) time.Time {
	if b.After(a) {
		return b
	}
	return a
}

// inOrder sorts rates as a ship file has them.
func inOrder(list []Rate) {
	slices.SortStableFunc(list, func(a, b Rate) int { return int(a.Of) - int(b.Of) })
}
