package scenario

import (
	"math"
	"path/filepath"
	"strings"
	"testing"

	"coredays/model/rig"
)

// 60,000 x 0.45359237 x 9.80665 x 0.3048 is 81,349 N m; 400 short tons are 3.559 MN.
func TestTheGearOfTheBuiltInShipIsRead(t *testing.T) {
	s := builtIn().ship
	for what, c := range map[string]struct {
		figure rig.Figure
		want   float64
	}{
		"rated load of the compensator": {s.Compensator.Load, 3.5586e6}, "its stroke": {s.Compensator.Stroke, 6.1}, "make-up torque": {s.Torque.MakeUp, 81_349},
		"rotating torque": {s.Torque.Rotating, 40_675}, "position keeping": {s.PositionKeeping, 6},
	} {
		if math.Abs(c.figure.Value/c.want-1) > 1e-4 || c.figure.Source == "" || strings.Contains(c.figure.Source, ".yaml") {
			t.Errorf("%s: %+v, want %g", what, c.figure, c.want)
		}
	}
}

func TestAScenarioStatesItsGearOtherwise(t *testing.T) {
	base := []byte(readTestFile(t, "broken/base.yaml"))
	p, err := WithSettings(base, "base.yaml", []string{"string.make_up_torque={value: 90 kN m, source: the driller}", "string.compensator_stroke=25 ft"})
	if err != nil {
		t.Fatal(err)
	}
	if got := p.Ship.Torque.MakeUp; got != (rig.Figure{Value: 90_000, Text: "90 kN m", Source: "the driller"}) {
		t.Errorf("%+v", got)
	}
	if got := p.Ship.Compensator; math.Abs(got.Stroke.Value-7.62) > 1e-9 || got.Load != builtIn().ship.Compensator.Load {
		t.Errorf("%+v", got)
	}
}

// The rotating torque alone may be left out of a ship file.
func TestAShipFileStatesItsGear(t *testing.T) {
	text, _, _ := strings.Cut(string(drillshipText), "\nposition_keeping:") // the last of the file
	from, _, _ := strings.Cut(text, "  compensator_load:")
	_, rest, _ := strings.Cut(text, "\nendurance:")
	_, faults := readShip(filepath.Join("ships", "mine.yaml"), []byte(from+"endurance:"+rest))
	want := []string{"position_keeping", "string.compensator_load", "string.compensator_stroke", "string.make_up_torque"}
	if len(faults) != len(want) {
		t.Fatal(faults)
	}
	for i, f := range faults {
		if f.Path != want[i] {
			t.Errorf("%v, want %s", f, want[i])
		}
	}
}
