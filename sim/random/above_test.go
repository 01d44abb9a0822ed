package random

import (
	"math"
	"testing"

	"golang.org/x/exp/stats"

	"coredays/model/chance"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// line is a standard normal.
type line struct{}

func (line) Quantile(p float64) float64 { return spread.Score(p) }

// Two layers with the levels of a tool in common, 0.2 expedition, 0.2 site and 0.1 hole: values of one hole correlate
// 0.5, of one site 0.4, of one expedition 0.2; the means of many runs of each layer in a hole are nearly the same.
func TestQuantitiesHaveTheLevelsAboveTheRunInCommon(t *testing.T) {
	q := spread.Quantity{Shape: line{}, Shares: spread.Shares{0.2, 0.2, 0.1, 0.5}}.Compile()
	v := &voyage.Voyage{}
	for range int(rig.Rates) + 2 {
		v.Quantities, v.Purposes, v.Above = append(v.Quantities, q), append(v.Purposes, chance.Key(len(v.Purposes))), append(v.Above, 7)
	}
	a, b := voyage.Quantity(rig.Rates), voyage.Quantity(rig.Rates)+1
	s := New(v)
	const replications = 20_000
	for _, c := range []struct {
		site, hole chance.Key
		want       float64
	}{{1, 1, 0.5}, {1, 2, 0.4}, {2, 3, 0.2}} {
		var products []float64
		for n := range replications {
			s.Begins(chance.Replication(3, n))
			s.Place = Place{Site: 1, Hole: 1}
			first := s.Draw(a)
			s.Place = Place{Site: c.site, Hole: c.hole}
			products = append(products, first*s.Draw(b))
		}
		if got := stats.Mean(products); math.Abs(got-c.want) > 4*math.Sqrt(1.25/replications) { // the variance of a product is 1 + r2
			t.Errorf("site %d, hole %d: correlation %.3f, want %.1f", c.site, c.hole, got, c.want)
		}
	}
}

// A score in which several quantities have a share counts to each of them in equal parts; runs are a quantity's own.
func TestAScoreInCommonIsShared(t *testing.T) {
	q := spread.Quantity{Shape: line{}, Shares: spread.Shares{0.3, 0.3, 0, 0.4}}.Compile()
	v := &voyage.Voyage{Quantities: []spread.Drawn{q, q}, Purposes: []chance.Key{1, 2}, Above: []chance.Key{7, 7}}
	both, alone := UsedAt{Place{1, 1}, 5}, UsedAt{Place{2, 2}, 5}
	places := [][]UsedAt{{both, alone}, {both}}
	want := map[spread.Level][]float64{spread.Expedition: {0.5}, spread.Site: {0.5, 1}, spread.Run: {1, 1}}
	got := map[spread.Level][]float64{}
	for _, x := range ScoresOf(v, 0, places[0], SharingOf(v, places)) {
		for level, w := range x.Of.Weight {
			if w > 0 {
				got[spread.Level(level)] = append(got[spread.Level(level)], x.Share)
			}
		}
	}
	for level, shares := range want {
		if len(got[level]) != len(shares) {
			t.Fatalf("%v: %v, want %v", level, got[level], shares)
		}
		for i := range shares {
			if got[level][i] != shares[i] {
				t.Errorf("%v: %v, want %v", level, got[level], shares)
			}
		}
	}
}
