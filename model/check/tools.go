package check

import (
	"fmt"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// tools looks whether the tools of a hole can follow one another. Piston, half-length and extended
// barrels run through one assembly, the rotary barrel through another. A piston corer after an extended
// barrel is unusual, and was done.
func (i *inspector) tools(s *voyage.Site, item *voyage.Item) {
	f := Finding{Site: s.Name, Hole: item.Name, What: "tools can follow one another", Value: none, Limit: none,
		Source: "piston, half-length and extended barrels share an assembly, the rotary does not; the extended barrel follows where the piston is refused (common practice)"}
	stages := item.Hole.Stages
	for n := 1; n < len(stages) && f.Verdict == Pass; n++ {
		f.follow(stages[n-1], stages[n], n)
	}
	i.note(f)
}

// follow judges the n-th tool of a hole by the one before.
func (f *Finding) follow(before, after plan.Stage, n int) {
	a, b := before.With, after.With
	switch {
	case a.Assembly() != b.Assembly():
		f.What, f.Verdict, f.Cure = fmt.Sprintf("%s can't follow %s in one hole", b, a), Stop, "a hole of its own"
	case b.Piston() && !a.Piston():
		f.What, f.Verdict = fmt.Sprintf("%s after %s", b, a), Caution
		f.Source = "32 of 162 holes on record with both have a piston core below one of the extended barrel, mostly past a hard bed (core records, doi:10.5281/zenodo.10498831)"
	default:
		return
	}
	f.Value, f.Unit, f.Path = float64(before.To), "mbsf", fmt.Sprintf("core[%d].with", n)
}

// logging looks whether there is open hole below the end of pipe to log.
func (i *inspector) logging(s *voyage.Site, item *voyage.Item) {
	if len(item.Hole.Logging) == 0 {
		return
	}
	pipe := i.plan.Ship.Rates[rig.LoggingPipeDepth]
	f := Finding{Site: s.Name, Hole: item.Name, What: "open hole to log below the pipe", Value: float64(item.Target()), Limit: pipe.Median(), Least: true, Unit: "mbsf",
		Source: "end of pipe while logging: " + pipe.Source, Path: "logging", Cure: "a deeper hole, or no logging"}
	if f.Value <= f.Limit {
		f.Verdict = Caution
	}
	i.note(f)
}
