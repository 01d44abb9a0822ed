package ground

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// By hand, trying depths: in 900 m of water at 264 m 286.71 K against a boundary of 286.72 K at 11.70 MPa; in
// 3,420 m at 590 m 299.75 against 299.79 K at 40.3 MPa. In 300 m of water, at 3.02 MPa, it is 273.6 K: too warm.
func TestHydrateIsStableDownToWhereItGetsTooWarm(t *testing.T) {
	for water, base := range map[float64]float64{300: 0, 900: 264.5, 3420: 591} {
		if got := float64(HydrateBase(unit.Length(water))); math.Abs(got-base) > 2 {
			t.Errorf("%g m of water: base at %.1f m, by hand %g m", water, got, base)
		}
	}
}

// Another fit of measurements has 10.47 MPa at 285 K in sea water of 35 parts in a thousand (Tishchenko et al.
// 2005, as worked out in github.com/Poriyalar/MethaneHydrates): within 0.7 K.
func TestHydrateBoundaryAgreesWithAnotherFit(t *testing.T) {
	if got := hydrateTemperature(10.4682e6); math.Abs(got-285) > 0.7 {
		t.Errorf("stable below %.2f K", got)
	}
}
