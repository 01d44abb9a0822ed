package chart

import (
	"math"
	"strings"
	"testing"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/output"
)

func at(latitude, longitude float64) geo.Position {
	return geo.Position{Latitude: latitude, Longitude: longitude}
}

func mapOf(from, to geo.Position, sites ...geo.Position) *output.Report {
	p := &plan.Plan{From: plan.Port{Name: "Near", Position: from}, To: plan.Port{Name: "Far", Position: to}}
	for i, where := range sites {
		p.Sites = append(p.Sites, plan.Site{Name: string(rune('A' + i)), Position: where})
		p.Order = append(p.Order, i)
	}
	return &output.Report{Plan: p}
}

// Across the date line and past the poles the drawn way has no jump: its pieces are no longer than they are on
// the globe, as far as an equal-area map about their middle stretches them (below 1.5 within a quarter of it).
func TestTheDrawnTrackHasNoJump(t *testing.T) {
	for name, stops := range map[string][]geo.Position{
		"date line":           {at(-18, 178), at(-20, -175), at(-30, 179), at(-21, -175)},
		"about the pole":      {at(80, 0), at(85, 90), at(84, 179), at(83, -170), at(79, -20)},
		"about the south":     {at(-66, 170), at(-74, -178), at(-70, -90), at(-62, -60)},
		"along the date line": {at(-20, 180), at(-40, -180), at(-60, 180)},
	} {
		track := geo.Track(stops, trackEvery)
		s := sheetFor(track)
		points := s.points(track)
		for i, p := range points {
			if !s.holds(p) {
				t.Errorf("%s: %v is off the map", name, track[i])
			}
			if i == 0 {
				continue
			}
			far := float64(geo.Distance(track[i-1], track[i])) / 1000
			if drawn := math.Hypot(p.X-points[i-1].X, p.Y-points[i-1].Y); drawn > 1.5*far+1e-6 {
				t.Errorf("%s: %.0f km are drawn as %.0f", name, far, drawn)
			}
		}
	}
}

func TestTheMapSaysItsProjectionAndItsPlaces(t *testing.T) {
	c := trackChart(mapOf(at(-18, 178.5), at(-21.5, -175.5), at(-17, 179.6), at(-17.5, -179.7)))
	text, err := c.SVG()
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"azimuthal equal-area projection about 18", "° S 17", "ETOPO5"} {
		if !strings.Contains(c.Key, want) {
			t.Errorf("no %q in %q", want, c.Key)
		}
	}
	for _, want := range []string{"Near", "Far", "180°", "17 30.0S 179 42.0W"} {
		if !strings.Contains(string(text), want) {
			t.Errorf("no %q on the map", want)
		}
	}
	if trackChart(mapOf(at(0, 0), at(0, 1))) != nil {
		t.Error("a map of no site")
	}
}

// Round the Cape of Good Hope the map has land to the north and none in the south.
func TestTheMapHasTheCoast(t *testing.T) {
	r := mapOf(at(-30, 14), at(-32, 32), at(-38, 20))
	text, err := trackChart(r).SVG()
	if err != nil {
		t.Fatal(err)
	}
	open, err := trackChart(mapOf(at(-30, -140), at(-32, -122), at(-38, -134))).SVG()
	if err != nil {
		t.Fatal(err)
	}
	fill := func(s string) int { return strings.Count(s, "#E8DDC6") }
	if fill(string(text)) < 5 || fill(string(open)) != 0 {
		t.Errorf("%d strips of land at the Cape, %d in the open Pacific", fill(string(text)), fill(string(open)))
	}
}

func TestNamesOnAMapNeverLieOnOneAnother(t *testing.T) {
	named := func(sites ...geo.Position) (n int) {
		svg := svgOf(t, trackChart(mapOf(at(-40, 170), at(-50, 150), sites...)))
		for _, name := range []string{"A", "B", "C", "D", "E", "F"} {
			n += strings.Count(svg, ">"+name+"</text>")
		}
		return n
	}
	if n := named(at(-42, 168), at(-43, 165), at(-44, 162), at(-45, 160), at(-46, 158), at(-48, 155)); n != 6 {
		t.Errorf("of 6 sites apart %d are named", n)
	}
	same := at(-45, 160)
	if n := named(same, same, same, same, same, same); n < 1 || n > 4 {
		t.Errorf("of 6 sites at one place %d are named", n)
	}
}
