package coring

import "testing"

func TestEveryToolIsReadByItsName(t *testing.T) {
	for tool := range Tools {
		if got, err := ParseTool(tool.String()); err != nil || got != tool {
			t.Errorf("%v reads as %v, %v", tool, got, err)
		}
	}
	for _, text := range []string{"", "apc", "ADCB"} {
		if _, err := ParseTool(text); err == nil || err.Error() != "is no coring tool" {
			t.Errorf("%q: %v", text, err)
		}
	}
}

// Letters by which ocean drilling numbers its cores, from memory; strokes from the sources of Tool.Stroke.
func TestToolsAreWhatTheyAre(t *testing.T) {
	for tool, want := range map[Tool]struct {
		letter   string
		piston   bool
		stroke   float64
		assembly Assembly
	}{
		APC: {"H", true, 9.5, PistonBHA}, HLAPC: {"F", true, 4.7, PistonBHA}, XCB: {"X", false, 9.5, PistonBHA}, RCB: {"R", false, 9.5, RotaryBHA},
	} {
		if tool.Letter() != want.letter || tool.Piston() != want.piston || float64(tool.Stroke()) != want.stroke || tool.Assembly() != want.assembly {
			t.Errorf("%v: core letter %s, piston %v, stroke %g m, assembly %v", tool, tool.Letter(), tool.Piston(), float64(tool.Stroke()), tool.Assembly())
		}
	}
}

func TestAssembliesAreNamedApart(t *testing.T) {
	for a, want := range map[Assembly]string{NoBHA: "none", PistonBHA: "APC/XCB", RotaryBHA: "RCB"} {
		if a.String() != want {
			t.Errorf("assembly %d is %q, want %q", int(a), a, want)
		}
	}
}
