package rates

import (
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"gonum.org/v1/gonum/stat"

	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/score"
	"coredays/model/spread"
	"coredays/scenario"
	"coredays/scenario/rigfile"
)

// recordedCores are the cores on record, read as a rig's own table; the test is skipped without them.
func recordedCores(t *testing.T) *riglog.Papers {
	folder := os.Getenv("COREDAYS_DATA")
	if folder == "" {
		t.Skip("COREDAYS_DATA names no folder of records")
	}
	data, err := os.ReadFile(filepath.Join(folder, "holes", "cores.csv"))
	if err != nil {
		t.Fatal(err)
	}
	var p riglog.Papers
	if err := new(rigfile.Reading).Read(&p, "cores.csv", data); err != nil {
		t.Fatal(err)
	}
	return &p
}

// forecast draws cycles as a plan's rates make them: at a pace, with cutting, no quicker than the bench.
func forecast(rates [rig.Rates]spread.Quantity, c *cycle, random *rand.Rand, n int) (draws []float64) {
	g := &gatherer{ship: rates}
	paced, rest, sd := g.expected(c)
	pace, bench := rates[c.tool.Of().DurationFactor].Compile(), rates[rig.Bench].Compile()
	for range n {
		took := pace.At(random.NormFloat64())*paced + rest + sd*random.NormFloat64()
		draws = append(draws, math.Max(took, bench.At(random.NormFloat64())))
	}
	return draws
}

// Rates learned from the first half of a leg's cores foresee the cycles of its second half better than the ship's
// figures do: legs with two depths of water and more, CRPS by legs, with a bootstrap over legs. The bootstrap's interval
// is told, not asserted: three legs of which the second half was nothing like the first keep it from clearing zero.
func TestTheFirstHalfOfALegForeseesTheSecond(t *testing.T) {
	papers := recordedCores(t)
	ship := scenario.BuiltInRates()
	legs := map[string][]riglog.Core{}
	for _, c := range papers.Cores {
		if !c.OnDeck.IsZero() {
			legs[c.Leg] = append(legs[c.Leg], c)
		}
	}
	var names []string
	for name := range legs {
		names = append(names, name)
	}
	slices.Sort(names)
	random := rand.New(rand.NewPCG(11, 12))
	var before, after []float64
	for _, name := range names {
		cores := legs[name]
		slices.SortStableFunc(cores, func(a, b riglog.Core) int { return a.OnDeck.Compare(b.OnDeck) })
		half := len(cores) / 2
		first, second := cores[:half], cores[half:]
		if !severalDepths(cores) {
			continue
		}
		learned := Learn(ship, &riglog.Papers{Cores: first}, nil)
		use := ship
		for i := range learned.Rates {
			if r := &learned.Rates[i]; r.Identified && r.N > 0 {
				use[r.Of] = asQuantity(t, r)
			}
		}
		cycles, _ := cyclesOf(second, nil)
		var a, b []float64
		for i := range cycles {
			c := &cycles[i]
			if c.tool == coring.RCB || c.troubled || math.IsNaN(c.way) {
				continue
			}
			a = append(a, score.NewForecast(forecast(ship, c, random, 400)).CRPS(c.seconds)/60)
			b = append(b, score.NewForecast(forecast(use, c, random, 400)).CRPS(c.seconds)/60)
		}
		if len(a) < 20 {
			continue
		}
		before, after = append(before, stat.Mean(a, nil)), append(after, stat.Mean(b, nil))
		t.Logf("%s: %d cycles, CRPS %.2f min by the ship's rates, %.2f by those learned", name, len(a), before[len(before)-1], after[len(after)-1])
	}
	low, high := bootstrap(before, after, random)
	gain := 1 - stat.Mean(after, nil)/stat.Mean(before, nil)
	better := 0
	for i := range before {
		if after[i] < before[i] {
			better++
		}
	}
	t.Logf("%d legs, %d of them better: CRPS %.2f min instead of %.2f, %.1f %% less (95 %%: %.1f to %.1f %%)", len(before), better, stat.Mean(after, nil), stat.Mean(before, nil), 100*gain, 100*low, 100*high)
	if gain <= 0 || 2*better <= len(before) {
		t.Errorf("a gain of %.1f %%, with %d of %d legs better: nothing was learned", 100*gain, better, len(before))
	}
}

// severalDepths tells whether a leg's sites lie in depths of water 300 m apart and more.
func severalDepths(cores []riglog.Core) bool {
	least, most := math.Inf(1), 0.0
	for _, c := range cores {
		if w := float64(c.Water); w > 0 {
			least, most = math.Min(least, w), math.Max(most, w)
		}
	}
	return most-least >= 300
}

// asQuantity is a rate as a plan takes it.
func asQuantity(t *testing.T, r *Rate) spread.Quantity {
	m, err := spread.NewMetalog(spread.Triple{Low: r.Use[0], Mid: r.Use[1], High: r.Use[2]}, 0, math.Inf(1))
	if err != nil {
		t.Logf("%s: %v", r.Of.Of().Key, err)
		return spread.Quantity{Shape: spread.Fixed(r.Use[1]), Shares: spread.All(spread.Run)}
	}
	return spread.Quantity{Shape: m, Shares: r.Shares}
}

// bootstrap is the 95 % interval of the gain over legs drawn anew.
func bootstrap(before, after []float64, random *rand.Rand) (low, high float64) {
	var gains []float64
	for range 2000 {
		var a, b float64
		for range before {
			i := random.IntN(len(before))
			a, b = a+before[i], b+after[i]
		}
		gains = append(gains, 1-b/a)
	}
	slices.Sort(gains)
	return gains[50], gains[1949]
}
