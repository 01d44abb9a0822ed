package text_test

import (
	"math"
	"testing"

	"coredays/model/result"
	"coredays/output/text"
)

func TestSmallDriversAreToldTogether(t *testing.T) {
	told, negative := text.Shown([]result.Driver{{Name: "a", Share: 0.01}, {Name: "b", Share: 0.3}, {Name: "c", Share: -0.015}, {Name: "d", Share: 0.705}})
	if len(told) != 3 || told[0].Name != "d" || told[1].Name != "b" || told[2].Name != "the rest (2 smaller causes)" || negative {
		t.Errorf("told %+v", told)
	}
	if rest := told[2].Share; math.Abs(rest+0.005) > 1e-12 { // 0.01 - 0.015
		t.Errorf("the rest is %g", rest)
	}
	told, _ = text.Shown([]result.Driver{{Name: "a", Share: 0.01}, {Name: "b", Share: 0.99}, {Name: "c", Share: math.NaN()}})
	if len(told) != 2 || told[1].Name != "a" {
		t.Errorf("a single small one is told as %+v", told)
	}
}
