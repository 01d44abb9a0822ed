package chart

import (
	"image/color"
	"math"
	"testing"
)

// luminance is the relative luminance of WCAG 2.1, from memory.
func luminance(c color.NRGBA) float64 {
	linear := func(v uint8) float64 {
		x := float64(v) / 255
		if x <= 0.03928 {
			return x / 12.92
		}
		return math.Pow((x+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// contrast is the contrast ratio of WCAG 2.1, from memory: 1 to 21.
func contrast(a, b color.NRGBA) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// The letters of charts are of 7.5 to 9 points: small text, which wants 4.5 (WCAG 2.1, 1.4.3, from memory).
func TestLettersAreReadOnEveryGround(t *testing.T) {
	for name, c := range map[string]color.NRGBA{"ink": ink, "stone": stone, "deep": deep, "ochre": ochre, "plum": plum} {
		if on := contrast(c, paper); on < 5.5 {
			t.Errorf("%s on paper has a contrast of %.2f", name, on)
		}
		if on := contrast(c, sand); on < 4.5 {
			t.Errorf("%s on sand has a contrast of %.2f", name, on)
		}
	}
	if black := contrast(color.NRGBA{A: 255}, paper); math.Abs(black-21) > 1e-9 {
		t.Errorf("black on white has %g", black)
	}
}
