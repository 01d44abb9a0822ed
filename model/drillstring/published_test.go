package drillstring

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// drillers' units, for figures as published.
func lbf(f float64) unit.Force       { return unit.Force(f) * unit.PoundForce }
func ft(l float64) unit.Length       { return unit.Length(l) * unit.Foot }
func lbft(m float64) unit.LinearMass { return unit.LinearMass(m * pound / float64(unit.Foot)) }
func inches(outside, inside float64) Tube {
	return Tube{unit.Length(outside) * inch, unit.Length(inside) * inch}
}
func ppg(d float64) Density { return Density(d) * PoundPerGallon }

// published compares a figure with the published one, which is good to half of its last digit.
func published[Q ~float64](t *testing.T, what string, got, one Q, want, half float64) {
	t.Helper()
	if g := float64(got / one); !(math.Abs(g-want) <= half) {
		t.Errorf("%s: %.8g, published %.8g ± %g", what, g, want, half)
	}
}

func table(t interface{ Fatal(...any) }) Table {
	table, err := Published()
	if err != nil {
		t.Fatal(err)
	}
	return table
}

func kind(t interface{ Fatal(...any) }, name string) Pipe {
	p, err := table(t).Pipe(name)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func assembly(t interface{ Fatal(...any) }, collars int) Assembly {
	a, err := table(t).CoringAssembly(collars)
	if err != nil {
		t.Fatal(err)
	}
	return a
}
