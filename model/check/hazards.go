package check

import (
	"fmt"
	"strings"

	"coredays/model/ground"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// What a riserless ship has to think of before she drills: she has no riser and no blowout preventer. Nothing here
// stops a plan: those who review sites for safety decide.

// hazards looks at a site for what comes out of the ground, and for what comes of the ship's place.
func (i *inspector) hazards(s *voyage.Site, n int) {
	if s.Deepest() == 0 {
		return
	}
	i.shallowFlow(s)
	i.hydrate(s)
	i.driftOff(s)
	i.evacuation(s, n)
}

// shallowest is the depth down to which flows from shallow sands were mostly met: 1,000 to 3,000 ft below the sea
// floor, at any depth of water.
const shallowest = 3000 * unit.Foot

// shallowFlow looks for a sand beneath other sediment, in which gas or water can be held under pressure.
func (i *inspector) shallowFlow(s *voyage.Site) {
	top := unit.Depth(0)
	for k, layer := range s.Site.Layers {
		if layer.Lithology.Name == "sand" && top > 0 && float64(top) < float64(shallowest) && top < s.Deepest() {
			i.note(Finding{Site: s.Name, What: "sand beneath other sediment may hold gas or water under pressure; its top", Kind: "sand that may hold gas or water under pressure",
				Verdict: Caution, Least: true, Value: float64(top), Limit: float64(shallowest), Unit: "mbsf", Path: fmt.Sprintf("layers[%d].lithology", k),
				Source: "shallow water flows: mostly 1,000 to 3,000 ft below the sea floor, at any depth of water (The Leading Edge 35(4), 330, abstract); shallow gas: common practice",
				Cure:   "a site survey for gas and flow, kill mud mixed and ready, no riser and no blowout preventer to close: the ship moves off"})
			return
		}
		top = layer.Bottom
	}
}

// gassy are the lithologies of margins, rich enough in organic matter for methane, from memory.
var gassy = map[string]bool{"hemipelagic mud": true, "silty clay": true, "diatom ooze": true}

// hydrate says how much mud that may hold gas hydrate is drilled.
func (i *inspector) hydrate(s *voyage.Site) {
	end := min(ground.HydrateBase(s.WaterDepth), s.Deepest())
	top, drilled, first := unit.Depth(0), 0.0, -1
	for k, layer := range s.Site.Layers {
		if bottom := min(layer.Bottom, end); gassy[layer.Lithology.Name] && bottom > top {
			drilled += float64(bottom - top)
			if first < 0 {
				first = k
			}
		}
		top = layer.Bottom
	}
	if first < 0 {
		return
	}
	i.note(Finding{Site: s.Name, What: "mud drilled in which methane hydrate is stable", Verdict: Caution, Value: drilled, Limit: 0, Unit: "m", Path: fmt.Sprintf("layers[%d].lithology", first),
		Source: fmt.Sprintf("stable down to %.0f mbsf at 3 °C at the sea floor and 40 K/km (from memory), phase boundary of Dickens and Quinby-Hunt 1994 (from memory)", float64(ground.HydrateBase(s.WaterDepth))),
		Cure:   "gas is watched on each core, barrels and liners are opened as if under pressure, free gas may lie beneath the base"})
}

const (
	driftSpeed = 1 * unit.Knot // without thrusters, in wind and current, from memory
	pullClear  = 2 * 60        // s, from memory: the driller stops, picks up off bottom and lets the pipe run free
)

// driftOff holds the time in which a ship without thrusters drifts out of her circle against what the driller needs.
func (i *inspector) driftOff(s *voyage.Site) {
	f := Finding{Site: s.Name, What: "time to drift out of the station circle with pipe in the hole", Least: true, Value: stationCircle(s.WaterDepth).most * float64(s.WaterDepth) / float64(driftSpeed) / 60,
		Limit: pullClear / 60, Unit: "min", Path: "water_depth",
		Source: "drift of 1 kn without thrusters, two minutes to pick up off bottom (both from memory); circle: " + stationCircle(s.WaterDepth).source}
	if f.Value < f.Limit {
		f.Verdict, f.Cure = Caution, "a drill for it before the spud: who calls, who picks up, when the pipe is let go"
	}
	i.note(f)
}

// evacuated is how soon somebody who is badly hurt or ill should be ashore, judgement: three days.
const evacuated = 3

// evacuation is how long she sails to the nearer of the plan's ports.
func (i *inspector) evacuation(s *voyage.Site, n int) {
	nearer := min(i.v.Leg(voyage.SitePlace(n), voyage.ToPort).Distance, i.v.Leg(voyage.FromPort, voyage.SitePlace(n)).Distance)
	speed := i.plan.Ship.Rates[rig.SailingSpeed]
	f := Finding{Site: s.Name, What: "sailing to the nearer port for a medical evacuation", Value: unit.Duration(float64(nearer) / speed.Median()).Days(), Limit: evacuated, Unit: "d",
		Path: "position", Source: "three days, judgement; pipe is recovered before; speed: " + speed.Source}
	if f.Value > f.Limit {
		f.Verdict, f.Cure = Caution, "a nearer port agreed on beforehand; days for a way there and back in the plan"
	}
	i.note(f)
}

// sources says where a logged hole has tools with radioactive sources in it.
func (i *inspector) sources(s *voyage.Site, item *voyage.Item) {
	for k, which := range item.Hole.Logging {
		name := i.plan.Ship.Strings[which].Name
		if !strings.Contains(name, "density") && !strings.Contains(name, "neutron") && !strings.Contains(name, "porosity") {
			continue
		}
		i.note(Finding{Site: s.Name, Hole: item.Name, What: "radioactive sources go into the hole with " + name, Kind: "radioactive sources go into the hole", Verdict: Caution, Value: none, Limit: none,
			Path: fmt.Sprintf("logging[%d]", k), Source: "density and porosity are measured with sources; lost ones must be fished for, and the hole is cemented where they stay (common practice, from memory)",
			Cure: "permits for the sources, fishing tools and cement on board, no logging of a hole in doubt"})
		return
	}
}
