package check

import (
	"fmt"

	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// tools looks whether the tools of a hole can follow one another. Piston, half-length and extended
// barrels run through one assembly, the rotary barrel through another.
func (i *inspector) tools(s *voyage.Site, item *voyage.Item) {
	f := Finding{Site: s.Name, Hole: item.Name, What: "tools can follow one another", Value: none, Limit: none,
		Source: "piston, half-length and extended barrels share an assembly, the rotary does not; the extended barrel follows where the piston is refused (common practice)"}
	stages := item.Hole.Stages
	for n := 1; n < len(stages); n++ {
		a, b := stages[n-1].With, stages[n].With
		if wrongOrder(a, b) {
			f.What, f.Verdict = fmt.Sprintf("%s can't follow %s in one hole", b, a), Stop
			f.Value = float64(stages[n-1].To)
			f.Unit = "mbsf"
			break
		}
	}
	i.note(f)
}

func wrongOrder(a, b coring.Tool) bool {
	return a.Assembly() != b.Assembly() || b.Piston() && !a.Piston()
}

// logging looks whether there is open hole below the end of pipe to log.
func (i *inspector) logging(s *voyage.Site, item *voyage.Item) {
	if len(item.Hole.Logging) == 0 {
		return
	}
	pipe := i.plan.Ship.Rates[rig.LoggingPipeDepth]
	f := Finding{Site: s.Name, Hole: item.Name, What: "open hole to log below the pipe", Value: float64(item.Target()), Limit: pipe.Median(), Unit: "mbsf",
		Source: "end of pipe while logging: " + pipe.Source}
	if f.Value <= f.Limit {
		f.Verdict = Caution
	}
	i.note(f)
}
