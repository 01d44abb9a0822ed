package voyage

import (
	"math"
	"testing"

	"coredays/model/geo"
	"coredays/model/sea"
	"coredays/model/unit"
)

// degree of longitude on the equator of the sphere of 6371.009 km: 111.195 km.
const degree = math.Pi * 6371_008.77 / 180

func TestEveryPassageThatCanBeSailedIsCompiled(t *testing.T) {
	v := compiled(t, transect(place("W", west), place("E", east)))
	w, e := SitePlace(0), SitePlace(1)
	for _, c := range []struct {
		from, to Place
		degrees  float64
	}{{FromPort, w, 2}, {FromPort, e, 7}, {w, e, 5}, {e, w, 5}, {w, ToPort, 8}, {e, ToPort, 3}, {FromPort, ToPort, 10}} {
		leg := v.Leg(c.from, c.to)
		near(t, v.Name(c.from)+" to "+v.Name(c.to)+", m", leg.Distance, c.degrees*degree, 1)
		if leg.Waves == nil || leg.Key == 0 {
			t.Errorf("%s to %s has no sea or key", v.Name(c.from), v.Name(c.to))
		}
	}
	if v.Leg(w, FromPort).Waves != nil || v.Leg(w, w).Waves != nil {
		t.Error("a passage back to the first port or to where the ship is")
	}
	if v.Leg(w, e).Key == v.Leg(e, w).Key {
		t.Error("there and back share their random stream")
	}
}

// Waypoints belong to the site that they lead to. Two degrees north and back, at right angles.
func TestWaypointsLengthenTheWayToTheirSiteOnly(t *testing.T) {
	e := place("E", east)
	e.Via = []geo.Position{{Latitude: 2, Longitude: west.Longitude}, {Latitude: 2, Longitude: east.Longitude}}
	v := compiled(t, transect(place("W", west), e))
	across := float64(geo.Distance(e.Via[0], e.Via[1]))
	near(t, "way there, m", v.Leg(SitePlace(0), SitePlace(1)).Distance, 4*degree+across, 1)
	near(t, "way back, m", v.Leg(SitePlace(1), SitePlace(0)).Distance, 5*degree, 1)
	near(t, "way home, m", v.Leg(SitePlace(1), ToPort).Distance, 3*degree, 1)
}

// seaOf is the median height on a day by which climates are given apart.
func seaOf(table *sea.Table) float64 { return table.Height(100, 0) }

func TestPassageMeetsTheSeaOfItsWayNotThatOfTheSite(t *testing.T) {
	site := place("W", west)
	site.Climate = mean(9)
	v := compiled(t, transect(site))
	got := seaOf(v.Leg(FromPort, SitePlace(0)).Waves)
	least, most := math.Inf(1), 0.0
	for longitude := -20.0; longitude <= -18; longitude += 0.25 {
		c, err := sea.BuiltIn(0, longitude)
		if err != nil {
			t.Fatal(err)
		}
		table, err := sea.NewTable(c)
		if err != nil {
			t.Fatal(err)
		}
		least, most = min(least, seaOf(table)), max(most, seaOf(table))
	}
	if got < least || got > most {
		t.Errorf("median height on the way is %.2f m, its points have %.2f to %.2f m", got, least, most)
	}
	if at := seaOf(v.Sites[0].Waves); at < 5 {
		t.Errorf("median height at the site is %.2f m in a climate of 9 m", at)
	}
}

// inland is in the Sahara, where the built-in climate has no water.
var inland = geo.Position{Latitude: 20, Longitude: 10}

func nearby(degrees float64) geo.Position {
	return geo.Position{Latitude: inland.Latitude, Longitude: inland.Longitude + degrees}
}

func TestWayWithoutAClimateTakesThatOfTheSiteItLeadsTo(t *testing.T) {
	a, b := place("a", nearby(0.2)), place("b", nearby(0.4))
	a.Climate, b.Climate = mean(3), mean(5)
	p := transect(a, b)
	p.From.Position, p.To.Position = inland, inland
	v := compiled(t, p)
	for _, c := range []struct {
		from, to Place
		site     int
	}{{FromPort, SitePlace(0), 0}, {FromPort, SitePlace(1), 1}, {SitePlace(0), SitePlace(1), 1}, {SitePlace(1), ToPort, 1}, {SitePlace(0), ToPort, 0}} {
		near(t, v.Name(c.from)+" to "+v.Name(c.to)+": height, m", seaOf(v.Leg(c.from, c.to).Waves), seaOf(v.Sites[c.site].Waves), 0)
	}
}

