package sea

import (
	"fmt"
	"math"

	"coredays/model/unit"
)

// Climate is the sea at a place as monthly figures of the significant wave height, January first.
type Climate struct {
	Mean      [12]unit.Length
	Variation [12]float64 // standard deviation over mean
	Source    string
	Cautions  []string // what to know before relying on it
}

// Check says what keeps a climate from being used.
func (c Climate) Check() error {
	for m := range 12 {
		if !(c.Mean[m] > 0 && c.Mean[m] < 30) { // 30 m: above any monthly mean, so a slip in the unit
			return fmt.Errorf("month %d: mean wave height of %g m, wanted above 0 and under 30 m", m+1, float64(c.Mean[m]))
		}
		if !(c.Variation[m] > 0 && c.Variation[m] < 3) {
			return fmt.Errorf("month %d: variation (standard deviation over mean) of %g, wanted above 0 and under 3", m+1, c.Variation[m])
		}
	}
	return nil
}

// BuiltIn is the built-in climate at a place in degrees, north and east positive. It weighs the
// up to four cells around the place by nearness, water cells only. Weighing by their share of
// water as well was tried and reads higher still at the two near-shore buoys compared with
// (NDBC 44007 and 44008). It fails for a place without a water cell within 5 degrees.
func BuiltIn(latitude, longitude float64) (Climate, error) {
	if !onGlobe(latitude, longitude) {
		return Climate{}, fmt.Errorf("position %g, %g degrees is not on the globe", latitude, longitude)
	}
	a, err := openAtlas()
	if err != nil {
		return Climate{}, err
	}
	blend, total := a.blend(latitude, longitude)
	if total < 1e-6 { // less than 1 m from the centre of a land cell or of the cell beyond
		return Climate{}, fmt.Errorf("the built-in climate has no water within 5 degrees of %g, %g: give a climate of your own", latitude, longitude)
	}
	c := Climate{Source: Source, Cautions: cautions(a.holding(latitude, longitude), latitude, blend.oneSeason)}
	for m := range 12 {
		c.Mean[m] = unit.Length(blend.mean[m] / total)
		c.Variation[m] = blend.variation / total
	}
	return c, nil
}

// blend sums the water cells around a place, each by its bilinear weight, and the weights.
func (a *atlas) blend(latitude, longitude float64) (sum cell, total float64) {
	y, x := (latitude-firstRow)/cellSize, (longitude-firstCol)/cellSize
	row, col := math.Floor(y), math.Floor(x)
	for i := range 4 {
		up, right := i/2, i%2
		c := a.at(int(row)+up, int(col)+right)
		if c == nil || c.water == 0 {
			continue
		}
		w := (1 - math.Abs(y-row-float64(up))) * (1 - math.Abs(x-col-float64(right)))
		total += w
		for m := range 12 {
			sum.mean[m] += w * c.mean[m]
		}
		sum.variation += w * c.variation
		sum.oneSeason = sum.oneSeason || c.oneSeason && w > 0
	}
	return sum, total
}

// WaterShare is the share of the 5-degree cell around a place that is water, to warn of a route
// that crosses land. Cells with less than about 5 % of water count as land. It is not known
// where part of the year is missing, since the table counts their ice as land; for an absent
// cell poleward of 60 degrees; and poleward of 75 degrees. A share under 0.95 in the Southern
// Ocean may be ice too.
func WaterShare(latitude, longitude float64) (share float64, known bool) {
	a, err := openAtlas()
	if err != nil || !onGlobe(latitude, longitude) {
		return 0, false
	}
	c := a.holding(latitude, longitude)
	if c == nil || c.oneSeason || c.water == 0 && math.Abs(latitude) > unseenFrom {
		return 0, false
	}
	return c.water, true
}

func onGlobe(latitude, longitude float64) bool {
	return math.Abs(latitude) <= 90 && math.Abs(longitude) <= 360 // false for NaN too
}
