package check

import (
	"math"

	"coredays/model/geo"
	"coredays/model/places"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// contingency is what is added to a calm estimate for sea and trouble, common practice; the crew of the
// simulation estimates with the same.
const contingency = 1.1

const quickEstimate = "quick estimate: medians, calm sea, no trouble"

// days holds the estimated days against those allotted: all that ranks first must fit into them in a calm
// sea, the whole programme with something left for weather.
func (i *inspector) days() {
	if !i.estimated.Known() {
		return
	}
	if !i.estimated.Home {
		i.note(Finding{What: "programme never ends in a quick estimate", Verdict: Stop, Value: i.estimated.Total.Days(), Limit: i.plan.SeaDays.Days(), Unit: "d", Source: quickEstimate})
		return
	}
	first, whole, most := i.firstRank().Days(), contingency*i.estimated.Total.Days(), i.plan.SeaDays.Days()
	verdict := between(first, most, math.Inf(1))
	if i.shortestStay().Days() > most {
		verdict = Stop
	}
	i.note(Finding{What: "days for what ranks first", Verdict: verdict, Value: first, Limit: most, Unit: "d", Path: "sea_days",
		Source: quickEstimate + ", fewer than half of all expeditions are as quick; stop: fastest sailing and shortest tasks alone take longer", Cure: "fewer or lower-ranked holes, or more sea days; simulate tells the chance"})
	verdict = Pass
	if whole > most {
		verdict = Caution
	}
	i.note(Finding{What: "days for the whole programme, a tenth for sea and trouble added", Verdict: verdict, Value: whole, Limit: most, Unit: "d",
		Source: quickEstimate + "; a tenth is common practice"})
}

// firstRank is the estimated time without what may be dropped.
func (i *inspector) firstRank() unit.Duration {
	total := i.estimated.Total
	for _, s := range i.v.Sites {
		for _, item := range s.Items {
			if !s.Alternate && item.Rank > 1 {
				total -= i.estimated.Items[item.Number]
			}
		}
	}
	return total
}

// endurance looks how long she stays at sea.
func (i *inspector) endurance() {
	e := i.plan.Ship.Endurance
	i.note(Finding{What: "sea days within the ship's endurance", Verdict: remembered(atMost(float64(i.plan.SeaDays), e.Value), e.Source), Value: i.plan.SeaDays.Days(),
		Limit: unit.Duration(e.Value).Days(), Unit: "d", Source: e.Source, Path: "sea_days", Cure: "fewer sea days, or the endurance of the ship"})
}

// shortCall is the shortest port call of those published.
const shortCall = 2.2 // d

// inPort looks at the days in port, and at sailing alone against the sea days.
func (i *inspector) inPort() {
	f := Finding{What: "days in port before sailing", Value: unit.Duration(i.plan.InPort.Median()).Days(), Limit: shortCall, Least: true, Unit: "d",
		Source: "port calls of 2.2 to 6.6 d: ODP Legs 177 and 202, IODP Exp 304, 306, 320T, 329, 341 reports"}
	if f.Value < f.Limit {
		f.Verdict = Caution
	}
	i.note(f)
	sailing := i.sailing(even).Days()
	verdict := between(sailing, i.plan.SeaDays.Days(), math.Inf(1))
	if i.sailing(fast) > i.plan.SeaDays {
		verdict = Stop
	}
	i.note(Finding{What: "days of sailing to the primary sites and to port", Verdict: verdict,
		Value: sailing, Limit: i.plan.SeaDays.Days(), Unit: "d", Path: "sea_days", Cure: "fewer or nearer sites, or more sea days",
		Source: "great circles at the even speed in calm water, pilotage; stop: at a speed that one day in a hundred exceeds"})
}

// haste is how quick what is drawn is taken to be: the share of draws that are slower.
type haste float64

const (
	even haste = 0.5
	fast haste = 0.99
)

func (i *inspector) time(r rig.Rate, h haste) unit.Duration {
	return unit.Duration(i.plan.Ship.Rates[r].Shape.Quantile(1 - float64(h)))
}

func (i *inspector) speed(r rig.Rate, h haste) float64 {
	return i.plan.Ship.Rates[r].Shape.Quantile(float64(h))
}

// shortestStay is what can't be done faster: sailing, and the tasks that rank first.
func (i *inspector) shortestStay() unit.Duration {
	sum := i.sailing(fast)
	for _, s := range i.v.Sites {
		for _, item := range s.Items {
			if !s.Alternate && item.Rank == 1 && item.When == nil && item.Task != nil {
				for _, step := range item.Task.Steps {
					sum += unit.Duration(step.Takes.Shape.Quantile(1 - float64(fast)))
				}
			}
		}
	}
	return sum
}

// sailing is the time under way to all primary sites.
func (i *inspector) sailing(h haste) unit.Duration {
	speed := i.speed(rig.SailingSpeed, h)
	at, far := voyage.FromPort, 0.0
	for _, n := range i.plan.Order {
		if !i.plan.Sites[n].Alternate {
			far += i.v.Leg(at, voyage.SitePlace(n)).Distance
			at = voyage.SitePlace(n)
		}
	}
	far += i.v.Leg(at, voyage.ToPort).Distance
	return unit.Duration(far/speed) + 2*i.time(rig.Pilotage, h)
}

// wholeCell is so long a way over land that no coarse cell can be blamed for it.
const wholeCell = 300 * unit.NauticalMile

// routes looks for passages over land.
func (i *inspector) routes() {
	all := voyage.OverLand(i.plan)
	if len(all) == 0 {
		i.note(Finding{What: "passages keep clear of land", Value: 0, Limit: float64(wholeCell / unit.NauticalMile), Unit: "nmi", Source: landSource})
	}
	for _, leg := range all {
		verdict := Caution
		if leg.Length >= wholeCell {
			verdict = Stop
		}
		i.note(Finding{What: "over land from " + leg.From + " to " + leg.To + " near " + toTenth(leg.Near).String() + "; give waypoints with via", Verdict: verdict, Path: leg.Path,
			Value: float64(leg.Length / unit.NauticalMile), Limit: float64(wholeCell / unit.NauticalMile), Unit: "nmi", Source: landSource})
	}
}

// toTenth is a position to a tenth of a degree: where a way meets a cell of half a degree is not known more closely.
func toTenth(p geo.Position) geo.Position {
	return geo.Position{Latitude: math.Round(10*p.Latitude) / 10, Longitude: math.Round(10*p.Longitude) / 10}
}

const landSource = "mean height of cells; land within 100 nmi of a port is left out, further than any canal is stopped: " + places.ReliefSource