// The built-in climate ends south of 78N; out of such a port and back to it no ship sails without a site between.
func TestExpeditionOutOfAndBackToAnArcticPortIsCompiled(t *testing.T) {
	arctic := geo.Position{Latitude: 78.2, Longitude: 15.6}
	if _, err := sea.BuiltIn(arctic.Latitude, arctic.Longitude); err == nil {
		t.Fatal("there is a climate at 78.2N 15.6E, take another place")
	}
	p := transect(place("a", geo.Position{Latitude: 76, Longitude: 5}))
	p.From.Position, p.To.Position = arctic, arctic
	near(t, "port to port, m", compiled(t, p).Leg(FromPort, ToPort).Distance, 0, 0)
}

func TestWayWithoutAnyClimateIsRefused(t *testing.T) {
	p := transect()
	p.From.Position, p.To.Position = inland, nearby(1)
	refused(t, p, "no wave climate is known anywhere on the way from Near to Far")
}

func TestPlacesAreNamed(t *testing.T) {
	v := compiled(t, transect(place("W", west), place("E", east)))
	for place, want := range map[Place]string{FromPort: "Near", ToPort: "Far", SitePlace(0): "W", SitePlace(1): "E"} {
		if got := v.Name(place); got != want {
			t.Errorf("place %d is %s, want %s", int(place), got, want)
		}
	}
}

// A long way is met every 150 nautical miles or less: its sea is the mean of all its points, here looked at
// every 20 nautical miles, not that of one end.
func TestLongPassageMeetsTheMeanOfItsWay(t *testing.T) {
	p := transect(place("S", geo.Position{Latitude: -50, Longitude: -15}))
	p.From.Position = geo.Position{Latitude: 0, Longitude: -15}
	got := seaOf(compiled(t, p).Leg(FromPort, SitePlace(0)).Waves)
	track := geo.Track([]geo.Position{p.From.Position, p.Sites[0].Position}, 20*unit.NauticalMile)
	want, start, end := seaAlong(t, track), seaAlong(t, track[:1]), seaAlong(t, track[len(track)-1:])
	near(t, "height on the way, m", got, want, 0.02*want) // of two spacings of the same mean
	if start > 0.9*want || end < 1.1*want {
		t.Errorf("the ends have %.2f and %.2f m, the way %.2f m: too even a sea for this test", start, end, want)
	}
}

// seaAlong is the height of the mean of the climates of places.
func seaAlong(t *testing.T, places []geo.Position) float64 {
	t.Helper()
	var sum sea.Climate
	for _, at := range places {
		c, err := sea.BuiltIn(at.Latitude, at.Longitude)
		if err != nil {
			t.Fatal(err)
		}
		for m := range c.Mean {
			sum.Mean[m] += c.Mean[m] / unit.Length(len(places))
			sum.Variation[m] += c.Variation[m] / float64(len(places))
		}
	}
	table, err := sea.NewTable(sum)
	if err != nil {
		t.Fatal(err)
	}
	return seaOf(table)
}

// From 13N to 13S at 30W, 1,560 nmi, a ship comes from one trade wind through the doldrums into the other: its
// ends are rougher than its way.
func TestAPassageThroughTheDoldrumsMeetsTheirCalm(t *testing.T) {
	p := transect(place("S", geo.Position{Latitude: -12, Longitude: -30}))
	p.From.Position = geo.Position{Latitude: 12, Longitude: -30}
	got := seaOf(compiled(t, p).Leg(FromPort, SitePlace(0)).Waves)
	track := geo.Track([]geo.Position{p.From.Position, p.Sites[0].Position}, 20*unit.NauticalMile)
	want, ends := seaAlong(t, track), seaAlong(t, []geo.Position{track[0], track[len(track)-1]})
	near(t, "height on the way, m", got, want, 0.02*want) // of two spacings of the same mean
	if ends < 1.06*want {
		t.Errorf("the ends have %.2f m, the way %.2f m: too even a sea for this test", ends, want)
	}
}
