package alternatives

import (
	"math"
	"testing"

	"coredays/output/outputtest"
)

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-9 || math.IsNaN(got) != math.IsNaN(want) {
		t.Errorf("%s is %g, want %g", what, got, want)
	}
}

func TestOrdersAreHeldAgainstThePlannedOne(t *testing.T) {
	c := outputtest.ThreeOrders() // the first is the planned one, the second the best; the pair is given as the one less the other
	days, chance := MoreDays(c, 1), MoreChance(c, 1)
	near(t, "days", days.Mean, -0.8*outputtest.Day)
	near(t, "days from", days.Low, -1.3*outputtest.Day)
	near(t, "days to", days.High, -0.4*outputtest.Day)
	near(t, "chance", chance.Mean, 0.005)
	near(t, "chance from", chance.Low, -0.025)
	near(t, "chance to", chance.High, 0.025)
	near(t, "the planned one against itself", MoreDays(c, 0).Mean, math.NaN())
	if MoreWords(c, 0) != "" {
		t.Errorf("of the planned one is said %q", MoreWords(c, 0))
	}
}

func TestPlansAreHeldAgainstTheFirst(t *testing.T) {
	c := outputtest.TwoPlans()
	near(t, "days", MoreDays(c, 1).Mean, c.Alternatives[1].Behind.Mean)
	c.Alternatives[1].Less.Mean = 0.25
	near(t, "chance", MoreChance(c, 1).Mean, -0.25)
	near(t, "the first against itself", MoreDays(c, 0).Mean, math.NaN())
}

func TestDaysDecideWhereChancesAreEqual(t *testing.T) {
	c := outputtest.ThreeOrders()
	if ByDays(c) {
		t.Error("62 of 100 is not 90 of 100")
	}
	c.Alternatives[2].Summary.Allotted.ChancePrimary = 0.891
	if !ByDays(c) {
		t.Error("within a point of each other chances count as equal")
	}
}
