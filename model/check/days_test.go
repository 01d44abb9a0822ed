package check_test

import (
	"math"
	"testing"

	"coredays/model/check"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/scenario"
)

// estimatedAs checks base.yaml, 30 days, with settings against an estimate.
func estimatedAs(t *testing.T, r voyage.QuickEstimate, settings ...string) []check.Finding {
	t.Helper()
	p, _, err := scenario.ToCheck(mustRead(t, "testdata/base.yaml"), "base.yaml", settings)
	if err != nil {
		t.Fatal(err)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	return check.Plan(v, r)
}

// days makes an estimate of base.yaml: two holes at one site, d1 and d2 days, of a voyage of total days.
func days(total, d1, d2, arrives, leaves float64) voyage.QuickEstimate {
	of := func(d float64) unit.Duration { return unit.Duration(d) * unit.Day }
	return voyage.QuickEstimate{Total: of(total), Items: []unit.Duration{of(d1), of(d2)}, Arrives: []unit.Duration{of(arrives)}, Leaves: []unit.Duration{of(leaves)}, Home: true}
}

// Of 30 days 27 may be estimated, which with a tenth are 29.7, but not 27.5, which are 30.25.
func TestTheWholeProgrammeNeedsATenthMoreThanReckoned(t *testing.T) {
	const what = "days for the whole programme"
	gear{check.Pass, 29.7, 30, "d"}.is(t, the(t, estimatedAs(t, days(27, 10, 8, 3, 24)), what))
	gear{check.Caution, 30.25, 30, "d"}.is(t, the(t, estimatedAs(t, days(27.5, 10, 8, 3, 24)), what))
}

// Of 35 days 8 are for a hole of the second rank: the rest fits without anything added, until it is above 30. Half of all
// expeditions are quicker than even, so that this is unlikely and stops nothing.
func TestOnlyWhatRanksFirstMustFit(t *testing.T) {
	const what, second = "days for what ranks first", "sites[0].holes[B].rank=2"
	gear{check.Pass, 27, 30, "d"}.is(t, the(t, estimatedAs(t, days(35, 10, 8, 3, 24), second), what))
	gear{check.Pass, 29.95, 30, "d"}.is(t, the(t, estimatedAs(t, days(37.95, 10, 8, 3, 24), second), what))
	gear{check.Caution, 30.5, 30, "d"}.is(t, the(t, estimatedAs(t, days(38.5, 10, 8, 3, 24), second), what))
	gear{check.Caution, 35, 30, "d"}.is(t, the(t, estimatedAs(t, days(35, 10, 8, 3, 24)), what))
}

// From day 3 to day 14.5 on site: 11.5 days, for which a cap of 12 is enough and one of 11 is not.
func TestTheStayIsHeldAgainstTheCap(t *testing.T) {
	const what = "days on site within the cap"
	r := days(20, 7, 4.5, 3, 14.5)
	gear{check.Pass, 11.5, 12, "d"}.is(t, the(t, estimatedAs(t, r, "sites[0].cap=12 d"), what))
	gear{check.Caution, 11.5, 11, "d"}.is(t, the(t, estimatedAs(t, r, "sites[0].cap=11 d"), what))
}

// The shortest call in port on record took 2.2 d (ODP Legs 177 and 202, IODP Exp 304 to 341 reports).
func TestAShorterCallThanAnyOnRecordIsCautioned(t *testing.T) {
	const what = "days in port before sailing"
	gear{check.Pass, 2.5, 2.2, "d"}.is(t, the(t, estimatedAs(t, voyage.QuickEstimate{}, "in_port_before_sailing=2.5 d"), what))
	gear{check.Caution, 2, 2.2, "d"}.is(t, the(t, estimatedAs(t, voyage.QuickEstimate{}, "in_port_before_sailing=2 d"), what))
}

// The lognormal of 1 m and 0.25 m has sigma² = ln 1.0625: 1.25 m is exceeded with the chance of a normal above
// (ln 1.25 + 0.0303)/0.2462 = 1.029, 15.2 %; 1.2 m above 0.8636, 19.4 %; 0.75 m 85.2 %,
// 0.5 m 99.64 %.
func TestTheShareOfRoughSeaIsThatOfTheLognormal(t *testing.T) {
	for most, c := range map[string]struct {
		percent float64
		verdict check.Verdict
	}{"1.25 m": {15.2, check.Pass}, "1.2 m": {19.4, check.Caution}, "0.75 m": {85.2, check.Caution}, "0.5 m": {99.64, check.Stop}} {
		f := the(t, estimatedAs(t, voyage.QuickEstimate{}, "limits=[{for: piston_coring, of: wave height, most: "+most+"}]"), "sea above the limit of piston coring")
		if f.Verdict != c.verdict || math.Abs(f.Value-c.percent) > 0.1 {
			t.Errorf("limit of %s: %s, %.2f %%; by hand %s, %.1f %%", most, f.Verdict, f.Value, c.verdict, c.percent)
		}
	}
}
