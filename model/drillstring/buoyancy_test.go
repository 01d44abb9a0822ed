package drillstring

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// www.toolgrit.com/guides/drill-string-buoyancy; sea water: computed beside it.
func TestBuoyancyFactorsArePublishedOnes(t *testing.T) {
	for _, c := range []struct{ mud, want, half float64 }{
		{8.6, 0.869, 5e-4}, {10, 0.847, 5e-4}, {12, 0.817, 5e-4}, {14, 0.786, 5e-4}, {16, 0.756, 5e-4}, {18, 0.725, 5e-4}, {20, 0.695, 5e-4},
		{8.54, 0.8696, 5e-5}, {8.56, 0.8693, 5e-5},
	} {
		published(t, "factor", BuoyancyIn(ppg(c.mud), ppg(65.5)), 1, c.want, c.half)
	}
	// Steel of 490 lb/ft3 is 65.50 lb/gal to four figures, so the two forms agree.
	published(t, "steel, lb/gal", Steel, PoundPerGallon, 65.50, 0.005)
}

// www.scribd.com/document/346208360: 6000 ft of 5 x 4.276 in pipe and 500 ft of 9 x 3 in collars in
// 80 lb/ft3. The page takes pi as 3.14, so that its areas and forces are 3.14/pi of the true ones.
func TestPressureAreaWeightIsPublishedOne(t *testing.T) {
	const pi = math.Pi / 3.14
	collars, pipe := inches(9, 3), inches(5, 4.276)
	s := String{Assembly: Assembly{{Length: ft(500), Mass: collars.Mass(), Body: collars}}, Pipe: []Section{{Length: ft(6000), Mass: pipe.Mass(), Body: pipe}}}
	fluid := 80 * PoundPerCubicFoot
	parts, shoulders := s.Parts(fluid), s.Shoulders(fluid)
	published(t, "pipe in air", parts[1].InAir/pi, unit.PoundForce, 107_635, 0.5)
	published(t, "collars in air", parts[0].InAir/pi, unit.PoundForce, 96_162, 1) // page rounds the area first
	published(t, "F2", shoulders[0].Force/pi, unit.PoundForce, 204_100, 50)
	published(t, "F1", -shoulders[1].Force/pi, unit.PoundForce, 170_800, 50)
	published(t, "area of F2, in2", shoulders[0].Area/pi, Area(inch*inch), 56.52, 0.005)
	published(t, "area of F1, in2", -shoulders[1].Area/pi, Area(inch*inch), 51.24, 0.01) // difference of two rounded areas
	published(t, "net", (shoulders[0].Force+shoulders[1].Force)/pi, unit.PoundForce, 33_300, 50)
	published(t, "buoyed by pressure", s.PressureAreaWeight(fluid)/pi, unit.PoundForce, 170_497, 50) // net is good to 50
	published(t, "buoyed by factor", s.Buoyed(fluid)/pi, unit.PoundForce, 170_524, 10)               // factor is good to 0.00005
	published(t, "factor", Buoyancy(fluid), 1, 0.8367, 5e-5)
}
