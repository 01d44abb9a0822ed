package drillstring

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// Inputs of a textbook problem (tutorsglobe.com/question/…-5131138.aspx): 600 ft of 8 x 3 in collars in
// 18 lb/gal. The output, 63.9 klb without buckling, is recomputed with 2.67 (OD2 - ID2).
func TestBitWeightWithoutBucklingIsAsRecomputed(t *testing.T) {
	a := Assembly{{Length: ft(600), Mass: lbft(2.67 * (64 - 9)), Body: inches(8, 3), Collar: true}}
	published(t, "collar, lb/ft", a[0].Mass, lbft(1), 146.9, 0.06) // 146.85
	published(t, "klb", a.LoadingWeight(ppg(18)), lbf(1000), 63.9, 0.05)
	published(t, "usable, klb", a.UsableBitWeight(ppg(18)), lbf(1000), 54.3, 0.05) // 85 %, common practice
}

func TestNeutralPointStaysInTheCollarsAtUsableBitWeight(t *testing.T) {
	for collars := 4; collars <= 13; collars++ { // ODP TN31 BHA tool sheet: 4 to 13 joints
		a := assembly(t, collars)
		s := String{Assembly: a, Pipe: []Section{kind(t, "5 in 19.50 lb/ft S-140").Section(4000, New)}}
		height := s.NeutralPoint(a.UsableBitWeight(Seawater), Seawater)
		published(t, "share of the collars", height, a[0].Length, float64(BitWeightShare), 1e-9)
	}
}

func TestPipeIsNoCollar(t *testing.T) {
	a := assembly(t, 10)
	published(t, "loading weight, N", a.LoadingWeight(0), 1, 300*0.3048*202.8*9.80665, 60)
	published(t, "length, ft", a.Length(), unit.Foot, 300+30+180, 1e-6)
	if got := (String{Assembly: a}).NeutralPoint(lbf(1e6), Seawater); !math.IsInf(float64(got), 1) {
		t.Errorf("more bit weight than string, neutral point at %g m", got)
	}
	if _, err := table(t).CoringAssembly(0); err == nil {
		t.Error("no collars, no error")
	}
}

// 15,000 lb at 85 % of 8-1/4 x 4-1/8 in collars: 38.6 m (recomputed, see the coring string) over 0.85.
func TestCollarLengthTurnsTheNeutralPointRound(t *testing.T) {
	collar, err := table(t).Collar("8-1/4 x 4-1/8 in drill collar")
	if err != nil {
		t.Fatal(err)
	}
	published(t, "m", CollarLength(lbf(15_000), collar.Mass, Seawater), 1, 38.6/0.85, 0.08)
}
