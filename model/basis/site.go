package basis

import (
	"fmt"
	"math"

	"coredays/model/coring"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// site lists the numbers of a site: its water, ground, rules and sea.
func (b *book) site(s *voyage.Site, n int) {
	path := b.plan.SitePath(n)
	b.stated("site", s.Name, "water depth below sea level", path+".water_depth", float64(s.WaterDepth), metres)
	if s.ApprovedTo > 0 {
		b.stated("site", s.Name, "approved depth", path+".approved_to", float64(s.ApprovedTo), mbsf)
	}
	if s.Cap > 0 {
		b.stated("site", s.Name, "cap", path+".cap", float64(s.Cap), days)
	}
	b.refusal(s, path)
	for l := range s.Layers {
		b.layer(s, l, path)
	}
	for k := range s.Items {
		b.item(&s.Items[k], s.Name, b.plan.ItemPath(n, k))
	}
	b.sea(s, path)
}

func (b *book) refusal(s *voyage.Site, path string) {
	from, source := b.at(path+".refusal", OfShip, s.Refusal.Source)
	b.add(number("refusal", s.Name, "overpull", float64(s.Refusal.Overpull), klbf, from, source))
	b.add(number("refusal", s.Name, "partial strokes in a row", float64(s.Refusal.PartialStrokes), count, from, source))
}

var (
	shear = measure{of: unit.OfPressure, symbol: "kPa", per: "/m"}
	rate  = measure{of: unit.OfSpeed, symbol: "m/h"}
)

// layer lists what is known of a layer. Layers are given apart by their bottoms.
func (b *book) layer(s *voyage.Site, l int, path string) {
	is, at := &s.Site.Layers[l], fmt.Sprintf("%s.layers[%d]", path, l)
	name := is.Lithology.Name
	b.stated("ground", s.Name, "bottom of "+name, at+".bottom", float64(is.Bottom), mbsf)
	name = fmt.Sprintf("%s to %s", name, is.Bottom.Tell())
	add := func(what, key string, q spread.Quantity, m measure, id voyage.Quantity) {
		from, source := b.at(at+"."+key, BuiltIn, q.Source)
		b.drawn(quantity("ground", s.Name, what+", "+name, q, m, from, source), id)
	}
	add("side shear for each metre down", "side_shear", is.Lithology.Strength, shear, s.Layers[l].Strength)
	add("drilling rate", "drilling_rate", is.Lithology.Rate, rate, s.Layers[l].Rate)
	add("drilling ahead", "drilling_ahead_rate", is.Lithology.Ahead, rate, s.Layers[l].Ahead)
	add("chance of sticking against that in mud", "sticking", is.Lithology.Sticking, percent, s.Layers[l].Sticking)
	add("wear of a bit against that in hard rock", "bit_wear", is.Lithology.Wear, percent, s.Layers[l].Wear)
	for _, tool := range toolsAt(s) {
		add("recovery "+tool.String(), "recovery."+tool.Key(), is.Lithology.Recovery[tool], percent, s.Layers[l].Recovery[tool])
	}
}

// toolsAt are the tools that the plan uses at a site.
func toolsAt(s *voyage.Site) (tools []coring.Tool) {
	for tool := range coring.Tools {
		if s.Refusal.Then == tool && tool.Has(coring.TakesOver) || uses(s, tool) {
			tools = append(tools, tool)
		}
	}
	return tools
}

func uses(s *voyage.Site, tool coring.Tool) bool {
	for _, item := range s.Items {
		if item.Hole == nil {
			continue
		}
		for _, stage := range item.Hole.Stages {
			if stage.With == tool {
				return true
			}
		}
	}
	return false
}

// item lists the depths of a hole, or what a task takes.
func (b *book) item(item *voyage.Item, site, path string) {
	if item.Task != nil {
		for k, step := range item.Task.Steps {
			at, name := path+".takes", "task: "+item.Name
			if step.Name != "" {
				at, name = fmt.Sprintf("%s.steps[%d].takes", path, k), name+", "+step.Name
			}
			from, source := b.at(at, Stated, step.Takes.Source)
			b.drawn(quantity("programme", site, name, step.Takes, hours, from, source), item.Takes[k])
		}
		return
	}
	if item.Hole.Existing > 0 {
		b.stated("programme", site, "hole "+item.Name+": there already, down to", path+".existing", float64(item.Hole.Existing), mbsf)
	}
	if item.Hole.Fill > 0 {
		b.stated("programme", site, "hole "+item.Name+": filled", path+".fill", float64(item.Hole.Fill), metres)
	}
	if item.Hole.CasedAlready > 0 {
		b.stated("programme", site, "hole "+item.Name+": cased already to", path+".cased_to", float64(item.Hole.CasedAlready), mbsf)
	}
	for k, c := range item.Hole.Casing {
		b.stated("programme", site, fmt.Sprintf("hole %s: casing %s to", item.Name, c.Name), fmt.Sprintf("%s.casing[%d].to", path, k), float64(c.To), mbsf)
	}
	if item.Hole.DrillAheadTo > max(item.Hole.Existing, item.Hole.CasedTo()) {
		b.stated("programme", site, "hole "+item.Name+": drilled ahead to", path+".drill_ahead_to", float64(item.Hole.DrillAheadTo), mbsf)
	}
	for k, stage := range item.Hole.Stages {
		name := fmt.Sprintf("hole %s: %s to", item.Name, stage.With)
		if stage.ToRefusal {
			name += " refusal, at most"
		}
		if stage.From > 0 {
			b.stated("programme", site, fmt.Sprintf("hole %s: drilled, then %s from", item.Name, stage.With), fmt.Sprintf("%s.core[%d].from", path, k), float64(stage.From), mbsf)
		}
		b.stated("programme", site, name, fmt.Sprintf("%s.core[%d].to", path, k), float64(stage.To), mbsf)
	}
}

// sea lists the months' mean heights of a climate that the expedition meets.
func (b *book) sea(s *voyage.Site, path string) {
	if s.Likeness != nil {
		return // a record is no number; coredays sea gives it
	}
	from, source := b.at(path+".weather.months", BuiltIn, s.Climate.Source)
	first := int(b.plan.Sails.Month()) - 1
	months := min(12, 2+int(b.plan.SeaDays.Days()/31))
	for k := range months {
		m := (first + k) % 12
		mean := float64(s.Climate.Mean[m])
		e := number("sea", s.Name, "significant wave height, "+monthNames[m], mean, metres, from, source)
		// lognormal by mean and variation, as the simulation has it
		s2 := math.Log1p(s.Climate.Variation[m] * s.Climate.Variation[m])
		even := mean * math.Exp(-s2/2)
		e.Low, e.Mid, e.High = even*math.Exp(spread.Score(0.1)*math.Sqrt(s2)), even, even*math.Exp(spread.Score(0.9)*math.Sqrt(s2))
		e.Varies = "hour by hour, with memory"
		b.add(e)
	}
}

var monthNames = [12]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}
