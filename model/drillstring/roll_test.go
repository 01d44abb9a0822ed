package drillstring

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// US patent 3618679: a horn keeps the fibre stress below the fatigue limit, 20,000 psi for S-135 pipe
// (Lubinski, from memory). E D/(2R) of 350 ft: 17,860 and 19,640 psi by hand.
func TestGuideHornKeepsBendingBelowTheFatigueLimit(t *testing.T) {
	for _, c := range []struct {
		body Tube
		want float64
	}{{inches(5, 4.276), 17_860}, {inches(5.5, 4.67), 19_640}} {
		curvature := Roll{6 * math.Pi / 180, GuideHornRadius}.Curvature(c.body, lbf(500_000))
		published(t, "psi", Bending(c.body, curvature), unit.Pressure(psi), c.want, 5)
	}
	published(t, "in the horn at 6 degrees, ft", Roll{6 * math.Pi / 180, GuideHornRadius}.Bent(), unit.Foot, 36.65, 0.005)
}

// A long beam under tension, EI y”” = T y”: here it is integrated from far below with small steps, and
// the closed form of its curvature at the clamp compared.
func TestCurvatureOfLeaningPipeIsThatOfABeamUnderTension(t *testing.T) {
	body, tension, angle := inches(5, 4.276), 2e6, 0.01
	k2 := tension / (young * body.secondMoment())
	const n, length = 200_000, 15.0
	h, slope, curve := length/n, 1e-9, 1e-9*math.Sqrt(k2) // the tail, going up
	for range n {
		middle := slope + curve*h/2
		curve += k2 * middle * h // s'' = k2 s
		slope = middle + curve*h/2
	}
	published(t, "curvature, 1/m", Roll{Angle: angle}.Curvature(body, unit.Force(tension)), 1, curve/slope*angle, 1e-4*curve/slope*angle)
}

func TestPipeCarriesUntilItsOutermostFibreIsFull(t *testing.T) {
	for _, r := range []Roll{{}, {0.002, 0}, {0.002, GuideHornRadius}, {0.1, GuideHornRadius}} {
		s := kind(t, "5-1/2 in 24.70 lb/ft S-140").Section(100, New)
		tension := r.Carries(s, 3e6)
		fibre := float64(Bending(s.Body, r.Curvature(s.Body, tension))) * float64(s.Body.Area())
		published(t, "tension and bending, N", float64(tension)+fibre, 1, 3e6, 1e-3)
	}
}
