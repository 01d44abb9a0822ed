package check_test

import (
	"math"
	"strings"
	"testing"

	"coredays/model/check"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/scenario"
)

// withShip checks base.yaml with settings and a ship changed.
func withShip(t *testing.T, change func(*rig.Ship), settings ...string) []check.Finding {
	t.Helper()
	p, _, err := scenario.ToCheck(mustRead(t, "testdata/base.yaml"), "base.yaml", settings)
	if err != nil {
		t.Fatal(err)
	}
	change(&p.Ship)
	return foundIn(t, p)
}

func foundIn(t *testing.T, p *plan.Plan) []check.Finding {
	t.Helper()
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	return check.Plan(v, voyage.QuickEstimate{})
}

// the finds the finding that begins so.
func the(t *testing.T, found []check.Finding, what string) check.Finding {
	t.Helper()
	for _, f := range found {
		if strings.HasPrefix(f.What, what) {
			return f
		}
	}
	t.Fatalf("no %q", what)
	return check.Finding{}
}

// gear is what is wanted of a finding on a ship's gear.
type gear struct {
	verdict      check.Verdict
	value, limit float64
	unit         string
}

func (g gear) is(t *testing.T, f check.Finding) {
	t.Helper()
	if f.Verdict != g.verdict || math.Abs(f.Value-g.value) > 0.01*g.value || math.Abs(f.Limit-g.limit) > 0.01*g.limit || f.Unit != g.unit {
		t.Errorf("%s: %s: %.4g, limit %.4g %s; want %+v", f.Verdict, f.What, f.Value, f.Limit, f.Unit, g)
	}
}

// 417 klbf with all travelling gear, 284.8 without: infeasible.txt.
func TestTravellingGearAloneDoesNotStopTheCompensator(t *testing.T) {
	const what = "load on the heave compensator"
	gear{check.Pass, 417, 800, "klbf"}.is(t, the(t, checked(t), what))
	gear{check.Caution, 417, 350, "klbf"}.is(t, the(t, checked(t, "string.compensator_load=350 klbf"), what))
}

func TestPistonCorersAskNothingOfTheCompensator(t *testing.T) {
	for _, f := range checked(t, "sites[0].holes=[{name: A, core: [{with: APC, to: refusal}]}]") {
		if strings.Contains(f.What, "compensator") {
			t.Errorf("%s: %s", f.Verdict, f.What)
		}
	}
}

func TestAFigureFromMemoryCautionsAtMost(t *testing.T) {
	short := func(s *rig.Ship) { s.Compensator.Stroke = rig.Figure{Value: 4, Source: "4 m, from memory"} }
	gear{check.Caution, 4.9, 4, "m"}.is(t, the(t, withShip(t, short), "largest heave of rotated coring"))
}

func TestWithoutALimitOfSeaTheStrokeCannotBeHeldAgainstOne(t *testing.T) {
	unlimited := func(s *rig.Ship) { s.Limits = nil }
	if f := the(t, withShip(t, unlimited), "no limit of sea"); f.Verdict != check.Caution || f.Source == "" {
		t.Errorf("%+v", f)
	}
}

// 3 % of 3420 m; in shallow water 5 to 8 %, of 100 m 5 to 8 m, of 300 m 15 to 24 m.
func TestTheStationCircleIsAShareOfTheWaterDepth(t *testing.T) {
	const what = "station circle of"
	keeping := func(metres float64, source string) func(*rig.Ship) {
		return func(s *rig.Ship) { s.PositionKeeping = rig.Figure{Value: metres, Source: source} }
	}
	for _, c := range []struct {
		water, source string
		keeps         float64
		want          gear
	}{
		{"3420 m", "sea trial", 6, gear{check.Pass, 6, 102.6, "m"}},
		{"3420 m", "sea trial", 110, gear{check.Caution, 110, 102.6, "m"}},
		{"3420 m", "sea trial", 180, gear{check.Stop, 180, 171, "m"}},
		{"732 m", "sea trial", 24, gear{check.Caution, 24, 21.96, "m"}},
		{"731 m", "sea trial", 24, gear{check.Pass, 24, 36.55, "m"}},
		{"300 m", "sea trial", 20, gear{check.Caution, 20, 15, "m"}},
		{"300 m", "sea trial", 25, gear{check.Stop, 25, 24, "m"}},
		{"300 m", "from memory", 25, gear{check.Caution, 25, 24, "m"}},
	} {
		c.want.is(t, the(t, withShip(t, keeping(c.keeps, c.source), "sites[0].water_depth="+c.water), what))
	}
}

// ODP Leg 176 Prelim. Report, positioning: 5 % of 731 m is an alarm at 37 m.
func TestTheCircleInShallowWaterIsThePublishedOne(t *testing.T) {
	f := the(t, checked(t, "sites[0].water_depth=731 m"), "station circle of 5 %")
	if math.Round(f.Limit) != 37 {
		t.Errorf("%g m", f.Limit)
	}
}

func TestTheBuiltInShipIsCautionedInShallowWater(t *testing.T) {
	gear{check.Caution, 6, 5, "m"}.is(t, the(t, checked(t, "sites[0].water_depth=100 m"), "station circle"))
}

// 60 klbf ft of tongs, API RP 7G and Farr's formula for the connections.
func TestTongsMustReachTheMakeUpTorque(t *testing.T) {
	const collars, pipe = "tongs reach the make-up torque of 6-5/8 FH", "tongs reach the make-up torque of 5-1/2 FH, 7 x 4.125 in"
	gear{check.Pass, 56.5, 60, "klbf ft"}.is(t, the(t, checked(t), collars))
	weak := checked(t, "string.make_up_torque=40 klbf ft")
	gear{check.Caution, 56.5, 40, "klbf ft"}.is(t, the(t, weak, collars))
	gear{check.Pass, 30.98, 40, "klbf ft"}.is(t, the(t, weak, pipe))
}

