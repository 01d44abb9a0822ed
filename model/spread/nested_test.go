package spread_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat"

	"coredays/model/chance"
	"coredays/model/spread"
)

// Fitted shares of the piston cycle, with a part of the hole's moved to the site.
var shares = spread.Shares{0.33, 0.14, 0.30, 0.23}

const expeditions = 30_000

// drawing is a quantity drawn in two sites of two holes of two runs of one expedition.
type drawing [2][2][2]float64

// draw adds up the scores of the levels, each of its own key.
func draw(d *spread.Drawn, expedition int) (values drawing) {
	stream := chance.Replication(7, expedition)
	at := func(names ...string) chance.Source { return stream.For(chance.KeyOf(names...)) }
	number := []string{"1", "2"}
	for s := range 2 {
		for h := range 2 {
			for r := range 2 {
				score := d.Weight[spread.Expedition]*at("expedition").Normal(0) + d.Weight[spread.Site]*at("site", number[s]).Normal(0) +
					d.Weight[spread.Hole]*at("hole", number[s], number[h]).Normal(0) + d.Weight[spread.Run]*at("run", number[s], number[h]).Normal(r)
				values[s][h][r] = d.At(score)
			}
		}
	}
	return values
}

// The levels' scores add up to a standard normal one, so the marginal is the shape: the count below each
// of its quantiles is binomial.
func TestDrawsAtLevelsHaveTheStatedShape(t *testing.T) {
	m, err := spread.NewMetalog(spread.Triple{Low: 2, Mid: 5, High: 9}, 0, 20)
	if err != nil {
		t.Fatal(err)
	}
	d := spread.Quantity{Shape: m, Shares: shares}.Compile()
	values := make([]float64, expeditions)
	for e := range values {
		values[e] = draw(&d, e)[1][0][1]
	}
	for _, p := range []float64{0.01, 0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 0.95, 0.99} {
		below := 0.0
		for _, v := range values {
			if v < m.Quantile(p) {
				below++
			}
		}
		if sd := math.Sqrt(expeditions * p * (1 - p)); math.Abs(below-expeditions*p) > 4*sd {
			t.Errorf("%.0f draws below quantile %g, want %.0f ± %.0f", below, p, expeditions*p, sd)
		}
	}
}

// The covariance of the logarithms of two draws is the variance of all the levels that they share.
func TestEachLevelHasItsShareOfTheLogVariance(t *testing.T) {
	shape, err := spread.NewLognormal(25, 1.5)
	if err != nil {
		t.Fatal(err)
	}
	d := spread.Quantity{Shape: shape, Shares: shares}.Compile()
	sigma := math.Log(1.5) / spread.Score(0.9)
	var same, hole, site, apart []float64
	for e := range expeditions {
		v := draw(&d, e)
		log := func(s, h, r int) float64 { return math.Log(v[s][h][r]/25) / sigma }
		first := log(0, 0, 0)
		same = append(same, first*first)
		hole = append(hole, first*log(0, 0, 1))
		site = append(site, first*log(0, 1, 0))
		apart = append(apart, first*log(1, 0, 0))
	}
	for name, c := range map[string]struct {
		products []float64
		want     float64
	}{
		"one draw":                {same, 1},
		"two runs of a hole":      {hole, 0.77},
		"two holes of a site":     {site, 0.47},
		"two sites of expedition": {apart, 0.33},
	} {
		mean, sd := stat.MeanStdDev(c.products, nil)
		if se := stat.StdErr(sd, expeditions); math.Abs(mean-c.want) > 4*se {
			t.Errorf("%s: share of the log variance is %.3f ± %.3f, want %.2f", name, mean, se, c.want)
		}
	}
}
