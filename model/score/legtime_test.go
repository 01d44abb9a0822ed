package score

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// lognormal is an even sample of a lognormal distribution of a median, d, and the standard deviation of its logarithm.
func lognormal(median, sd float64) []float64 {
	sample := make([]float64, 999)
	for i := range sample {
		sample[i] = median * math.Exp(sd*distuv.UnitNormal.Quantile((float64(i)+0.5)/999))
	}
	return sample
}

// Where the forecast says next to nothing, the time of a leg is that of legs: normal, P10 and P90 1.2816 standard deviations off.
func TestAVagueForecastBecomesTheTimeOfLegs(t *testing.T) {
	l := LegTime{Mean: 40, SD: 2, Freedom: 1000, Scale: 1}
	q := NewForecast(l.Given(lognormal(40, 3))).Quantiles(0.1, 0.5, 0.9)
	for i, want := range []float64{40 - 1.2816*2, 40, 40 + 1.2816*2} {
		if math.Abs(q[i]-want) > 0.3 {
			t.Errorf("quantile %d: %.2f d, by hand %.2f", i, q[i], want)
		}
	}
}

// Where nothing is known of legs, or the forecast leaves nothing open, the forecast stays.
func TestAForecastStaysWhereNothingIsTold(t *testing.T) {
	sample := lognormal(20, 0.2)
	slices.Reverse(sample)
	given := LegTime{Mean: 40, SD: 1e6, Freedom: 1000, Scale: 1}.Given(sample)
	for r := range sample {
		if math.Abs(given[r]/sample[r]-1) > 0.02 {
			t.Fatalf("replication %d: %.3f d became %.3f", r, sample[r], given[r])
		}
	}
	sure := []float64{7, 7, 7}
	if got := (LegTime{Mean: 40, SD: 8, Freedom: 2, Scale: 1}).Given(sure); !slices.Equal(got, sure) {
		t.Errorf("a forecast without spread became %v", got)
	}
}

// Two lognormal figures of one time: means of the logarithm weigh by their inverse variances (textbook). A normal time of legs of 40 d with 4 %
// is nearly lognormal.
func TestForecastAndTimeOfLegsWeighByTheirVariances(t *testing.T) {
	const sd, legs = 0.08, 0.04
	given := LegTime{Mean: 40, SD: legs * 40, Freedom: 1000, Scale: 1}.Given(lognormal(36, sd))
	weight := 1/(sd*sd) + 1/(legs*legs)
	want := math.Exp((math.Log(36)/(sd*sd) + math.Log(40)/(legs*legs)) / weight)
	q := NewForecast(given).Quantiles(0.1, 0.5, 0.9)
	if math.Abs(q[1]/want-1) > 0.005 {
		t.Errorf("median %.2f d, by hand %.2f", q[1], want)
	}
	if got, by := math.Log(q[2]/q[0])/2/1.2816, 1/math.Sqrt(weight); math.Abs(got/by-1) > 0.06 {
		t.Errorf("standard deviation %.4f of the logarithm, by hand %.4f", got, by)
	}
}

// Sites of a leg add up to its time, and the vaguer one moves further; another leg goes its own way.
func TestTheSitesOfALegAddUpToItsTime(t *testing.T) {
	wide, narrow := lognormal(10, 0.5), lognormal(10, 0.1)
	other := make([]int, len(narrow)) // independent: in another order
	for r := range other {
		other[r] = (r * 577) % len(narrow)
	}
	mixed := make([]float64, len(narrow))
	for r := range mixed {
		mixed[r] = narrow[other[r]]
	}
	l := LegTime{Mean: 40, SD: 1, Freedom: 5, Scale: 1}
	sum := floats.AddTo(make([]float64, len(wide)), wide, mixed)
	moved := l.Condition([][]float64{wide, mixed, lognormal(40, 0.01)}, []string{"a", "a", "b"})
	given := l.Given(sum)
	for r := range given {
		if math.Abs(moved[0][r]+moved[1][r]-given[r]) > 1e-9 {
			t.Fatalf("replication %d: %.4f and %.4f d, the leg %.4f", r, moved[0][r], moved[1][r], given[r])
		}
	}
	if a, b := stat.Mean(moved[0], nil)/stat.Mean(wide, nil), stat.Mean(moved[1], nil)/stat.Mean(mixed, nil); a < 2*b || math.Abs(b-1) > 0.1 {
		t.Errorf("the vague site became %.2f times as long, the sure one %.2f", a, b)
	}
	if m := stat.Mean(moved[2], nil); math.Abs(m-40) > 0.5 {
		t.Errorf("the other leg has %.2f d", m)
	}
	if wide[0] != lognormal(10, 0.5)[0] {
		t.Error("what was given was changed")
	}
}

// All chances of a leg's time add up to one in its logarithm.
func TestChancesOfALegAddUpToOne(t *testing.T) {
	l, sum := LegTime{Mean: 39, SD: 8, Otherwise: 0.1, Freedom: 2, Scale: 0.8}, 0.0
	step := math.Log(LongestLeg/shortestLeg) / grid
	for i := range grid + 1 {
		sum += step * l.Chance(lognormal(30, 0.3), onGrid(float64(i)))
	}
	if math.Abs(sum-1) > 1e-6 {
		t.Errorf("they add up to %g", sum)
	}
}
