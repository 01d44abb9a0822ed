package sea

import (
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/unit"
)

// Worked out apart from this code, for memories of 36 h and 3 h.
func TestMeanSpellsMatchWorkedExample(t *testing.T) {
	p := NewProcess(LongMemory, ShortMemory, unit.Hour)
	for _, c := range []struct{ exceeded, above, below float64 }{{0.1, 14.84, 133.59}, {0.3, 22.48, 52.45}, {0.5, 32.65, 32.65}} {
		above, below := p.MeanSpell(c.exceeded)
		near(t, "h above", above.Hours(), c.above, 0.005)
		near(t, "h below", below.Hours(), c.below, 0.005)
	}
}

// Sampled every 3 min, the path shows nearly every crossing that Rice counts.
func TestSampledSpellsApproachTheFormula(t *testing.T) {
	const step = unit.Hour / 20
	p := NewProcess(LongMemory, ShortMemory, step)
	z := scores(p, 10_000_000, 4)
	u := distuv.UnitNormal.Quantile(0.7)
	below := 0
	for _, x := range z {
		if x <= u {
			below++
		}
	}
	n := float64(upcrossings(z, u))
	wantAbove, wantBelow := p.MeanSpell(0.3)
	near(t, "spell above over theory", float64(len(z)-below)/n*step.Hours()/wantAbove.Hours(), 1, 0.05) // 6,700 spells: standard error about 2 %
	near(t, "spell below over theory", float64(below)/n*step.Hours()/wantBelow.Hours(), 1, 0.05)
}

// As many ways up as down: spells below over spells above = (1-Q)/Q, here counted run by run.
func TestSpellsBelowOverAboveGoAsTheShares(t *testing.T) {
	z := scores(NewProcess(LongMemory, ShortMemory, unit.Hour), 2_000_000, 5)
	u := distuv.UnitNormal.Quantile(0.8)
	var runs, hours [2]int // below, above; whole runs only
	start := -1
	for i := 1; i < len(z); i++ {
		if (z[i] > u) == (z[i-1] > u) {
			continue
		}
		if start >= 0 {
			side := 0
			if z[i-1] > u {
				side = 1
			}
			runs[side]++
			hours[side] += i - start
		}
		start = i
	}
	ratio := float64(hours[0]) / float64(runs[0]) / (float64(hours[1]) / float64(runs[1]))
	near(t, "spells below over above", ratio, 0.8/0.2, 0.15) // standard error of the share about 0.004, so 0.1 of the ratio
}
