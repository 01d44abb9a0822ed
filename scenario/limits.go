package scenario

import (
	"slices"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
)

// limits reads limits of sea. Work that is named here loses all the limits it has in base.
func (c *clerk) limits(path string, given []limitFile, base []rig.SeaLimit) []rig.SeaLimit {
	limits := make([]rig.SeaLimit, 0, len(given)+len(base))
	given = few(c.reader, path, given, mostLimits)
	for i, l := range given {
		limits = append(limits, c.limit(at(path, i), l))
	}
	read := len(limits)
	for i := 1; i < read; i++ {
		same := func(l rig.SeaLimit) bool { return l.For == limits[i].For && l.FromDepth == limits[i].FromDepth }
		if slices.ContainsFunc(limits[:i], same) {
			c.fault(at(path, i), given[i].For.value, "one limit for this work from this depth on")
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
		For:       c.limitFor(join(path, "for"), l.For),
		FromDepth: unit.Length(c.maybe(join(path, "from_depth"), l.FromDepth, waterLimitMeasure)),
		Of:        c.measureOf(join(path, "of"), l.Of),
		Most:      unit.Length(c.number(join(path, "most"), l.Most, heightMeasure)),
		Source:    c.words(join(path, "source"), l.Source, c.source(path)),
	}
}

// limitFor is the class of work that a limit is for.
func (c *clerk) limitFor(path string, t text) activity.Limit {
	var keys []string
	for l := activity.Positioning; l < activity.FreeTask; l++ {
		if l.Key() == t.value {
			return l
		}
		keys = append(keys, l.Key())
	}
	wanted, _ := suggest(t.value, keys, "class of work")
	if !t.given {
		wanted = listed(keys)
	}
	c.fault(path, t.value, wanted)
	return activity.AnySea
}

// measureOf is what a limit is a limit of. There is no default: published limits differ.
func (c *clerk) measureOf(path string, t text) rig.Measure {
	if !t.given {
		c.fault(path, "", "significant heave, largest heave or wave height")
	}
	return rig.Measure(c.choice(path, t, "significant heave", "largest heave", "wave height"))
}

// storm reads the sea at which pipe leaves the hole.
func (c *clerk) storm(path string, s *stormFile, base rig.Storm) rig.Storm {
	if s == nil {
		return base
	}
	storm := rig.Storm{
		ClearSeaFloor: unit.Length(c.number(join(path, "clear_sea_floor"), s.ClearSeaFloor, heightMeasure)),
		RecoverPipe:   unit.Length(c.number(join(path, "recover_pipe"), s.RecoverPipe, heightMeasure)),
		Source:        c.words(join(path, "source"), s.Source, c.source(path)),
	}
	if storm.RecoverPipe < storm.ClearSeaFloor {
		c.fault(join(path, "recover_pipe"), s.RecoverPipe.value, "at least the sea at which the sea floor is cleared")
	}
	return storm
}

// refusal reads the rule by which a piston corer is given up. What is not stated stays as in base.
func (c *clerk) refusal(path string, r *refusalFile, base plan.Refusal) plan.Refusal {
	if r == nil {
		return base
	}
	if r.Overpull.given {
		base.Overpull = unit.Force(c.number(join(path, "overpull"), r.Overpull, overpullMeasure))
	}
	if r.PartialStrokes.given {
		base.PartialStrokes = int(c.number(join(path, "partial_strokes"), r.PartialStrokes, strokesMeasure))
	}
	base.DrillOver = c.yes(join(path, "drill_over"), r.DrillOver, base.DrillOver)
	if r.Advance.given {
		base.AdvanceByStroke = c.choice(join(path, "advance"), r.Advance, "recovery", "stroke") == 1
	}
	if r.Then.given {
		base.Then = c.takesOver(join(path, "then"), r.Then)
	}
	base.Source = c.words(join(path, "source"), r.Source, c.source(path))
	return base
}

// takesOver is the tool that goes on where a piston corer is refused, APC for none.
func (c *clerk) takesOver(path string, t text) coring.Tool {
	tools, names := []coring.Tool{coring.APC}, []string{"none"}
	for tool := range coring.Tools {
		if tool.Has(coring.TakesOver) {
			tools, names = append(tools, tool), append(names, tool.String())
		}
	}
	return tools[c.choice(path, t, names...)]
}
