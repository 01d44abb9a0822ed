package rig

import (
	"math"
	"testing"

	"coredays/model/drillstring"
)

// The specific energy with ten collars gives about the rates that were drilled in rock of a strength
// that is usual for it [strengths from memory]: basalt 2.4 m/h (ODP Leg 192 Prelim. Report), gabbro 1.3
// to 6.1 m/h (ODP Leg 176 Prelim. Report).
func TestRatesFromStrengthAreThoseDrilled(t *testing.T) {
	board := Tubulars{Collars: Figure{Value: 10}}
	rate, err := board.RateIn()
	if err != nil {
		t.Fatal(err)
	}
	for _, rock := range []struct {
		name           string
		strength       float64 // Pa
		slow, fastRate float64 // m/h
	}{
		{"basalt", 180e6, 1.2, 4.8},
		{"gabbro", 200e6, 1.3, 6.1},
	} {
		if got := rate(rock.strength) * 3600; got < rock.slow || got > rock.fastRate {
			t.Errorf("%s: %.2f m/h, drilled at %.1f to %.1f", rock.name, got, rock.slow, rock.fastRate)
		}
	}
}

func TestHarderRockAndFewerCollarsAreSlower(t *testing.T) {
	rateWith := func(collars float64) func(float64) float64 {
		board := Tubulars{Collars: Figure{Value: collars}}
		rate, err := board.RateIn()
		if err != nil {
			t.Fatal(err)
		}
		return rate
	}
	few, many := rateWith(5), rateWith(12)
	for _, strength := range []float64{30e6, 60e6, 120e6, 240e6} {
		if !(few(strength) < many(strength)) || !(many(2*strength) < many(strength)) {
			t.Errorf("at %.0f MPa: %.3g with few collars, %.3g with many, %.3g in rock twice as hard", strength/1e6, few(strength), many(strength), many(2*strength))
		}
	}
	if got := many(1) * 3600; math.Abs(got-60) > 1e-9 { // above that the records of cores are rounding
		t.Errorf("in the weakest ground %.3g m/h, want 60", got)
	}
}

// Specific energy put together by hand (Teale 1965): weight over face, and 2 pi N T of a face that slides with
// a third of friction x diameter x weight, over face and rate. The rock's strength is 30 to 40 % of it.
func TestTheRockTakesAThirdOfTheSpecificEnergy(t *testing.T) {
	const collars, diameter = 10, 9.875 * 0.0254
	rate, err := (&Tubulars{Collars: Figure{Value: collars}}).RateIn()
	if err != nil {
		t.Fatal(err)
	}
	table, err := drillstring.Published()
	if err != nil {
		t.Fatal(err)
	}
	assembly, err := table.CoringAssembly(collars)
	if err != nil {
		t.Fatal(err)
	}
	weight, face := float64(assembly.UsableBitWeight(drillstring.Seawater)), math.Pi/4*diameter*diameter
	for _, strength := range []float64{60e6, 120e6, 200e6} {
		torque := 0.25 * diameter * weight / 3
		energy := weight/face + 2*math.Pi*1*torque/(face*rate(strength))
		if share := strength / energy; share < 0.3 || share > 0.4 {
			t.Errorf("rock of %.0f MPa takes %.3f of the specific energy, wanted 0.3 to 0.4", strength/1e6, share)
		}
	}
}

// Friction of 0.25 on a bit of 9-7/8 in takes 0.25 x 0.8229 ft / 3 = 0.0686 ft lbf for each pound: 1,000 ft lbf turn 14.6 klbf, and
// tongs that give half of that leave 7.3.
func TestTorqueLimitsTheWeightOnTheBit(t *testing.T) {
	const ftLbf, klbf = 1.35582, 4448.22
	for _, c := range []struct{ rotating, tongs, want float64 }{{1000, 60_000, 14.58}, {1000, 500, 7.29}, {0, 1000, 14.58}} {
		got := float64(Torque{Rotating: Figure{Value: c.rotating * ftLbf}, MakeUp: Figure{Value: c.tongs * ftLbf}}.WeightUnder()) / klbf
		if got < c.want-0.02 || got > c.want+0.02 {
			t.Errorf("%+v: %.2f klbf", c, got)
		}
	}
}