func TestPipeBringsItsConnectionToTheCheck(t *testing.T) {
	f := the(t, checked(t, "string.pipe=[{name: 5 in 19.50 lb/ft S-135, class: new, length: 9000 m}]"), "tongs reach the make-up torque of NC50")
	gear{check.Pass, 31.025, 60, "klbf ft"}.is(t, f) // API RP 7G table 10
}

func TestRotatingMustStayBelowTheWeakestConnection(t *testing.T) {
	const what = "rotating torque below the weakest make-up torque, 5-1/2 FH, 7 x 4.125 in"
	gear{check.Pass, 30, 30.98, "klbf ft"}.is(t, the(t, checked(t), what))
	gear{check.Caution, 33.2, 30.98, "klbf ft"}.is(t, the(t, checked(t, "string.rotating_torque=45 kN m"), what)) // 45,000/1.3558
	for _, f := range withShip(t, func(s *rig.Ship) { s.Torque.Rotating = rig.Figure{} }) {
		if strings.HasPrefix(f.What, "rotating torque") {
			t.Errorf("no rotating torque is stated, and yet %s: %s", f.Verdict, f.What)
		}
	}
}

func TestWornJointsAreNeverPassedByTheTorqueOfNewOnes(t *testing.T) {
	const pipe = "string.pipe=[{name: 5-1/2 in 24.70 lb/ft S-140, class: premium, length: 9000 m}]"
	gear{check.Caution, 20, 30.98, "klbf ft"}.is(t, the(t, checked(t, pipe, "string.rotating_torque=20 klbf ft"), "rotating torque"))
}

func TestTorqueIsLeftToTheMakersTable(t *testing.T) {
	for _, f := range checked(t, "string.make_up_torque=20 klbf ft", "string.rotating_torque=60 klbf ft") {
		if f.Unit == "klbf ft" && (!strings.Contains(f.Source, "maker's current table; not to be exceeded") || f.Verdict == check.Stop) {
			t.Errorf("%s: %s: %s", f.Verdict, f.What, f.Source)
		}
	}
}

func TestLoadsOnTheCompensatorAreCountedToTheDeepestRotatedHole(t *testing.T) {
	shallow := the(t, checked(t, "sites[0].holes[B]={name: B, core: [{with: APC, to: 400 mbsf}]}"), "load on the heave compensator")
	if !strings.Contains(shallow.What, unit.Length(11+3420+290).Tell()) {
		t.Errorf("hole A alone is rotated, to 290 mbsf: %s", shallow.What)
	}
}

// Hole A goes to refusal, which may be as deep as the approved 400 m, though nothing is stated deeper than the
// 380 m of hole B: the string must bear 400 m.
func TestTheStringIsHeldAgainstTheDeepestThatACorerMayReach(t *testing.T) {
	as := func(settings ...string) float64 {
		return the(t, withShip(t, func(*rig.Ship) {}, settings...), "hook load").Value
	}
	refused, stated := as(), as("sites[0].holes[B].core[0].to=400 mbsf")
	if shallower := as("sites[0].holes[A].core[0].to=200 mbsf"); refused != stated || shallower >= refused {
		t.Errorf("hook load %g klbf where a corer may go on to 400 m, %g where that is stated, %g to 380 m", refused, stated, shallower)
	}
}

// One assembly to lose and one to go on with; ten collars each.
func TestThereIsAnAssemblyToLose(t *testing.T) {
	const assemblies, collars = "assemblies on board", "collars for all assemblies"
	gear{check.Caution, 1, 2, ""}.is(t, the(t, checked(t, "string.assemblies=1"), assemblies))
	gear{check.Pass, 2, 2, ""}.is(t, the(t, checked(t, "string.assemblies=2"), assemblies))
	gear{check.Pass, 20, 20, ""}.is(t, the(t, checked(t, "string.assemblies=2", "string.collars=10", "string.collars_on_board=20"), collars))
	gear{check.Caution, 20, 19, ""}.is(t, the(t, checked(t, "string.assemblies=2", "string.collars=10", "string.collars_on_board=19"), collars))
}

// The shoe of the extended barrel goes back into the bit above 12,000 lb (ODP XCB tool sheet): limestone wants 15,
// chalk 8.
func TestTheExtendedBarrelIsCautionedInRockThatWantsWeight(t *testing.T) {
	const chalk, limestone = "{bottom: 250 mbsf, lithology: chalk}", "{bottom: 400 mbsf, lithology: limestone}"
	gear{check.Caution, 15, 12, "klbf"}.is(t, the(t, checked(t, "sites[0].layers=["+chalk+", "+limestone+"]"), "extended barrel in limestone"))
	for _, f := range checked(t) {
		if strings.HasPrefix(f.What, "extended barrel in") {
			t.Errorf("%s: %s", f.Verdict, f.What)
		}
	}
}

// The string hangs from the rig floor, 11 m above the sea.
func TestTheReachIsCountedFromTheRigFloor(t *testing.T) {
	found := checked(t)
	water, target := the(t, found, "string reaches the sea floor"), the(t, found, "string reaches the target")
	if math.Abs(target.Limit-water.Limit-11) > 1e-6 || math.Abs(target.Value-water.Value-11-290) > 1e-6 && math.Abs(target.Value-water.Value-11-400) > 1e-6 {
		t.Errorf("sea floor at %.1f of %.1f m, target at %.1f of %.1f m: 11 m are not between", water.Value, water.Limit, target.Value, target.Limit)
	}
}
