package coring

import (
	"slices"
	"testing"

	"coredays/model/activity"
	"coredays/model/rig"
)

// A line that is left out of the table but for the last does compile, and stands there empty.
func TestEveryToolHasItsTraits(t *testing.T) {
	var names, whats, letters []string
	for tool := range Tools {
		is := tool.Of()
		names, whats, letters = append(names, is.Name), append(whats, is.What), append(letters, is.Letter)
		if is.Name == "" || is.What == "" || len(is.Letter) != 1 || is.Stroke <= 0 {
			t.Errorf("tool %d: %+v", int(tool), is)
		}
		if is.Assembly == NoBHA || is.Limit == activity.AnySea {
			t.Errorf("%v runs through assembly %v and is limited by %v", tool, is.Assembly, is.Limit)
		}
		for what, r := range map[string]rig.Rate{"pace": is.DurationFactor, "wire": is.Wire, "handling": is.Handling, "trouble": is.Trouble, "time of trouble": is.TroubleTime} {
			if r == 0 || r >= NoRate {
				t.Errorf("%v has no rate for %s", tool, what)
			}
		}
		if is.LeastRate == 0 {
			t.Errorf("%v: a least rate that is not thought of", tool)
		}
	}
	for _, list := range [][]string{names, whats, letters} {
		slices.Sort(list)
		if len(slices.Compact(slices.Clone(list))) != len(list) {
			t.Errorf("%q are not told apart", list)
		}
	}
}

func TestEveryAssemblyHasItsTraits(t *testing.T) {
	for a := PistonBHA; a <= RotaryBHA; a++ { // those that core
		is := a.Of()
		if is.Name == "" || is.MakeUp == 0 || is.MakeUp >= NoRate {
			t.Errorf("assembly %d: %+v", int(a), is)
		}
		if is.Barrel >= Tools || is.Barrel.Assembly() != a || is.Barrel.Piston() {
			t.Errorf("%v drills ahead as with %v, which is not rotated through it", a, is.Barrel)
		}
	}
	for tool := range Tools {
		if a := tool.Assembly(); a <= NoBHA || a >= Assemblies {
			t.Errorf("%v runs through assembly %d", tool, int(a))
		}
	}
}

// Roller-cone bits turn on the rotary assembly alone: barrels of the other one carry their own shoe (ODP TN31 tool sheets).
func TestAssembliesAreWhatTheyAre(t *testing.T) {
	for a, want := range map[Assembly]AssemblyTraits{
		PistonBHA: {"APC/XCB", rig.PistonMakeUp, XCB, false},
		RotaryBHA: {"RCB", rig.RotaryMakeUp, RCB, true},
	} {
		if *a.Of() != want {
			t.Errorf("%+v, want %+v", *a.Of(), want)
		}
	}
}

// A rate of the wrong tool would be as good a number as any: what each tool asks for is named after it.
func TestToolsAskForTheirOwnRates(t *testing.T) {
	for tool, want := range map[Tool][6]rig.Rate{
		APC:   {rig.PistonDurationFactor, rig.PistonWire, rig.PistonHandling, rig.PistonTrouble, rig.PistonTroubleTime, NoRate},
		HLAPC: {rig.PistonDurationFactor, rig.PistonWire, rig.HalfPistonHandling, rig.PistonTrouble, rig.PistonTroubleTime, NoRate},
		XCB:   {rig.ExtendedDurationFactor, rig.ExtendedWire, rig.ExtendedHandling, rig.ExtendedTrouble, rig.ExtendedTroubleTime, rig.ExtendedLeastRate},
		RCB:   {rig.RotaryDurationFactor, rig.RotaryWire, rig.RotaryHandling, rig.RotaryTrouble, rig.RotaryTroubleTime, NoRate},
	} {
		is := tool.Of()
		if got := [6]rig.Rate{is.DurationFactor, is.Wire, is.Handling, is.Trouble, is.TroubleTime, is.LeastRate}; got != want {
			t.Errorf("%v asks for rates %v, want %v", tool, got, want)
		}
	}
}

func TestOnlyARefusedFullPistonCorerIsFollowedWithinItsStage(t *testing.T) {
	for from := range Tools {
		for with := range Tools {
			if want := from == APC && with == HLAPC; from.GoesOn(with) != want {
				t.Errorf("%v refused, %v named: goes on %v", from, with, !want)
			}
		}
	}
}
