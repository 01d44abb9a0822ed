package learn

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat"

	"coredays/model/spread"
)

// linear has a value that is its score times 2, plus 10, so that scores are known exactly.
type linear struct{}

func (linear) Quantile(p float64) float64 { return 10 + 2*spread.Score(p) }

func valueAt(score float64) float64 { return 10 + 2*score }

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.8g, want %.8g", what, got, want)
	}
}

// fine is what the table of 161 nodes and the search for a score leave of the last digits.
const fine = 2e-6

// Normal prior, normal readings, by hand: half of the variance lives at the expedition, half at the run. Scores
// 1.0, 0.4 and 1.6 have a mean of 1.0. Of the expedition's weighted score x (variance 0.5) three readings with
// variance 0.5 have precision 6 against the prior's 2: mean 6/8 of 1.0, variance 1/8. Divided by the weight,
// the root of 0.5: mean 0.75 x 1.41421, sd 0.35355 x 1.41421.
func TestExpeditionsScoreIsTheNormalNormalByHand(t *testing.T) {
	q := spread.Quantity{Shape: linear{}, Shares: spread.Shares{spread.Expedition: 0.5, spread.Run: 0.5}}
	p, err := From(Evidence{Of: q, Seen: []Observation{{Run: 1, Value: valueAt(1)}, {Run: 2, Value: valueAt(0.4)}, {Run: 3, Value: valueAt(1.6)}}})
	if err != nil {
		t.Fatal(err)
	}
	got := p.Of(Factor{0, spread.Expedition, Place{}})
	near(t, "mean", got.Mean, 0.75*math.Sqrt2, fine)
	near(t, "sd", got.SD, 0.5, fine)
	total := p.Total(0, Place{})
	near(t, "mean of the next run", total.Mean, 0.75, fine)
	near(t, "sd of the next run", total.SD, math.Sqrt(1.0/8+0.5), fine)
	other := p.Total(0, Place{Site: 5})
	near(t, "mean of the next run at another site", other.Mean, 0.75, fine)
}

// Where nothing was observed everything is as stated.
func TestWithoutObservationsNothingIsLearned(t *testing.T) {
	q := spread.Quantity{Shape: linear{}, Shares: spread.Shares{0.2, 0.3, 0.1, 0.4}, Persistence: 0.5}
	p, err := From(Evidence{Of: q})
	if err != nil {
		t.Fatal(err)
	}
	for _, at := range []Place{{}, {1, 2}} {
		near(t, "mean", p.Total(0, at).Mean, 0, 1e-12)
		near(t, "sd", p.Total(0, at).SD, 1, 1e-12)
	}
}

// nested has two quantities tied by a common factor, three sites, up to three holes, runs that persist in one of them.
func nested() []Evidence {
	a := spread.Quantity{Shape: linear{}, Shares: spread.Shares{0.35, 0.25, 0.15, 0.25}, Persistence: 0.6, Common: 0.5}
	b := spread.Quantity{Shape: linear{}, Shares: spread.Shares{0.3, 0, 0.3, 0.4}, Common: -0.7}
	random := rand.New(rand.NewPCG(7, 7))
	var seen [2][]Observation
	for site := range 3 {
		for hole := range site + 1 {
			for run := range 4 {
				seen[0] = append(seen[0], Observation{At: Place{site, hole}, Run: run + run/2, Value: valueAt(0.8*random.NormFloat64() - 0.5), Error: 0.2})
				seen[1] = append(seen[1], Observation{At: Place{site, hole}, Run: run, Value: valueAt(0.8 * random.NormFloat64()), Error: 0.1 * float64(1+run%2)})
			}
		}
	}
	return []Evidence{{Of: a, Seen: seen[0]}, {Of: b, Seen: seen[1]}}
}

// reference writes every score as a row of weights on independent standard normal sources (common, own, sites,
// holes, and the shocks of each chain of runs), and solves for the sources in the form of information: a
// different way to the same distribution, without any covariance of two observations.
type reference struct {
	sources map[any]int
	rows    []map[int]float64
	noise   []float64
	y       []float64
}

func (r *reference) source(key any) int {
	n, known := r.sources[key]
	if !known {
		n = len(r.sources)
		r.sources[key] = n
	}
	return n
}

