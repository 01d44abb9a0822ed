package drillstring

import (
	"testing"

	"coredays/model/unit"
)

// freePoint is a worked example of free pipe.
type freePoint struct {
	area, stretch, pull float64 // in2, in, lb
	want, half          float64 // ft
	source              string
}

const (
	lapeyrouse = "Lapeyrouse, www.netwasgroup.us/formulas-calculations/determine-free-point-constant-fpc.html"
	stuckDepth = "www.drillingformulas.com/tag/stuck-depth/"
)

func TestFreeLengthIsPublishedOne(t *testing.T) {
	square := func(b Tube) float64 { return float64(b.Area()) / float64(inch*inch) }
	for _, c := range []freePoint{
		{17.93 / 3.4, 24, 30_000, 10_547, 0.5, lapeyrouse}, // plain-end weight as the page rounds it
		{square(inches(2.875, 2.441)), 25, 20_000, 5_663, 1, lapeyrouse},
		{square(inches(3.5, 2.992)), 20, 25_000, 5_180, 0.5, stuckDepth},
	} {
		got := FreeLength(Area(c.area)*Area(inch*inch), unit.Length(c.stretch)*inch, lbf(c.pull))
		published(t, c.source, got, unit.Foot, c.want, c.half)
	}
}

// The free point constant is 2500 times the area: free feet for an inch at a thousand pounds. The page
// prints area 1.820 for the tubing but a constant that belongs to 1.812.
func TestFreePointConstantIsPublishedOne(t *testing.T) {
	for _, c := range []struct{ outside, inside, area, constant, half float64 }{
		{4.5, 3.826, 4.407, 11_017.5, 1.25}, {2.875, 2.441, 1.812, 4_530, 1.25}, {3.5, 2.992, 2.590, 6_475.5, 1.25},
	} {
		area := inches(c.outside, c.inside).Area()
		published(t, "area, in2", area, Area(inch*inch), c.area, 5.1e-4)
		published(t, "constant, ft", FreeLength(area, inch, lbf(1000)), unit.Foot, c.constant, c.half)
	}
}

// API RP 7G as at www.drillingformulas.com/tag/drillstring-elongation/: L T/(735,000 W) in inches, and
// L T/(26.7 W) in mm, m, kN, kg/m. The two disagree: the first makes 26.4 of the second.
func TestStretchIsThatOfTheTradeFormula(t *testing.T) {
	body := inches(5, 4.276)
	got := Stretch(body.Area(), ft(10_000), lbf(100_000))
	published(t, "inches", got, inch, 10_000*100_000/735_000/17.93, 0.08) // W good to 0.03 %, 3.4 lb/ft per in2 to 0.1 %
	si := Stretch(body.Area(), 3000, 400_000)
	published(t, "mm", si, 0.001, 3000*400/26.7/float64(body.Mass()), 0.015*1700)
}

func TestStretchOfATaperedStringTurnsBackIntoItsFreeLength(t *testing.T) {
	s := taperedString()
	for _, free := range []unit.Length{100, 499, 1500} {
		upper := min(free, 500)
		stretch := Stretch(s.Pipe[1].Body.Area(), upper, 200_000) + Stretch(s.Pipe[0].Body.Area(), free-upper, 200_000)
		published(t, "free, m", s.FreeLength(stretch, 200_000), 1, float64(free), 1e-6)
	}
	published(t, "free to the bit, m", s.FreeLength(10*s.Stretch(1000), 1000), 1, 2500, 1e-9)
	published(t, "the whole, m", s.FreeLength(s.Stretch(1000), 1000), 1, 2500, 1e-6)
}

func taperedString() String {
	lower, upper := inches(5, 4.276), inches(5.5, 4.67)
	return String{Pipe: []Section{{Length: 2000, Mass: 35, Body: lower, Rating: 3e6}, {Length: 500, Mass: 41, Body: upper, Rating: 4e6}}}
}

// A hanging bar stretches as if half its weight were at the end: g rho L^2/(2E) (textbook), 5000 m in air
// 4.65 m by hand: 9.80665 * 7849 * 5000^2 / (2 * 2.0684e11).
func TestBarStretchesUnderItsOwnWeightAsByHand(t *testing.T) {
	body := inches(5, 4.276)
	s := String{Pipe: []Section{{Length: 2000, Mass: body.Mass(), Body: body}, {Length: 3000, Mass: body.Mass(), Body: body}}}
	published(t, "m", s.OwnStretch(0), 1, 4.65, 0.005)
}
