package scenario

import (
	"testing"

	"coredays/model/plan"
	"coredays/model/unit"
)

func TestATaskOfStepsIsReadStepByStep(t *testing.T) {
	p := base(t, `sites[0].holes=[{task: seismometer, steps: [{step: survey, takes: 6 h}, {step: set it, takes: 8 h, sea_limit: 2 m, interruptible: no, breakdown: ruins, pipe: at the sea floor}]}]`)
	steps := p.Sites[0].Items[0].Task.Steps
	if len(steps) != 2 {
		t.Fatalf("%d steps", len(steps))
	}
	if s := steps[0]; s.Name != "survey" || s.Takes.Median() != float64(6*unit.Hour) || !s.Interruptible || s.Ruined || s.Pipe != plan.PipeAsItIs {
		t.Errorf("the first is %+v", s)
	}
	if s := steps[1]; s.Name != "set it" || s.SeaLimit != 2 || s.Interruptible || !s.Ruined || s.Pipe != plan.PipeAtTheFloor {
		t.Errorf("the second is %+v", s)
	}
}
