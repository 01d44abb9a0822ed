package rig

import (
	"math"

	"coredays/model/drillstring"
	"coredays/model/unit"
)

// How a rotary bit is driven where a layer's rate of drilling is worked out from the strength of its
// rock.
const (
	bitDiameter   unit.Length = 9.875 * 0.0254 // 9-7/8 in: ODP Leg 197 Prelim. Report
	bitRotation               = 1.0            // revolutions per second, 60 a minute [common practice]
	bitFriction               = 0.25           // 0.2 to 0.3 for roller bits [from memory]
	bitEfficiency unit.Share  = 0.35           // 0.3 to 0.4 [from memory]
)

// RateIn is the rate of penetration in rock of a compressive strength (Pa), m/s, with the weight that
// the ship's assembly can put on the bit with all pipe in tension. It says what the tables lack.
func (t *Tubulars) RateIn() (func(strength float64) float64, error) {
	table, err := drillstring.Published()
	if err != nil {
		return nil, err
	}
	assembly, err := table.CoringAssembly(int(t.Collars.Value + 0.5))
	if err != nil {
		return nil, err
	}
	weight := assembly.UsableBitWeight(drillstring.Seawater)
	bit := drillstring.Drilling{Diameter: bitDiameter, BitWeight: weight, Rotation: bitRotation,
		Torque: drillstring.BitTorque(bitFriction, bitDiameter, weight)}
	return func(strength float64) float64 {
		rate := float64(bit.RateIn(unit.Pressure(strength), bitEfficiency))
		return math.Min(rate, fastest)
	}, nil
}

// WeightUnder is the weight on the bit at which turning it takes all of a torque, N: no connection is turned with more than it was
// made up with, so the lesser of that of the rig and of its tongs counts.
func (t Torque) WeightUnder() unit.Force {
	most := math.Inf(1)
	for _, f := range []Figure{t.Rotating, t.MakeUp} {
		if f.Value > 0 {
			most = min(most, f.Value)
		}
	}
	return unit.Force(most / float64(drillstring.BitTorque(bitFriction, bitDiameter, 1)))
}

// fastest is the rate in ground too weak to hold the bit back, m/s: 60 m/h, above which the records of
// cores are rounding.
const fastest = 60.0 / 3600
