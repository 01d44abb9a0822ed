package drillstring

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// drillers' units, for figures as published.
func lbf(f float64) unit.Force   { return unit.Force(f) * unit.PoundForce }
func ft(l float64) unit.Length   { return unit.Length(l) * unit.Foot }
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

// taperedBoard is 5 in pipe below 5-1/2 in, both S-140, ten collars.
func taperedBoard(t interface{ Fatal(...any) }, upper string, c Class, each unit.Length) Board {
	return Board{Assembly: assembly(t, 10), Stock: []Stock{
		{kind(t, "5 in 19.50 lb/ft S-140"), c, each},
		{kind(t, upper), c, each}}}
}

// asPublished are the conditions of ODP TN31, Drill String tool sheet: 6 degrees of roll, 100,000 lb of
// overpull. The horn, and a calm vertical, are ours.
func asPublished(allowed unit.Share) Conditions {
	return Conditions{Fluid: Seawater, Roll: Roll{6 * math.Pi / 180, GuideHornRadius}, Overpull: lbf(100_000), Allowed: allowed}
}

func TestShow(t *testing.T) {
	for _, upper := range []string{"5-1/2 in 24.70 lb/ft S-140", "5-1/2 in 21.90 lb/ft S-140"} {
		for _, class := range []Class{New, Premium} {
			for _, share := range []unit.Share{0.9, 1} {
				r := taperedBoard(t, upper, class, 20_000).Reach(asPublished(share))
				c := asPublished(share)
				calm := c
				calm.Roll = Roll{}
				hv := c
				hv.Heave = Heave{3, 9}
				hr := hv
				hr.Hanging = Rigid
				b := taperedBoard(t, upper, class, 20_000)
				free := c
				free.Roll.Horn = 0
				t.Logf("%s %v %v: %.0f m %s (%v) | no roll %.0f | heave %.0f rigid %.0f| no horn %.0f, load %.0f klbf", upper, class, share, r.Length, r.Limit, r.String.Pipe, b.Reach(calm).Length, b.Reach(hv).Length,b.Reach(hr).Length, b.Reach(free).Length, r.String.Buoyed(Seawater)/unit.PoundForce/1000)
			}
		}
	}
	u := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", New, 20_000)
	u.Stock = u.Stock[:1]
	t.Log(u.Reach(asPublished(0.9)).Length)
}
