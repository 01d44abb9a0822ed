package sim

import (
	"slices"
	"testing"
)

func TestRanksShareTheirPlaceWhereValuesAreEqual(t *testing.T) {
	if got, want := ranks([]float64{3, 1, 2, 2}), []float64{3, 0, 1.5, 1.5}; !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
	if got := ranks(nil); len(got) != 0 {
		t.Errorf("%v of nothing", got)
	}
}
