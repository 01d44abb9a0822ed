package voyage

import (
	"fmt"
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/sea/heave"
	"coredays/model/unit"
)

// limits turns the ship's limits of heave and waves into significant wave heights at a depth of
// water. Among the limits for one class of work the one from the deepest depth holds.
func (c *compiler) limits(depth unit.Length, periodFactor float64) (Limits, error) {
	var most Limits
	for i := range most {
		most[i] = math.Inf(1)
	}
	var from [activity.Limits]unit.Length
	for _, l := range c.v.Plan.Ship.Limits {
		if l.FromDepth > depth || l.FromDepth < from[l.For] {
			continue
		}
		height, err := c.height(l, periodFactor)
		if err != nil {
			return most, err
		}
		from[l.For], most[l.For] = l.FromDepth, height
	}
	return most, nil
}

// height is the significant wave height at which a limit is reached.
func (c *compiler) height(l rig.SeaLimit, periodFactor float64) (float64, error) {
	if l.Of == rig.WaveHeight {
		return float64(l.Most), nil
	}
	if l.Of == rig.LargestWave {
		return float64(l.Most / heave.LargestWave), nil
	}
	response := c.response[periodFactor]
	if response == nil {
		ship := c.v.Plan.Ship
		r, err := heave.NewResponse(ship.Hull, periodFactor, ship.Heading)
		if err != nil {
			return 0, fmt.Errorf("the ship's hull: %w", err)
		}
		c.response[periodFactor], response = r, r
	}
	most := l.Most
	if l.Of == rig.LargestHeave {
		most = heave.SignificantHeave(most)
	}
	return float64(response.HeightFor(most)), nil
}
