package ground

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"coredays/model/unit"
)

const inch = unit.Foot / 12

// barrel is a corer of ordinary size; the factors of friction and tip are round.
func barrel() Corer {
	return Corer{Diameter: 3.75 * inch, Force: 150_000, Friction: 0.5, Tip: 9}
}

// Worked example of the doc comment: the outside of 9.5 m of a 3.75 in barrel is 2.843 m2, on which
// 60,000 lbf (266.9 kN) is 94 kPa and 100,000 lbf (444.8 kN) is 156 kPa.
func TestOverpullOfAFullBarrelByHand(t *testing.T) {
	for klbf, kPa := range map[unit.Force]float64{60: 94, 100: 156} {
		perPascal := barrel().Overpull(1, 9.5)
		if got := float64(klbf*1000*unit.PoundForce/perPascal) / 1000; math.Abs(got-kPa) > 0.5 {
			t.Errorf("%g klbf is %.1f kPa of side shear, want %g", float64(klbf), got, kPa)
		}
	}
}

func TestOverpullIsInProportionToShearAndLength(t *testing.T) {
	one := barrel().Overpull(50_000, 4)
	if got := barrel().Overpull(100_000, 4); got != 2*one {
		t.Errorf("twice the shear makes %g of %g N", float64(got), float64(one))
	}
	if got := barrel().Overpull(50_000, 8); got != 2*one {
		t.Errorf("twice the length makes %g of %g N", float64(got), float64(one))
	}
	if got := barrel().Overpull(50_000, 0); got != 0 {
		t.Errorf("a barrel that sticks nowhere takes %g N", float64(got))
	}
}

// 0.1 m across, 0.6 of friction, a tip of 10, 100 kPa: the tip takes 10 x 100 kPa x 7.854e-3 m2 = 7.854 kN,
// a metre of side 0.6 x 100 kPa x 0.31416 m2 = 18.85 kN; 102.1 kN go (102.1-7.854)/18.85 = 5.00 m.
func TestStrokeByHand(t *testing.T) {
	c := Corer{Diameter: 0.1, Force: 102_102, Friction: 0.6, Tip: 10}
	if got := float64(c.Stroke(100_000)); math.Abs(got-5) > 1e-3 {
		t.Errorf("stroke of %.4f m, want 5.00", got)
	}
}

func TestNothingStopsACorerInWater(t *testing.T) {
	for _, shear := range []unit.Pressure{0, -1} {
		if got := float64(barrel().Stroke(shear)); !math.IsInf(got, 1) {
			t.Errorf("stroke of %g m in %g Pa", got, float64(shear))
		}
	}
}

func TestCorerGetsNowhereInRock(t *testing.T) {
	for _, shear := range []unit.Pressure{1e7, 1e300, unit.Pressure(math.Inf(1))} {
		if got := barrel().Stroke(shear); got != 0 {
			t.Errorf("stroke of %g m in %g Pa, want 0", float64(got), float64(shear))
		}
	}
}

// At the end of its stroke the forces balance; a stronger sediment stops it sooner.
func TestStrokeBalancesTheForceAndFallsWithStrength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Corer{
			Diameter: unit.Length(rapid.Float64Range(0.05, 0.2).Draw(t, "diameter")),
			Force:    unit.Force(rapid.Float64Range(1e4, 5e5).Draw(t, "force")),
			Friction: rapid.Float64Range(0.1, 1).Draw(t, "friction"),
			Tip:      rapid.Float64Range(0, 15).Draw(t, "tip"),
		}
		shear := unit.Pressure(rapid.Float64Range(100, 1e6).Draw(t, "shear"))
		stroke := c.Stroke(shear)
		tip := c.Tip * float64(shear) * math.Pi * float64(c.Diameter) * float64(c.Diameter) / 4
		used := tip + c.Friction*float64(c.Overpull(shear, stroke))
		if stroke > 0 && math.Abs(used-float64(c.Force)) > 1e-9*float64(c.Force) || stroke == 0 && tip < float64(c.Force) || stroke < 0 {
			t.Fatalf("a stroke of %g m takes %g of %g N", float64(stroke), used, float64(c.Force))
		}
		if harder := c.Stroke(1.01 * shear); stroke > 0 && harder >= stroke {
			t.Errorf("stroke of %g m, in harder sediment %g m", float64(stroke), float64(harder))
		}
	})
}
