package check

import (
	"fmt"
	"math"
	"time"

	"coredays/model/geo"
	"coredays/model/places"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// The sentences here give figure, limit and direction, with the source and how coarse it is: nothing coarse
// stops a plan but what nobody can mean.

// places holds a site against what its position and its months already tell.
func (i *inspector) places(s *voyage.Site, n int) {
	if s.Places == plan.PlacesOff {
		return
	}
	i.land(s)
	i.depth(s)
	months := i.months(n)
	i.cyclones(s, months)
	i.ice(s, months)
	i.current(s, months)
}

// months are the shares of a stay that fall into each month, January first.
func (i *inspector) months(n int) (share [12]float64) {
	from, to := i.stay(n)
	days := 0.0
	for day := from; !day.After(to) || days == 0; day = day.AddDate(0, 0, 1) {
		share[day.UTC().Month()-1]++
		days++
	}
	for m := range share {
		share[m] /= days
	}
	return share
}

// land stops a site without a cell of sea around it: nobody means the middle of a continent.
func (i *inspector) land(s *voyage.Site) {
	here := places.ReliefAt(s.Position)
	f := Finding{Site: s.Name, What: "site lies at sea: lowest ground of its cell", Value: float64(here.Lowest), Limit: 0, Unit: "m", Source: places.ReliefSource,
		Path: "position", Cure: "a position at sea; are latitude, longitude or a hemisphere swapped?"}
	if here.Dry() {
		f.Verdict = Caution
		if inland(s.Position) {
			f.Verdict = Stop
		}
	}
	i.note(f)
}

// inland says that the cell of a place and the eight around it are all land.
func inland(p geo.Position) bool {
	for north := -1.0; north <= 1; north++ {
		for east := -1.0; east <= 1; east++ {
			d := places.ReliefGrid.Degrees
			if !places.ReliefAt(geo.Position{Latitude: p.Latitude + north*d, Longitude: p.Longitude + east*d}).Dry() {
				return false
			}
		}
	}
	return true
}

// unmeantDepth is how far outside the widened range of its cell a depth is a slip of the pen, judgement.
const unmeantDepth = 2000 // m

// depth holds the depth of water against the widened range of the cell.
func (i *inspector) depth(s *voyage.Site) {
	least, most := places.ReliefAt(s.Position).Depths()
	f := Finding{Site: s.Name, Value: float64(s.WaterDepth), Unit: "m", Path: "water_depth", Cure: "another depth or position",
		Source: "range of the cell, widened by a fifth or 600 m: " + places.ReliefSource}
	f.What, f.Limit = "water depth and the deepest of its cell, widened", float64(most)
	if float64(least)-f.Value > f.Value-float64(most) {
		f.What, f.Limit, f.Least = "water depth and the shallowest of its cell, widened", float64(least), true
	}
	f.Verdict = between(max(float64(least)-f.Value, f.Value-float64(most)), 0, unmeantDepth)
	i.note(f)
}

// fewCyclones is the share of days with a cyclone near below which nothing is said of them, judgement: one day of
// a site of a week in ten years.
const fewCyclones = 0.01

// cyclones says how many of the days of a stay have one near, and what the plan makes of it.
func (i *inspector) cyclones(s *voyage.Site, months [12]float64) {
	days, closed := 0.0, 0.0
	year := places.YearAt(s.Position)
	for m, share := range months {
		days += share * year.Cyclones[m].Days
		closed += share * year.Closed(time.Month(m+1))
	}
	f := Finding{Site: s.Name, Verdict: Pass, Value: 100 * days, Limit: 100 * fewCyclones, Unit: "%", Path: "position", Source: places.CycloneSource,
		Kind: fmt.Sprintf("days with a cyclone of gale force within %.0f km", float64(places.CycloneReach/1000))}
	f.What = f.Kind + ", " + i.when(months)
	if days > fewCyclones {
		f.Verdict = Caution
		f.Cure = "another season; the plan has no time for them: with places: built in they close the site"
		if s.Places == plan.PlacesMet {
			f.Cure = fmt.Sprintf("another season; in the simulation they close the site for about %.2g %% of the time, the flight from them included", 100*closed)
		}
	}
	i.note(f)
}

// ice says how much of a stay falls into months with ice.
func (i *inspector) ice(s *voyage.Site, months [12]float64) {
	var share [3]float64
	for m, part := range months {
		share[places.IceAt(s.Position, time.Month(m+1))] += part
	}
	f := Finding{Site: s.Name, Kind: "time in months with sea ice", Value: 100 * (1 - share[places.NoIce]), Limit: 0, Unit: "%", Path: "position", Source: places.IceSource}
	f.What = f.Kind + ", " + i.when(months)
	if share[places.NoIce] < 1-1e-9 {
		f.Verdict = Caution
		f.Cure = fmt.Sprintf("another season, or an ice chart; as a rule in %.0f %% of the time, at the edge or in some years in %.0f %%", 100*share[places.IceAsARule], 100*share[places.IceAtEdge])
		if share[places.IceAsARule] > 0 && s.Places != plan.PlacesMet {
			f.Cure += "; with places: built in it closes the site where it is the rule"
		}
	} else {
		f.Value = 0
	}
	i.note(f)
}

// abeam is the current that a ship bears across her, as a share of that from ahead, from memory: thrusters
// alone hold her, against a hull some six times as long as it is wide.
const abeam = 0.5

// borne is the current in which the ship holds station at her planned heading off it: between ahead and abeam
// by an ellipse, judgement.
func borne(ahead unit.Speed, heading float64) unit.Speed {
	return ahead / unit.Speed(math.Hypot(math.Cos(heading), math.Sin(heading)/abeam))
}

// current holds the greatest monthly mean of the stay against what the ship bears.
func (i *inspector) current(s *voyage.Site, months [12]float64) {
	ship := &i.plan.Ship
	if ship.MostCurrent.Value == 0 {
		return
	}
	var strongest places.Current
	for m, share := range months {
		if c, known := places.CurrentAt(s.Position, time.Month(m+1)); known && share > 0 && c.Most >= strongest.Most {
			strongest = c
		}
	}
	limit := borne(unit.Speed(ship.MostCurrent.Value), ship.Heading)
	f := Finding{Site: s.Name, Kind: "monthly mean current, greatest of its cell", Value: float64(strongest.Most / unit.Knot),
		Limit: float64(limit / unit.Knot), Unit: "kn", Path: "position",
		Source: fmt.Sprintf("%s; half of it abeam (from memory), at %.0f° off the bow; %s", ship.MostCurrent.Source, ship.Heading*180/math.Pi, places.CurrentSource)}
	f.What = f.Kind + ", " + i.when(months)
	if strongest.Most > limit {
		f.Verdict = Caution
		f.Cure = "a heading nearer to the current, another season, or a site out of the stream"
		if !math.IsNaN(strongest.Towards) {
			f.Cure += fmt.Sprintf("; over the year it sets towards %.0f°", strongest.Towards)
		}
	}
	i.note(f)
}

// when are the months of a stay in words.
func (i *inspector) when(months [12]float64) string {
	text := ""
	for m, share := range months {
		if share > 0 {
			if text != "" {
				text += ", "
			}
			text += time.Month(m + 1).String()[:3]
		}
	}
	return text
}

// onePlace is how near to each other two sites are one, judgement: holes of a site lie some tens of metres apart.
const onePlace = 100 // m

// apart looks for sites at one place.
func (i *inspector) apart() {
	nearest, names := math.Inf(1), ""
	path := ""
	for a := range i.v.Sites {
		for b := range i.v.Sites[:a] {
			if d := float64(geo.Distance(i.v.Sites[a].Position, i.v.Sites[b].Position)); d < nearest {
				nearest, names = d, i.v.Sites[b].Name+" and "+i.v.Sites[a].Name
				path = i.plan.SitePath(a) + ".position"
			}
		}
	}
	if math.IsInf(nearest, 1) {
		return
	}
	f := Finding{What: "sites lie apart, nearest " + names, Kind: "sites lie apart", Value: nearest, Limit: onePlace, Least: true, Unit: "m", Source: "holes of a site lie some tens of metres apart, judgement", Path: path}
	if nearest < onePlace {
		f.Verdict, f.Cure = Caution, "holes of one site, or another position"
	}
	i.note(f)
}
