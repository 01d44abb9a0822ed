package drillstring

import (
	"fmt"
	"math"
	"testing"

	"coredays/model/unit"
)

// taperedBoard is 5 in pipe below 5-1/2 in, both S-140, ten collars.
func taperedBoard(t interface{ Fatal(...any) }, upper string, c Class, each unit.Length) Board {
	return Board{Assembly: assembly(t, 10), Stock: []Stock{
		{kind(t, "5 in 19.50 lb/ft S-140"), c, each},
		{kind(t, upper), c, each}}}
}

// asPublished are the conditions of ODP TN31, Drill String tool sheet: 6 degrees of roll, 100,000 lb of
// overpull. The horn, and a calm vertical, are ours.
func asPublished(allowed unit.Share) Conditions {
	return Conditions{Fluid: Seawater, Roll: Roll{6 * math.Pi / 180, GuideHornRadius}, Overpull: lbf(100_000), Allowed: allowed}
}

// The published reach is 8375 m (ODP TN31, Drill String tool sheet; its ship sheet says 8385 m, another
// page 8235 m). The sheet states neither pipe weight nor class, share of the rating, horn or heave, so ten
// per cent is all that can be asked. New pipe, 90 %, ten collars, a calm vertical give 8560 m, 2 % deep.
// Other readings: 21.90 lb/ft on top 7360 m; the same of the ship page's 30.7 kg/m 8260 m, or at 100 % of
// the rating 8600 m; premium pipe 6350 m; heave of 3 m in 9 s without compensator 7310 m; no roll 10.2 km.
func TestTaperedStringReachesAboutAsDeepAsPublished(t *testing.T) {
	reach := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", New, 20_000).Reach(asPublished(AllowedShare))
	published(t, "reach, m", reach.Length, 1, 8375, 837.5)
	if want := "tension at the top, 5-1/2 in 24.70 lb/ft S-140, new"; reach.Limit != want {
		t.Errorf("limited by %q, want %q", reach.Limit, want)
	}
}

func ExampleBoard_Reach() {
	table, _ := Published()
	assembly, _ := table.CoringAssembly(10)
	lower, _ := table.Pipe("5 in 19.50 lb/ft S-140")
	upper, _ := table.Pipe("5-1/2 in 24.70 lb/ft S-140")
	board := Board{Assembly: assembly, Stock: []Stock{{lower, New, 7000}, {upper, New, 2150}}}
	conditions := asPublished(AllowedShare)
	reach := board.Reach(conditions)
	fmt.Println(reach.Length.Tell(), "limited by", reach.Limit)
	for _, section := range reach.String.Pipe {
		fmt.Println(section.Length.Tell(), section.Name)
	}
	fmt.Println(reach.String.HookLoad(conditions).Static().Tell())
	// Output:
	// 8420 m limited by tension at the top, 5-1/2 in 24.70 lb/ft S-140, new
	// 7000 m 5 in 19.50 lb/ft S-140, new
	// 1260 m 5-1/2 in 24.70 lb/ft S-140, new
	// 605 klbf (2690 kN)
}

func TestRollHeaveAndWearEachShortenTheReach(t *testing.T) {
	rough := asPublished(0)
	calm := rough
	calm.Roll = Roll{}
	heaving := rough
	heaving.Heave = Heave{Height: 3, Period: 9}
	stiff := heaving
	stiff.Hanging = Rigid
	board := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", New, 20_000)
	worn := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", Premium, 20_000)
	got := []unit.Length{board.Reach(calm).Length, board.Reach(rough).Length, board.Reach(stiff).Length, board.Reach(heaving).Length, worn.Reach(heaving).Length}
	for i := range got[1:] {
		if !(got[i+1] < got[i]-100) {
			t.Errorf("reach of calm, roll, rigid heave, elastic heave, worn: %.0f m, wanted falling", got)
		}
	}
}

// Solved by hand for one kind of pipe without assembly: (0.9 R - O)/(m g BF).
func TestUniformPipeReachesItsHandSum(t *testing.T) {
	p := kind(t, "5 in 19.50 lb/ft S-135")
	board := Board{Stock: []Stock{{p, Premium, 20_000}}}
	got := board.Reach(Conditions{Fluid: ppg(8.556), Overpull: lbf(100_000)}).Length
	want := (0.9*560_800 - 100_000) / (23.52 * (1 - 8.556*PoundPerGallon.of(Steel)))
	published(t, "reach, ft", got, unit.Foot, want, 1)
}

func (d Density) of(other Density) float64 { return float64(d / other) }

func TestPipeOnBoardLimitsAShortStock(t *testing.T) {
	board := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", New, 1500)
	reach := board.Reach(asPublished(0))
	if want := board.Assembly.Length() + 3000; !near(reach.Length, want, 1e-6) || reach.Limit != "pipe on board" {
		t.Errorf("%v m limited by %q, want %v by pipe on board", reach.Length, reach.Limit, want)
	}
}

func TestHoistLimitsAStrongString(t *testing.T) {
	c := asPublished(0)
	c.Travelling, c.Hoist = 50_000, lbf(500_000)
	reach := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", New, 20_000).Reach(c)
	if got := reach.String.Margin(c); reach.Limit != "the hoist" || math.Abs(float64(got.Hoist)) > 1 || got.Pipe < 0 {
		t.Errorf("limited by %q with %+v, wanted the hoist with nothing left", reach.Limit, got)
	}
}

func TestStringHangsWhereItIsAskedToOrSaysWhyNot(t *testing.T) {
	board := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", New, 20_000)
	s, err := board.Hang(6900, asPublished(0))
	if err != nil || !near(s.Length(), 6900, 1e-6) || s.Worst(asPublished(0)).Used() > 1 {
		t.Errorf("asked for 6900 m: %.1f m, %v", s.Length(), err)
	}
	for depth, want := range map[unit.Length]string{
		9500: "the string reaches 8560 m and not 9500 m: limited by tension at the top, 5-1/2 in 24.70 lb/ft S-140, new",
		20:   "the assembly is 155 m long, the bit can't hang at 20 m",
	} {
		if _, err := board.Hang(depth, asPublished(0)); err == nil || err.Error() != want {
			t.Errorf("%v m: %v, want %q", depth, err, want)
		}
	}
}

func TestPipeHeldFastWithoutHornBearsNoRoll(t *testing.T) {
	c := asPublished(0)
	c.Roll.Horn = 0
	if got := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", New, 20_000).Reach(c); len(got.String.Pipe) != 0 {
		t.Errorf("clamped pipe at 6 degrees of roll reaches %.0f m", got.Length)
	}
}

func TestNothingHangsInResonance(t *testing.T) {
	c := Conditions{Fluid: Seawater, Heave: Heave{Height: 1, Period: 0.1}} // sound needs longer through the assembly
	if got := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", New, 5000).Reach(c); got.Length != 0 {
		t.Errorf("reaches %g m", got.Length)
	}
}
