package record

import (
	"testing"
	"time"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/unit"
)

// twoSites are rows of two sites a day's work each, so many nautical miles and hours apart.
func twoSites(miles, hours float64, water unit.Length) []Row {
	began := time.Date(2030, 1, 1, 0, 0, 0, 0, time.UTC)
	left := began.Add(24 * time.Hour)
	reached := left.Add(time.Duration(hours * float64(time.Hour)))
	row := func(site string, latitude float64, start time.Time) Row {
		h := Hole{Name: "A", Order: 1, Position: geo.Position{Latitude: latitude}, Water: water, Depth: 100, Cored: 95, Start: start, End: start.Add(24 * time.Hour)}
		h.Cores[coring.APC] = 10
		return Row{Program: "P", Leg: "1", Site: site, Hole: h, Of: 1, Coring: true}
	}
	return []Row{row("first", 0, began), row("second", miles/60, reached)} // a minute of latitude is a nautical mile
}

func TestAShortSlowHopInDeepWaterIsMadeWithPipeHanging(t *testing.T) {
	for _, c := range []struct {
		what         string
		miles, hours float64
		water        unit.Length
		hanging      bool
	}{
		{"0.8 miles in 3.6 h", 0.8, 3.6, 2500, true},
		{"1.5 miles in 1.5 h", 1.5, 1.5, 3000, true},
		{"1.5 miles in 20 min: faster than pipe can hang", 1.5, 1.0 / 3, 3000, false},
		{"3 miles", 3, 3, 3000, false},
		{"a stay of 9 h between", 1.5, 9, 3000, false},
		{"500 m of water", 1.5, 1.5, 500, false},
		{"no time between", 1.5, 0, 3000, false},
		{"hardly moved", 0.1, 3, 3000, false},
	} {
		sites, _ := Group(twoSites(c.miles, c.hours, c.water), nil)
		if sites[0].LeftHanging != c.hanging || (sites[1].Reached == coring.PistonBHA) != c.hanging || sites[1].LeftHanging || sites[0].Reached != coring.NoBHA {
			t.Errorf("%s: left hanging %v, reached with %v, want hanging %v", c.what, sites[0].LeftHanging, sites[1].Reached, c.hanging)
		}
	}
}

// The rows of a site that is left out still stand between its neighbours.
func TestASiteThatIsLeftOutStandsBetweenItsNeighbours(t *testing.T) {
	rows := twoSites(1, 2, 3000)
	between := rows[1]
	between.Site, between.Coring = "between", false
	between.Hole.Start, between.Hole.End = rows[0].Hole.End.Add(10*time.Minute), rows[0].Hole.End.Add(100*time.Minute)
	sites, _ := Group(append(rows, between), nil)
	if len(sites) != 2 || sites[0].LeftHanging || sites[1].Reached != coring.NoBHA {
		t.Errorf("%d sites, left hanging %v, reached with %v", len(sites), sites[0].LeftHanging, sites[1].Reached)
	}
}

func TestARotaryHoleLeavesItsAssemblyHanging(t *testing.T) {
	rows := twoSites(1, 2, 3000)
	rows[0].Hole.Cores = [coring.Tools]int{coring.RCB: 10}
	if sites, _ := Group(rows, nil); sites[1].Reached != coring.RotaryBHA {
		t.Errorf("reached with %v", sites[1].Reached)
	}
}