func (r *reference) levels(of int, q *spread.Quantity, at Place) map[int]float64 {
	row := map[int]float64{}
	e := math.Sqrt(q.Shares[spread.Expedition])
	row[r.source("common")] = e * q.Common
	row[r.source([2]any{"own", of})] = e * math.Sqrt(1-q.Common*q.Common)
	row[r.source([3]any{"site", of, at.Site})] = math.Sqrt(q.Shares[spread.Site])
	row[r.source([3]any{"hole", of, at})] = math.Sqrt(q.Shares[spread.Hole])
	return row
}

func (r *reference) observes(of int, e *Evidence) {
	for _, o := range e.Seen {
		row := r.levels(of, &e.Of, o.At)
		w, c := math.Sqrt(e.Of.Shares[spread.Run]), e.Of.Persistence
		for k := 0; k <= o.Run; k++ { // the k-th shock has died down by c for each run since
			size := 1.0
			if k > 0 {
				size = math.Sqrt(1 - c*c)
			}
			row[r.source([4]any{"shock", of, o.At, k})] = w * size * math.Pow(c, float64(o.Run-k))
		}
		r.rows, r.noise, r.y = append(r.rows, row), append(r.noise, o.Error/2), append(r.y, (o.Value-10)/2)
	}
}

// solve is mean and variance of a sum of sources.
func (r *reference) solve(t *testing.T) (mean func(map[int]float64) float64, variance func(map[int]float64) float64) {
	n := len(r.sources)
	precision, shift := mat.NewDense(n, n, nil), mat.NewVecDense(n, nil)
	for i := range n {
		precision.Set(i, i, 1)
	}
	for k, row := range r.rows {
		w := 1 / (r.noise[k] * r.noise[k])
		for i, a := range row {
			shift.SetVec(i, shift.AtVec(i)+a*r.y[k]*w)
			for j, b := range row {
				precision.Set(i, j, precision.At(i, j)+a*b*w)
			}
		}
	}
	var cov mat.Dense
	if err := cov.Inverse(precision); err != nil {
		t.Fatal(err)
	}
	var m mat.VecDense
	m.MulVec(&cov, shift)
	mean = func(row map[int]float64) (sum float64) {
		for i, a := range row {
			sum += a * m.AtVec(i)
		}
		return sum
	}
	variance = func(row map[int]float64) (sum float64) {
		for i, a := range row {
			for j, b := range row {
				sum += a * b * cov.At(i, j)
			}
		}
		return sum
	}
	return mean, variance
}

func TestNestedLevelsAreThoseOfTheWholeMultivariateNormal(t *testing.T) {
	evidence := nested()
	p, err := From(evidence...)
	if err != nil {
		t.Fatal(err)
	}
	r := &reference{sources: map[any]int{}}
	for n := range evidence {
		r.observes(n, &evidence[n])
	}
	mean, variance := r.solve(t)
	for i, f := range p.Factors {
		var row map[int]float64
		switch {
		case f.Of == Common:
			row = map[int]float64{r.source("common"): 1}
		case f.Level == spread.Expedition:
			c := evidence[f.Of].Of.Common
			row = map[int]float64{r.source("common"): c, r.source([2]any{"own", f.Of}): math.Sqrt(1 - c*c)}
		case f.Level == spread.Site:
			row = map[int]float64{r.source([3]any{"site", f.Of, f.At.Site}): 1}
		case f.Level == spread.Hole:
			row = map[int]float64{r.source([3]any{"hole", f.Of, f.At}): 1}
		default:
			continue // the last run is held below, as part of the next
		}
		near(t, "mean", p.Mean.AtVec(i), mean(row), 1e-5)
		near(t, "variance", p.Cov.At(i, i), variance(row), 1e-5)
	}
	for of := range evidence {
		q := &evidence[of].Of
		row := r.levels(of, q, Place{2, 1})
		w, c, last := math.Sqrt(q.Shares[spread.Run]), q.Persistence, 4
		for k := 0; c > 0 && k <= last; k++ { // the last run observed there has the number 4
			size := 1.0
			if k > 0 {
				size = math.Sqrt(1 - c*c)
			}
			row[r.source([4]any{"shock", of, Place{2, 1}, k})] += w * size * math.Pow(c, float64(last+1-k))
		}
		total := p.Total(of, Place{2, 1})
		near(t, "mean of the next run", total.Mean, mean(row), 1e-5)
		near(t, "variance of the next run", total.SD*total.SD, variance(row)+w*w*(1-c*c), 1e-5)
	}
}

