package json

import (
	"io"
	"math"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/geojson"

	"coredays/model/geo"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// trackEvery is the distance of the points of a drawn great circle.
const trackEvery = 60 * unit.NauticalMile

// Tracks writes a map (RFC 7946): ports and sites as points, and the track of each
// alternative as lines along great circles, cut where they cross the date line.
func Tracks(w io.Writer, c *result.Comparison) error {
	collection := geojson.NewFeatureCollection()
	drawn := map[result.Mark]bool{}
	for i := range c.Alternatives {
		for _, m := range c.Alternatives[i].Marks {
			if !drawn[m] {
				drawn[m] = true
				collection.Append(markFeature(m))
			}
		}
	}
	for i := range c.Alternatives {
		collection.Append(trackFeature(c, i))
	}
	return writeJSON(w, collection)
}

// markFeature is a port or a site.
func markFeature(m result.Mark) *geojson.Feature {
	f := geojson.NewFeature(rounded(m.At))
	kind := "site"
	switch {
	case m.Port:
		kind = "port"
	case m.Alternate:
		kind = "alternate site"
	}
	f.Properties = geojson.Properties{"kind": kind, "name": m.Name}
	return f
}

// trackFeature is the track of an alternative, with its figures.
func trackFeature(c *result.Comparison, i int) *geojson.Feature {
	a := &c.Alternatives[i]
	f := geojson.NewFeature(lines(geo.Track(a.Track, trackEvery)))
	f.Properties = geojson.Properties{
		"kind": "track", "name": a.Name, "order": a.Order, "standing": alternatives.Standing(c, i), "track_nmi": number(a.Distance / unit.NauticalMile),
		"days_needed_p50": number(words.InDays(a.Summary.Needed.Total).P50), "chance_primary": number(a.Summary.Allotted.ChancePrimary),
		"chance_all": number(a.Summary.Allotted.ChanceAll), "recovered_m": number(a.Summary.Allotted.Recovered.Mean),
	}
	return f
}

// lines draws a track; where it jumps from one side of the date line to the other, it is cut at 180
// degrees, as RFC 7946, 3.1.9, wants.
func lines(track []geo.Position) orb.Geometry {
	var all orb.MultiLineString
	var line orb.LineString
	for i, at := range track {
		if i > 0 && math.Abs(at.Longitude-track[i-1].Longitude) > 180 {
			out, in := atDateLine(track[i-1], at)
			all = append(all, append(line, out))
			line = orb.LineString{in}
		}
		line = append(line, rounded(at))
	}
	if len(all) == 0 {
		return line
	}
	return append(all, line)
}

// atDateLine is where a short way crosses 180 degrees, on either side; at such a length a great circle is
// nearly straight on the map.
func atDateLine(from, to geo.Position) (out, in orb.Point) {
	edge := math.Copysign(180, from.Longitude)
	far := to.Longitude + 2*edge // to, seen from the side of from
	share := (edge - from.Longitude) / (far - from.Longitude)
	if !words.Defined(share) {
		share = 0
	}
	latitude := from.Latitude + share*(to.Latitude-from.Latitude)
	return rounded(geo.Position{Latitude: latitude, Longitude: edge}), rounded(geo.Position{Latitude: latitude, Longitude: -edge})
}

// rounded is a point to five decimals of a degree, about a metre.
func rounded(at geo.Position) orb.Point {
	round := func(x float64) float64 { return math.Round(x*1e5)/1e5 + 0 }
	return orb.Point{round(at.Longitude), round(at.Latitude)}
}
