package drillstring

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// Recomputed checks: rigid string in a sinusoid.
func TestHeaveAccelerationIsAsRecomputed(t *testing.T) {
	for _, c := range []struct{ height, period, want, share float64 }{{3, 9, 0.731, 7.5}, {5, 10, 0.987, 10.1}} {
		a := Heave{unit.Length(c.height), unit.Duration(c.period)}.Acceleration()
		published(t, "m/s2", a, 1, c.want, 5e-4)
		published(t, "share of weight, %", 100*a/gravity, 1, c.share, 0.05)
	}
}

// General bar theory with c = 5120 m/s: 5000 m in 9 s give 1.19.
func TestElasticBarAmplifiesHeaveAsRecomputed(t *testing.T) {
	published(t, "tan(kL)/(kL)", Amplification(5000.0/5120, 9), 1, 1.19, 0.005)
	published(t, "short bar", Amplification(1e-6, 9), 1, 1, 1e-9)
	if got := Amplification(2.25, 9); !math.IsInf(got, 1) {
		t.Errorf("at resonance %g", got)
	}
}

// The tangent is the closed form of u” = -k^2 u, u'(bit) = 0: here the bar is cut into masses and
// springs instead, and the top heaved.
func TestElasticBarAgreesWithAChainOfMasses(t *testing.T) {
	const n, travel, period = 4000, 1.2, 9.0
	omega := 2 * math.Pi / period
	step := omega * travel / n // phase along one element
	u, force := 1.0, 0.0       // at the bit, any amplitude
	for range n {
		force += step * step * u // omega^2 m u over spring rate
		u -= force
	}
	rigid := float64(n) * step * step * u
	published(t, "amplification", Amplification(travel, period), 1, force/rigid, 1e-3)
}

func TestSoundIsSlowerWhereJointsAddMass(t *testing.T) {
	plain := inches(5, 4.276)
	bare := String{Pipe: []Section{{Length: 5130, Mass: plain.Mass(), Body: plain}}}
	published(t, "plain steel, s", bare.TravelTime(), 1, 1, 0.003) // c about 5120 m/s, general theory
	jointed := String{Pipe: []Section{{Length: 5130, Mass: 2 * plain.Mass(), Body: plain}}}
	published(t, "twice the mass, s", jointed.TravelTime(), bare.TravelTime(), math.Sqrt2, 1e-9)
}

func TestHookLoadAddsItsPartsUp(t *testing.T) {
	s := String{Assembly: Assembly{{Length: 100, Mass: 200}}, Pipe: []Section{{Length: 1000, Mass: 30, Body: inches(5, 4.276)}}}
	c := Conditions{Heave: Heave{3, 9}, Hanging: Rigid, Travelling: 50_000}
	got := s.HookLoad(c)
	published(t, "assembly, N", got.Assembly, 1, 20_000*gravity, 1e-6)
	published(t, "pipe, N", got.Pipe, 1, 30_000*gravity, 1e-6)
	published(t, "travelling, N", got.Travelling, 1, 50_000*gravity, 1e-6)
	published(t, "heave, N", got.Heave, 1, 100_000*c.Heave.Acceleration(), 1e-6)
	published(t, "total, N", got.Total(), 1, 100_000*(gravity+c.Heave.Acceleration()), 1e-6)
}

func TestElasticHeaveLoadsMoreThanRigid(t *testing.T) {
	s := coringString(t, New)
	rigid := Conditions{Fluid: Seawater, Heave: Heave{3, 9}, Hanging: Rigid}
	elastic := rigid
	elastic.Hanging = Elastic
	more := float64(s.HookLoad(elastic).Heave / s.HookLoad(rigid).Heave)
	published(t, "elastic over rigid", more, 1, Amplification(s.TravelTime(), 9), 1e-9)
	if !(more > 1.19) { // joints make it softer than plain steel of 5000 m
		t.Errorf("elastic over rigid %g", more)
	}
}