// What is drawn has the means and covariances of the posterior.
func TestDrawsAreOfThePosterior(t *testing.T) {
	p, err := From(nested()...)
	if err != nil {
		t.Fatal(err)
	}
	const n = 40000
	random := rand.New(rand.NewPCG(3, 4))
	columns := make([][]float64, len(p.Factors))
	for range n {
		for i, x := range p.Draw(func(int) float64 { return random.NormFloat64() }) {
			columns[i] = append(columns[i], x)
		}
	}
	for i := range columns {
		m, sd := stat.MeanStdDev(columns[i], nil)
		want := math.Sqrt(p.Cov.At(i, i))
		near(t, "mean drawn", m, p.Mean.AtVec(i), 5*want/math.Sqrt(n))
		near(t, "sd drawn", sd, want, 5*want/math.Sqrt(2*n))
	}
	got, want := stat.Correlation(columns[1], columns[2], nil), p.Cov.At(1, 2)/math.Sqrt(p.Cov.At(1, 1)*p.Cov.At(2, 2))
	near(t, "correlation drawn", got, want, 5/math.Sqrt(n))
}

// A hundred readings of one hole put together are those hundred apart: with an error that differs in the twelfth
// figure they are not put together.
func TestReadingsPutTogetherAreAsGoodAsApart(t *testing.T) {
	q := spread.Quantity{Shape: linear{}, Shares: spread.Shares{0.3, 0.3, 0.1, 0.3}}
	random := rand.New(rand.NewPCG(1, 2))
	var alike, apart []Observation
	for i := range 100 {
		o := Observation{At: Place{i % 2, 0}, Value: valueAt(random.NormFloat64()), Error: 0.3}
		alike = append(alike, o)
		o.Error += 1e-12 * float64(i)
		apart = append(apart, o)
	}
	a, err := From(Evidence{Of: q, Seen: alike})
	if err != nil {
		t.Fatal(err)
	}
	b, err := From(Evidence{Of: q, Seen: apart})
	if err != nil {
		t.Fatal(err)
	}
	for _, at := range []Place{{}, {1, 0}, {4, 4}} {
		near(t, "mean", a.Total(0, at).Mean, b.Total(0, at).Mean, 1e-9)
		near(t, "sd", a.Total(0, at).SD, b.Total(0, at).SD, 1e-9)
	}
}

// The mean of four runs is four runs with that mean.
func TestMeanOfRunsIsWorthAsManyRuns(t *testing.T) {
	q := spread.Quantity{Shape: linear{}, Shares: spread.Shares{0.5, 0, 0, 0.5}}
	var four []Observation
	for _, score := range []float64{0.2, 0.6, 1.1, 1.3} {
		four = append(four, Observation{Value: valueAt(score)})
	}
	a, err := From(Evidence{Of: q, Seen: four})
	if err != nil {
		t.Fatal(err)
	}
	b, err := From(Evidence{Of: q, Seen: []Observation{{Value: valueAt(0.8), Mean: 4}}})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "mean", b.Total(0, Place{}).Mean, a.Total(0, Place{}).Mean, fine)
	near(t, "sd", b.Total(0, Place{}).SD, a.Total(0, Place{}).SD, fine)
}

func TestContradictionsAndSpreadlessQuantitiesAreRefused(t *testing.T) {
	if _, err := From(Evidence{Of: spread.Just(3), Seen: []Observation{{Value: 3}}}); err == nil {
		t.Error("a fixed quantity learned something")
	}
	q := spread.Quantity{Shape: linear{}, Shares: spread.All(spread.Expedition)}
	if _, err := From(Evidence{Of: q, Seen: []Observation{{Value: 9, Error: 1e-9}, {Value: 11}}}); err == nil {
		t.Error("two values of one score were both believed")
	}
}

