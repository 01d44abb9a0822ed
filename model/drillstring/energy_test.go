package drillstring

import (
	"testing"

	"coredays/model/unit"
)

// calculator5.snowdaycalculatornow.com/calculating-mechanical-specific-energy: 35,000 lb, 8.5 in, 120 rpm,
// 4,500 ft lb, 50 ft/h make about 72,357 psi; its steps round, and its area has four figures.
func TestSpecificEnergyIsPublishedOne(t *testing.T) {
	d := Drilling{Diameter: 8.5 * inch, BitWeight: lbf(35_000), Torque: Torque(float64(lbf(4500)) * float64(unit.Foot)), Rotation: 2, Rate: unit.Speed(50 * unit.Foot / 3600)}
	published(t, "psi", d.SpecificEnergy(), unit.Pressure(psi), 72_357, 72_357*2e-4)
}

func TestRateAndSpecificEnergyTurnEachOtherRound(t *testing.T) {
	d := Drilling{Diameter: 0.25, BitWeight: 60_000, Torque: 2500, Rotation: 1, Rate: 0.001}
	got := d.RateIn(d.SpecificEnergy()*0.35, 0.35)
	published(t, "rate, m/s", got, d.Rate, 1, 1e-9)
}

func TestHarderRockAndLighterBitDrillSlower(t *testing.T) {
	rate := func(strength unit.Pressure, bitWeight unit.Force) unit.Speed {
		d := Drilling{Diameter: 9.875 * inch, BitWeight: bitWeight, Torque: BitTorque(0.25, 9.875*inch, bitWeight), Rotation: 1}
		return d.RateIn(strength, 0.35)
	}
	if a, b, c := rate(20e6, 60_000), rate(60e6, 60_000), rate(60e6, 30_000); !(a > b && b > c) {
		t.Errorf("rates %g, %g, %g m/s, wanted falling", a, b, c)
	}
	// By hand: mu D W/3 of 0.25, 0.3 m and 60 kN.
	published(t, "torque, N m", BitTorque(0.25, 0.3, 60_000), 1, 1500, 1e-9)
}
