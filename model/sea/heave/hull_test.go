package heave

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"

	"coredays/model/unit"
)

// box is a ship of 140 x 21 x 7.5 m, small of 100 x 18 x 6 m, both with their full beam.
func box() Hull   { return Hull{Length: 140, Beam: 21, Draught: 7.5, Block: 1} }
func small() Hull { return Hull{Length: 100, Beam: 18, Draught: 6, Block: 1} }

// Worked out apart from this code with the same closed form (so a check of the program, not of
// the formula), to two decimals: significant heave over significant height by peak period.
func TestHeaveMatchesFiguresWorkedOutApart(t *testing.T) {
	periods := []unit.Duration{7, 8, 10, 12, 14, 16}
	for degrees, ratios := range map[float64][]float64{
		0:  {0.09, 0.12, 0.24, 0.40, 0.54, 0.66},
		30: {0.09, 0.14, 0.31, 0.48, 0.62, 0.72},
		90: {0.90, 1.09, 1.25, 1.27, 1.24, 1.21},
	} {
		for i, want := range ratios {
			near(t, "heave over height", float64(box().Heave(1, periods[i], degrees*math.Pi/180)), want, 0.0051)
		}
	}
}

// As above, head seas with a peak period of 5 sqrt(Hs), in metres. The figures were made with
// 9.81 m/s^2, which raises them by up to 0.06 %; the tolerance is their rounding and 0.1 %.
func TestHeaveInWindSeaMatchesFiguresWorkedOutApart(t *testing.T) {
	for _, c := range []struct {
		hull       Hull
		hs, metres unit.Length
	}{
		{box(), 3, 0.44}, {box(), 4, 0.95}, {box(), 5, 1.67}, {box(), 6, 2.52}, {box(), 8, 4.43},
		{small(), 3, 0.76}, {small(), 4, 1.54}, {small(), 5, 2.46}, {small(), 6, 3.44},
	} {
		peak := unit.Duration(5 * math.Sqrt(float64(c.hs)))
		near(t, "heave, m", float64(c.hull.Heave(c.hs, peak, 0)), float64(c.metres), 0.005+0.001*float64(c.metres))
	}
}

func TestShipFollowsLongWavesAndIgnoresShortOnes(t *testing.T) {
	for _, heading := range []float64{0, Heading, math.Pi} {
		near(t, "amplification at 100 s", box().Amplification(2*math.Pi/100, heading), 1, 0.02)
		near(t, "amplification at 4 s", box().Amplification(2*math.Pi/4, heading), 0, 0.01)
	}
	near(t, "amplification without waves", box().Amplification(0, 0), 1, 0)
}

// Resonance is at 2kT = 1, so k = 1/15 for 7.5 m. In beam seas nothing averages along the ship and
// the Smith correction is 1, which leaves hypot(1-kT, damping) / damping.
func TestResonanceInBeamSeasByHand(t *testing.T) {
	a := 2 * math.Sin(21.0/30) * math.Exp(-0.5) // 0.78148
	damping := a * a / (21.0 / 15)              // 0.43622
	got := box().Amplification(math.Sqrt(gravity/15), math.Pi/2)
	near(t, "amplification", got, math.Hypot(0.5, damping)/damping, 1e-9)
	near(t, "amplification", got, 1.5212, 5e-4)
}

func TestHeadingIsTheSameFromPortAndStarboardBowAndStern(t *testing.T) {
	want := box().Heave(4, 11, 0.5)
	for _, heading := range []float64{-0.5, math.Pi - 0.5, math.Pi + 0.5} {
		near(t, "heave, m", float64(box().Heave(4, 11, heading)), float64(want), 1e-9)
	}
}

func TestCalmSeaHeavesNothing(t *testing.T) {
	for _, h := range []unit.Length{0, -1, unit.Length(math.NaN())} {
		near(t, "heave, m", float64(box().Heave(h, 10, 0)), 0, 0)
	}
	near(t, "heave, m", float64(box().Heave(3, 0, 0)), 0, 0)
}

// The integral of the spectrum gives its own height back: 4 sqrt(m0) = 1. With a sharper peak the
// DNV factor 1-0.287 ln keeps it only nearly.
func TestSpectrumKeepsTheHeight(t *testing.T) {
	still := func(float64) float64 { return 1 }
	near(t, "height of Pierson-Moskowitz", significant(still, 1), 1, 0.001)
	for _, factor := range []float64{2, 3.3, 5} {
		near(t, "height of JONSWAP", significant(still, factor), 1, 0.01)
	}
}

func TestIntegrationIsFineEnough(t *testing.T) {
	for _, factor := range []float64{1, 3.3} {
		f := func(x float64) float64 {
			a := box().Amplification(x*2*math.Pi/9, 0)
			return a * a * spectrum(x, factor)
		}
		fine := quad.Fixed(f, lowestFrequency, 1, 1500, nil, 0) + quad.Fixed(f, 1, highestFrequency, 1500, nil, 0)
		got := significant(func(x float64) float64 { return box().Amplification(x*2*math.Pi/9, 0) }, factor)
		near(t, "over a fine integral", got/(4*math.Sqrt(fine)), 1, 2e-3)
	}
}

func TestPeakFactorRunsFromFiveToOneWithoutAJump(t *testing.T) {
	near(t, "steep", peakFactor(4, 7), 5, 0)
	near(t, "fully developed", peakFactor(4, 10), 1, 0)
	near(t, "just above 3.6", peakFactor(1, 3.6000001), 5, 0.03) // exp(1.61) = 5.003
	near(t, "just below 5", peakFactor(1, 4.9999999), 1, 1e-5)
}

func TestImpossibleHullIsRefused(t *testing.T) {
	for _, bad := range []Hull{{}, {140, 21, 7.5, 0}, {140, 21, 7.5, 1.2}, {140, 21, -1, 0.7}, {140, unit.Length(math.NaN()), 7, 0.7}} {
		if _, err := NewResponse(bad, PeriodFactor, Heading); err == nil {
			t.Errorf("%v accepted", bad)
		}
	}
	if _, err := NewResponse(box(), 0, 0); err == nil {
		t.Error("period factor 0 accepted")
	}
}

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if math.IsNaN(got) || math.Abs(got-want) > within {
		t.Errorf("%s is %v, want %v within %v", what, got, want, within)
	}
}
