package check_test

import (
	"math"
	"testing"

	"coredays/model/check"
	"coredays/model/rig"
	"coredays/model/spread"
)

// A corer 0.1 m across with 178 kN, a friction of 0.6 and a tip of 10, in ground whose side shear grows by 1 kPa
// a metre, taken in the middle of the core. A metre of side takes 0.6 x 0.31416 m2 = 0.18850 m2 of shear, the tip
// 0.07854 m2. By hand: 9.5 m down to 95 m (90.25 kPa, at most 95.2); 178/99.75 less the tip is 9.05 m, 95 % of a
// stroke and so whole; from 104.05 m 8.26 m at 108.80 kPa, from 112.31 m 7.65 m at 117.06 kPa: refused at 119.96 m.
// Where one partial stroke is enough it is refused 7.65 m higher. Freed by pulling alone, not drilled over, it is
// refused where pi d L tau first is above 200 kN: 9.5 m at 71.25 kPa are 212.6 kN, at 61.75 kPa 184.3, so at 76 m.
func TestAPistonCorerIsRefusedWhereAHandWorksItOut(t *testing.T) {
	corer := func(s *rig.Ship) {
		s.Rates[rig.PistonDiameter], s.Rates[rig.StrokeForce] = spread.Just(0.1), spread.Just(178_000)
		s.Rates[rig.StrokeFriction], s.Rates[rig.TipFactor] = spread.Just(0.6), spread.Just(10)
	}
	for name, c := range map[string]struct {
		settings []string
		limit    float64
		verdict  check.Verdict
	}{
		"two partial strokes": {nil, 119.963, check.Caution},
		"one partial stroke":  {[]string{"sites[0].refusal.partial_strokes=1"}, 112.313, check.Caution},
		"pulled too hard":     {[]string{"sites[0].refusal.drill_over=no", "sites[0].refusal.overpull=200 kN"}, 76, check.Caution},
	} {
		settings := append([]string{"sites[0].layers=[{bottom: 400 mbsf, lithology: nannofossil ooze, side_shear: 1 kPa/m}]", "sites[0].refusal.then=none",
			"sites[0].holes[A].core=[{with: APC, to: 150 mbsf}, {with: XCB, to: 290 mbsf}]"}, c.settings...)
		f := the(t, withShip(t, corer, settings...), "APC gets to its depth")
		if f.Verdict != c.verdict || math.Abs(f.Limit-c.limit) > 0.01 {
			t.Errorf("%s: %s, refused at %.3f m; by hand at %.3f m", name, f.Verdict, f.Limit, c.limit)
		}
	}
}
