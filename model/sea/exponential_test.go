package sea

import (
	"math"
	"testing"
)

func TestExponentialIsThatOfTheLibrary(t *testing.T) {
	table := powerTable()
	for x := -120.0; x < 120; x += 0.00731 {
		near(t, "over the library's", exponential(table, x)/math.Exp(x), 1, 1e-12)
	}
	for _, x := range []float64{0, math.Inf(1), math.Inf(-1), 800} {
		if got, want := exponential(table, x), math.Exp(x); got != want {
			t.Errorf("e^%g = %g, want %g", x, got, want)
		}
	}
	if got := exponential(table, math.NaN()); got == got {
		t.Errorf("e^NaN = %g", got)
	}
}
