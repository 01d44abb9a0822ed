package sea

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// flat is a climate that is the same all year.
func flat(mean unit.Length, variation float64) Climate {
	var c Climate
	for m := range 12 {
		c.Mean[m], c.Variation[m] = mean, variation
	}
	return c
}

func tableOf(t testing.TB, c Climate) *Table {
	t.Helper()
	table, err := NewTable(c)
	if err != nil {
		t.Fatal(err)
	}
	return table
}

func TestFlatClimateKeepsItsMomentsEveryDay(t *testing.T) {
	table := tableOf(t, flat(2.5, 0.4))
	z := scores(NewProcess(LongMemory, ShortMemory, 1000*unit.Hour), 400_000, 6) // independent draws
	for _, day := range []int{1, 59, 200, 365, 366} {
		var sum, squares float64
		for _, x := range z {
			h := table.Height(day, x)
			sum += h
			squares += h * h
		}
		mean := sum / float64(len(z))
		near(t, "mean, m", mean, 2.5, 0.01)
		near(t, "standard deviation, m", math.Sqrt(squares/float64(len(z))-mean*mean), 1.0, 0.015)
	}
}

func TestMiddleOfTheMonthHasTheMonthsMean(t *testing.T) {
	c := flat(1, 0.3)
	for m := range 12 {
		c.Mean[m] = unit.Length(2 + math.Cos(float64(m)))
	}
	table := tableOf(t, c)
	for m, day := range []int{16, 0, 75, 0, 136, 0, 197, 228, 0, 289, 0, 350} { // noon of the 16th; months of 30 and 28 days have no middle day
		if day == 0 {
			continue
		}
		d := table.days[day-1]
		near(t, "mean, m", math.Exp(d.mu+d.sigma*d.sigma/2), float64(c.Mean[m]), 1e-9)
	}
}

func TestHeightChangesSmoothlyFromDayToDay(t *testing.T) {
	c := flat(1, 0.3)
	for m := range 12 {
		c.Mean[m] = unit.Length(3 + 1.5*math.Cos(2*math.Pi*float64(m)/12))
	}
	table := tableOf(t, c)
	for day := 1; day <= 366; day++ {
		a, b := table.Height(day, 1), table.Height(day+1, 1)
		// the steepest month changes ln mean by 0.3 in 30 days
		if step := math.Abs(math.Log(b / a)); step > 0.3/28 {
			t.Errorf("day %d to the next: factor %.3f", day, b/a)
		}
	}
}

func TestDaysCountOnIntoTheYearsBeside(t *testing.T) {
	table := tableOf(t, builtIn(t, 45, -30))
	for day, same := range map[int]int{0: 365, -364: 1, 367: 2, 730: 365, 731: 1} {
		near(t, "height, m", table.Height(day, 0.5), table.Height(same, 0.5), 0)
	}
}

func TestScoreUndoesHeightAndExceedanceFollows(t *testing.T) {
	table := tableOf(t, flat(2, 0.4))
	near(t, "score", table.Score(100, table.Height(100, 1.3)), 1.3, 1e-12)
	near(t, "share above the median", table.Exceedance(100, table.Height(100, 0)), 0.5, 1e-12)
	near(t, "share above the 1-in-10 height", table.Exceedance(100, table.Height(100, 1.2815515655)), 0.1, 1e-9)
}

func TestImpossibleClimateIsRefused(t *testing.T) {
	for _, bad := range []Climate{{}, flat(-1, 0.4), flat(2, 0), flat(250, 0.4), flat(unit.Length(math.NaN()), 0.4), flat(2, math.Inf(1))} {
		if _, err := NewTable(bad); err == nil {
			t.Errorf("accepted: %v %v", bad.Mean, bad.Variation)
		}
	}
}
