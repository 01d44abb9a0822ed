package scenario

import (
	"slices"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// limits reads limits of sea. Work that is named here loses all the limits it has in base.
func (c *clerk) limits(path string, given []limitFile, base []rig.SeaLimit) []rig.SeaLimit {
	limits := make([]rig.SeaLimit, 0, len(given)+len(base))
	given = entry.Few(c.Reader, path, given, entry.MostLimits)
	for i, l := range given {
		limits = append(limits, c.limit(document.At(path, i), l))
	}
	read := len(limits)
	for i := 1; i < read; i++ {
		same := func(l rig.SeaLimit) bool { return l.For == limits[i].For && l.FromDepth == limits[i].FromDepth }
		if slices.ContainsFunc(limits[:i], same) {
			c.Fault(document.At(path, i), given[i].For.Value, "one limit for this work from this depth on")
		}
	}
	for _, l := range base {
		if !slices.ContainsFunc(limits[:read], func(g rig.SeaLimit) bool { return g.For == l.For }) {
			limits = append(limits, l)
		}
	}
	return limits
}

func (c *clerk) limit(path string, l limitFile) rig.SeaLimit {
	return rig.SeaLimit{
		For:       c.limitFor(document.Join(path, "for"), l.For),
		FromDepth: unit.Length(c.Maybe(document.Join(path, "from_depth"), l.FromDepth, entry.WaterLimitMeasure)),
		Of:        c.measureOf(document.Join(path, "of"), l.Of),
		Most:      unit.Length(c.Number(document.Join(path, "most"), l.Most, entry.HeightMeasure)),
		Source:    c.Words(document.Join(path, "source"), l.Source, c.Source(path)),
	}
}

// limitFor is the class of work that a limit is for.
func (c *clerk) limitFor(path string, t document.Text) activity.Limit {
	var keys []string
	for l := activity.Positioning; l < activity.FreeTask; l++ {
		if l.Key() == t.Value {
			return l
		}
		keys = append(keys, l.Key())
	}
	wanted, _ := fault.Suggest(t.Value, keys, "class of work")
	if !t.Given {
		wanted = fault.Listed(keys)
	}
	c.Fault(path, t.Value, wanted)
	return activity.AnySea
}

// measureOf is what a limit is a limit of. There is no default: published limits differ.
func (c *clerk) measureOf(path string, t document.Text) rig.Measure {
	if !t.Given {
		c.Fault(path, "", "significant heave, largest heave, wave height (significant) or largest wave")
	}
	return rig.Measure(c.Choice(path, t, "significant heave", "largest heave", "wave height", "largest wave"))
}

// storm reads the sea at which pipe leaves the hole.
func (c *clerk) storm(path string, s *stormFile, base rig.Storm) rig.Storm {
	if s == nil {
		return base
	}
	storm := rig.Storm{
		ClearSeaFloor: unit.Length(c.Number(document.Join(path, "clear_sea_floor"), s.ClearSeaFloor, entry.HeightMeasure)),
		RecoverPipe:   unit.Length(c.Number(document.Join(path, "recover_pipe"), s.RecoverPipe, entry.HeightMeasure)),
		Source:        c.Words(document.Join(path, "source"), s.Source, c.Source(path)),
	}
	if storm.RecoverPipe < storm.ClearSeaFloor {
		c.Fault(document.Join(path, "recover_pipe"), s.RecoverPipe.Value, "at least the sea at which the sea floor is cleared")
	}
	return storm
}

// refusal reads the rule by which a piston corer is given up. What is not stated stays as in base.
func (c *clerk) refusal(path string, r *refusalFile, base plan.Refusal) plan.Refusal {
	if r == nil {
		return base
	}
	if r.Overpull.Given {
		base.Overpull = unit.Force(c.Number(document.Join(path, "overpull"), r.Overpull, entry.OverpullMeasure))
	}
	if r.PartialStrokes.Given {
		base.PartialStrokes = int(c.Number(document.Join(path, "partial_strokes"), r.PartialStrokes, entry.StrokesMeasure))
	}
	base.DrillOver = c.Yes(document.Join(path, "drill_over"), r.DrillOver, base.DrillOver)
	if r.Advance.Given {
		base.AdvanceByStroke = c.Choice(document.Join(path, "advance"), r.Advance, "recovery", "stroke") == 1
	}
	if r.Then.Given {
		base.Then = c.takesOver(document.Join(path, "then"), r.Then)
	}
	base.Source = c.Words(document.Join(path, "source"), r.Source, c.Source(path))
	return base
}

// takesOver is the tool that goes on where a piston corer is refused, APC for none.
func (c *clerk) takesOver(path string, t document.Text) coring.Tool {
	tools, names := []coring.Tool{coring.APC}, []string{"none"}
	for tool := range coring.Tools {
		if tool.Has(coring.TakesOver) {
			tools, names = append(tools, tool), append(names, tool.String())
		}
	}
	return tools[c.Choice(path, t, names...)]
}
