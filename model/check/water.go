package check

import "coredays/model/voyage"

// water looks at the depth of water: enough to hold station, not too much for the string.
func (i *inspector) water(s *voyage.Site) {
	ship := &i.plan.Ship
	i.note(Finding{Site: s.Name, What: "water deep enough to hold station", Verdict: remembered(atLeast(float64(s.WaterDepth), ship.LeastWater.Value), ship.LeastWater.Source),
		Value: float64(s.WaterDepth), Limit: ship.LeastWater.Value, Least: true, Unit: "m", Source: ship.LeastWater.Source, Path: "water_depth", Cure: "a deeper site, or another ship's least_water_depth"})
	most := i.reach.Length - ship.RigFloor
	i.note(Finding{Site: s.Name, What: "string reaches the sea floor", Verdict: atMost(float64(s.WaterDepth), float64(most)),
		Value: float64(s.WaterDepth), Limit: max(0, float64(most)), Unit: "m", Source: i.reachSource(), Path: "water_depth", Cure: "a stronger or lighter string, or a shallower site"})
}

// reachSource says what ends the reach of the string.
func (i *inspector) reachSource() string {
	t := &i.plan.Ship.Tubulars
	return "reach with " + t.Overpull.Text + " of overpull at " + t.Roll.Text + " of roll, limited by " + i.reach.Limit
}

// approval looks whether the site has an approved depth; each target is held against it.
func (i *inspector) approval(s *voyage.Site) {
	if s.ApprovedTo > 0 {
		return
	}
	i.note(Finding{Site: s.Name, What: "no approved depth is stated", Verdict: Caution, Value: none, Limit: none,
		Source: "site safety and pollution-prevention review approves a depth for each site"})
}