// A value that the shape does not allow is counted, and taken as the furthest score.
func TestValuesOutsideTheShapeAreCounted(t *testing.T) {
	shape, err := spread.NewUniform(0, 1)
	if err != nil {
		t.Fatal(err)
	}
	q := spread.Quantity{Shape: shape, Shares: spread.Shares{0.5, 0, 0, 0.5}}
	p, err := From(Evidence{Of: q, Seen: []Observation{{Value: -3}, {Value: 0.5}, {Value: 7}, {Value: 8}}})
	if err != nil {
		t.Fatal(err)
	}
	if p.Outside[0] != 3 {
		t.Errorf("%d values outside, want 3", p.Outside[0])
	}
	near(t, "mean of scores -4, 0, 4, 4 with half the variance", p.Total(0, Place{}).Mean, 0.8, 1e-3) // 4/5 of 1
}

// A value that its reading brings beyond the shape is of the shape: 1.02 read to 0.02, where none is above 1.
func TestAValueThatItsReadingBringsOutsideIsNotCounted(t *testing.T) {
	shape, err := spread.NewUniform(0, 1)
	if err != nil {
		t.Fatal(err)
	}
	q := spread.Quantity{Shape: shape, Shares: spread.Shares{0.5, 0, 0, 0.5}}
	for reading, want := range map[float64]int{0.02: 0, 0.009: 2, 0: 2} {
		p, err := From(Evidence{Of: q, Seen: []Observation{{Value: 1.02, Error: reading}, {Value: -0.02, Error: reading}}})
		if err != nil {
			t.Fatal(err)
		}
		if p.Outside[0] != want {
			t.Errorf("read to %g: %d values outside, want %d", reading, p.Outside[0], want)
		}
	}
}

// Two quantities with their levels above the run in common, by hand: of the expedition's weighted score x (variance 0.5)
// a score of 1 with a run's variance of 0.5 tells mean 0.5 and variance 0.25, and so of the other quantity, whose run has
// 0.5 of its own. With scores of their own the other one learns nothing, nor does it from the other's runs.
func TestWhatIsLearnedOfOneTellsOfThoseThatHaveItsLevels(t *testing.T) {
	q := spread.Quantity{Shape: linear{}, Shares: spread.Shares{spread.Expedition: 0.3, spread.Site: 0.2, spread.Run: 0.5}, Persistence: 0.4}
	seen := []Observation{{Run: 1, Value: valueAt(1)}}
	for _, c := range []struct {
		above    uint64
		at       Place
		mean, va float64
	}{{7, Place{}, 0.5, 0.75}, {7, Place{Site: 3}, 0.3, 0.91}, {0, Place{}, 0, 1}} {
		p, err := From(Evidence{Of: q, Seen: seen, Above: c.above}, Evidence{Of: q, Above: c.above})
		if err != nil {
			t.Fatal(err)
		}
		got := p.Total(1, c.at)
		near(t, "mean of the other", got.Mean, c.mean, fine)
		near(t, "sd of the other", got.SD, math.Sqrt(c.va), fine)
	}
}

// Seen of both, by hand: scores of 1 and 0.4, each with a run's variance of 0.5, are two readings of one x with a variance
// of 0.5: precision 6, mean (2 + 0.8) / 6, whichever quantity comes next.
func TestValuesOfBothTellOfWhatTheyHaveInCommon(t *testing.T) {
	q := spread.Quantity{Shape: linear{}, Shares: spread.Shares{spread.Expedition: 0.2, spread.Site: 0.2, spread.Hole: 0.1, spread.Run: 0.5}}
	p, err := From(Evidence{Of: q, Seen: []Observation{{Value: valueAt(1)}}, Above: 7}, Evidence{Of: q, Seen: []Observation{{Value: valueAt(0.4)}}, Above: 7})
	if err != nil {
		t.Fatal(err)
	}
	for of := range 2 {
		got := p.Total(of, Place{})
		near(t, "mean", got.Mean, 2.8/6, fine)
		near(t, "sd", got.SD, math.Sqrt(1.0/6+0.5), fine)
	}
}

// What is known of the next run is the same to the last bit however often it is asked: pages are the same bytes.
func TestTotalIsTheSameToTheLastBit(t *testing.T) {
	p, err := From(nested()...)
	if err != nil {
		t.Fatal(err)
	}
	first := p.Total(0, Place{2, 1})
	for range 100 {
		if again := p.Total(0, Place{2, 1}); again != first {
			t.Fatalf("%v, and then %v", first, again)
		}
	}
}
