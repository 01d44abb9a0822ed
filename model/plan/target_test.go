package plan

import (
	"testing"

	"coredays/model/coring"
	"coredays/model/spread"
	"coredays/model/unit"
)

func TestTargetIsTheDeepestOfDrillingAheadAndStages(t *testing.T) {
	piston, rotary := Stage{With: coring.APC, To: 250, ToRefusal: true}, Stage{With: coring.RCB, To: 380}
	for want, hole := range map[unit.Depth]*Hole{
		0:   {},
		250: {Stages: []Stage{piston}},
		270: {DrillAheadTo: 270},
		380: {DrillAheadTo: 270, Stages: []Stage{rotary, piston}},
		400: {DrillAheadTo: 400, Stages: []Stage{piston}},
	} {
		item := Item{Name: "A", Hole: hole}
		if got := item.Target(); got != want {
			t.Errorf("target of %+v is %g mbsf, want %g", *hole, float64(got), float64(want))
		}
	}
}

func TestAHoleIsAskedForToItsStatedDepthsNotToWhatRefusalAllows(t *testing.T) {
	refusal := Stage{With: coring.APC, To: 500, ToRefusal: true}
	for want, hole := range map[unit.Depth]*Hole{420: {Stages: []Stage{refusal, {With: coring.XCB, To: 420}}}, 500: {Stages: []Stage{refusal}}, 270: {DrillAheadTo: 270, Stages: []Stage{refusal}}} {
		if got := (&Item{Hole: hole}).AskedFor(); got != want {
			t.Errorf("asked for %g m, want %g", float64(got), float64(want))
		}
	}
	if got := (&Item{Task: &Task{}}).AskedFor(); got != 0 {
		t.Errorf("a task is asked for to %g m", float64(got))
	}
}

func TestTheSectionOfASiteGoesToItsDeepestStatedDepth(t *testing.T) {
	refusal := Item{Hole: &Hole{Stages: []Stage{{With: coring.APC, To: 500, ToRefusal: true}}}}
	stated := Item{Hole: &Hole{Stages: []Stage{{With: coring.APC, To: 500, ToRefusal: true}, {With: coring.XCB, To: 250}}}}
	for want, items := range map[unit.Depth][]Item{250: {stated, refusal}, 500: {refusal, refusal}, 0: {{Task: &Task{}}}} {
		if got := (&Site{Items: items}).SectionTo(); got != want {
			t.Errorf("the section goes to %g m, want %g", float64(got), float64(want))
		}
	}
}

func TestTaskHasNoTarget(t *testing.T) {
	item := Item{Name: "observatory", Task: &Task{Steps: []Step{{Takes: spread.Just(3600)}}}}
	if got := item.Target(); got != 0 {
		t.Errorf("target of a task is %g mbsf", float64(got))
	}
}

// What a planner does not say is the harmless choice.
func TestNothingStatedIsOpenHoleWithoutReentryTriedAgain(t *testing.T) {
	var h Hole
	if h.Abandon != OpenHole || h.Reentry != NoReentry || h.IfLost != Retry {
		t.Errorf("%+v", h)
	}
}
