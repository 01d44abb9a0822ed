package drillstring

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// API RP 7G table 2 as reproduced at ru.scribd.com/document/436117436 rounds to 10 lb; premium of 5 in
// S-135 to 100 lb (scribd.com/document/552214615). The others are computed, to 1 or 10 lb.
func TestTensileRatingsFollowFromGeometry(t *testing.T) {
	rounding := map[string]float64{"5 in 19.50 lb/ft S-135": 50}
	for _, p := range table(t).Pipes {
		for _, c := range []Class{New, Premium} {
			half := 5.0
			if c == Premium {
				half = max(half, rounding[p.Name])
			}
			got := unit.Force(float64(p.Yield) * float64(p.Body.Worn(c.wall()).Area()))
			published(t, p.Name+" "+c.String(), got, unit.PoundForce, float64(p.Rating(c)/unit.PoundForce), half)
		}
	}
}

func TestPipeTableHoldsThePublishedRatings(t *testing.T) {
	for _, c := range []struct {
		name  string
		class Class
		want  float64 // lb
	}{
		{"5 in 19.50 lb/ft S-135", New, 712_070}, {"5 in 19.50 lb/ft S-135", Premium, 560_800},
		{"5 in 25.60 lb/ft S-135", New, 954_260}, {"5-1/2 in 21.90 lb/ft S-135", New, 786_810}, {"5-1/2 in 24.70 lb/ft S-135", New, 895_000},
		{"5-1/2 in 21.90 lb/ft S-135", Premium, 620_604}, {"5-1/2 in 24.70 lb/ft S-135", Premium, 704_313}, // computed, API from memory agrees
		{"5 in 19.50 lb/ft S-140", New, 738_440}, {"5 in 19.50 lb/ft S-140", Premium, 581_530}, // computed, grade from memory
	} {
		published(t, c.name, kind(t, c.name).Rating(c.class), unit.PoundForce, c.want, 0.01)
	}
}

// The data sheet of 5 in 19.50 S-135: area 5.2746 in2, premium 4.855 in outside and 4.154 in2.
func TestBodyAreasArePublishedOnes(t *testing.T) {
	body := inches(5, 4.276)
	published(t, "new, in2", body.Area(), Area(inch*inch), 5.2746, 5e-5)
	published(t, "premium, in2", body.Worn(0.8).Area(), Area(inch*inch), 4.154, 5e-4)
	published(t, "premium outside, in", body.Worn(0.8).Outside, inch, 4.855, 5e-4)
}

// Lapeyrouse's 2.67 (OD2 - ID2), as at www.netwasgroup.us/formulas-calculations/determine-free-point-constant-fpc.html;
// collar of 8 x 2-13/16 in by displacement, docs.kws.tn/formulas/1/drill-pipe.html: 149.678 lb/ft with 2747 lb/bbl.
func TestMassOfPlainTubeIsPublishedOne(t *testing.T) {
	published(t, "5 in, lb/ft", inches(5, 4.276).Mass(), lbft(1), 17.93, 0.02) // 2.67 is good to 0.2 %
	published(t, "coring collar, lb/ft", inches(8.25, 4.125).Mass(), lbft(1), 136.3, 0.25)
	published(t, "coring collar, kg/m", inches(8.25, 4.125).Mass(), 1, 202.8, 0.4)
	displaced := unit.Length(0.0544879*42*231) * inch * inch * inch / unit.Foot // bbl/ft as an area
	published(t, "8 in collar's displacement, bbl/ft", inches(8, 2.8125).Area(), Area(displaced), 1, 1e-4)
	// Steel of 490 lb/ft3 weighs 2751 lb/bbl against the page's 2747.
	published(t, "8 in collar, lb/ft", inches(8, 2.8125).Mass(), lbft(1), 149.678, 149.678*(2751.2/2747-1)+0.05)
	// The page's rules 2.66 (spiral 2.56) times OD2 - ID2 are 0.5 % light of 490 lb/ft3, which makes 2.6725.
	published(t, "by the rule, lb/ft", inches(8, 2.8125).Mass(), lbft(1), 149.199, 149.199*(2.6725/2.66-1)+0.05)
	published(t, "spiral, lb/ft", inches(8, 2.8125).SpiralMass(), lbft(1), 143.591, 143.591*(2.6725/2.66-1)+0.05)
}

func TestEveryRowOfTheTablesHasItsSource(t *testing.T) {
	table := table(t)
	if len(table.Pipes) != 7 || len(table.Collars) != 3 || len(table.MakeUps) != 6 {
		t.Errorf("%d pipes, %d collars, %d torques", len(table.Pipes), len(table.Collars), len(table.MakeUps))
	}
	for _, p := range table.Pipes {
		if plain := p.Body.Mass(); p.Source == "" || p.MassSource == "" || p.Mass <= plain || p.Mass > plain*1.4 {
			t.Errorf("%s: %g kg/m against plain %g, sources %q, %q", p.Name, p.Mass, plain, p.Source, p.MassSource)
		}
	}
	for _, c := range table.Collars {
		if c.Source == "" || math.Abs(float64(c.Mass/c.Body.Mass())-1) > 0.25 {
			t.Errorf("%s: %g kg/m, plain %g", c.Name, c.Mass, c.Body.Mass())
		}
	}
}

// ODP TN31: all parts of the string have at least 4-1/8 in of bore. The joint on the data sheet and the
// heavy 5 in body have not: such pipe lets no core barrel through.
func TestCoreBarrelsPassThePipeOfACoringString(t *testing.T) {
	for name, want := range map[string]bool{"5 in 19.50 lb/ft S-140": true, "5-1/2 in 24.70 lb/ft S-140": true, "5 in 25.60 lb/ft S-135": false, "5 in 19.50 lb/ft S-135": false} {
		if got := kind(t, name).Bore() >= CoreBore-1e-9; got != want {
			t.Errorf("%s: barrel passes %v", name, got)
		}
	}
}

func TestAFaultyTableNamesRowAndColumn(t *testing.T) {
	err := readRows("name,outside\nthin pipe,5\n", func(r row) { r.length("outside") })
	if want := `thin pipe: column "outside": "5" has no unit; wanted is a length with its unit, such as "3420 m"`; err == nil || err.Error() != want {
		t.Errorf("%v, want %s", err, want)
	}
}
